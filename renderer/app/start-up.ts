import { parseCatalogue, partsToEmbed } from '@latchwork/core/catalogue/parse-catalogue';
import { openProblemText } from '@latchwork/core/model/problem';
import type { Part } from '@latchwork/core/model/parts/part';
import { say } from '../ui/toasts';
import { reportErrors } from './diagnostics';
import { keepComparing } from './compare';
import { keepBackups, offerBackups } from './files/backups';
import { keepHold } from './files/hold-file';
import { takeOpened } from './files/opened';
import { watchDisk } from './files/watch-disk';
import { callHost, hostStore, refreshRecent } from './host';
import { keepFindingHistory } from './seen-findings';
import { keepSettings } from './settings';
import { appStore, isDirty } from './store';
import { keepTheme } from './theme';

/** Brings the window to life: settings, catalogues, then unsaved work, the file it was started with, or an empty sheet. */
export async function startUp(): Promise<void> {
  keepTheme();
  reportErrors();
  await keepSettings();
  if (!hostStore.getState().client) return;
  const [info, demos] = await Promise.all([
    callHost('app:info', {}),
    callHost('project:list-demos', {}),
    loadCatalogues(),
    refreshRecent(),
  ]);
  hostStore.setState({ info, demos: demos?.demos ?? [] });
  if (!(await offerBackups())) await openInitial();
  keepBackups();
  keepComparing();
  keepFindingHistory();
  watchDisk();
  keepHold();
  window.addEventListener('beforeunload', (event) => {
    if (isDirty(appStore.getState())) event.preventDefault();
  });
}

async function openInitial(): Promise<void> {
  const initial = await callHost('project:initial', {});
  if (initial?.status === 'failed') say('problem', `The file was not opened. ${initial.reason}`);
  if (initial?.status === 'opened') await takeOpened(initial);
}

async function loadCatalogues(): Promise<void> {
  const answer = await callHost('catalogue:list', {});
  const parts: Part[] = [];
  for (const { name, text } of answer?.catalogues ?? []) {
    const parsed = parseCatalogue(text);
    if (parsed.ok) parts.push(...partsToEmbed(parsed.value));
    else say('problem', `The catalogue ${name} could not be read. ${openProblemText(parsed.problem)}`);
  }
  appStore.getState().setCatalogue(parts);
}
