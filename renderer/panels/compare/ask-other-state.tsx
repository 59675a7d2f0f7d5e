import { notComparable } from '@latchwork/core/exports/compare/compare-projects';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import type { Project } from '@latchwork/core/model/project';
import { startComparing } from '../../app/compare';
import { askListedFile, dateText } from '../../app/files/ask-listed-file';
import { callHost, hostStore } from '../../app/host';
import { panelPx, togglePanel } from '../../app/panel-sizes';
import { appStore, isDirty } from '../../app/store';
import { type AskedChoice, askChoice } from '../../ui/ask-choice';
import { say } from '../../ui/toasts';

/** Asks for another state of the project and compares the open one with it. */
export async function compareWithOther(): Promise<void> {
  const { document, history } = appStore.getState();
  const backups = (hostStore.getState().client && (await callHost('backup:list', {}))?.backups) || [];
  const saved = document.savedProject;
  const choices: AskedChoice<string>[] = [
    ...backups
      .slice(0, 4)
      .map((b) => ({ answer: b.document, text: `Backup of ${b.name}, ${dateText(b.written)}` })),
    ...(saved && isDirty(appStore.getState()) ? [{ answer: 'saved', text: 'The last saved state' }] : []),
    { answer: 'file', text: 'A file …', primary: true },
  ];
  const choice = await askChoice(
    'Compare with another state',
    'The open project is taken for the later state. Objects are compared by their ids, so a renamed wire is the same wire.',
    choices,
  );
  if (choice === null) return;
  const other = choice === 'saved' && saved ? { project: saved, called: 'the last saved state' } : await read(choice);
  if (!other) return;
  const apart = notComparable(other.project, history.project);
  if (apart !== null) {
    const all = await askChoice('These are different projects', apart, [
      { answer: 'no', text: 'Do not compare', primary: true },
      { answer: 'yes', text: 'Compare all the same' },
    ]);
    if (all !== 'yes') return;
  }
  startComparing(other.project, other.called);
  const { page, panelSizesPx } = appStore.getState().view;
  if (panelPx(panelSizesPx, 'ledger') === 0) togglePanel('ledger');
  if (page !== 'diagram' && page !== 'formboard') appStore.getState().setView({ page: 'diagram' });
} // prettier-ignore

async function read(choice: string): Promise<{ project: Project; called: string } | null> {
  const answer = choice === 'file' ? await chosenFile() : await callHost('backup:open', { document: choice });
  if (answer?.status === 'failed') say('problem', `Not compared. ${answer.reason}`);
  if (answer?.status !== 'opened') return null;
  const parsed = parseProject(answer.text);
  if (parsed.ok) return { project: parsed.value, called: answer.name };
  say('problem', `Not compared: ${answer.name} cannot be read. ${openProblemText(parsed.problem)}`);
  return null;
}

async function chosenFile() {
  if (hostStore.getState().info?.dialogs === 'native') return callHost('project:open-dialog', {});
  const name = await askListedFile({
    title: 'Compare with a file',
    channel: 'project:list-folder',
    what: 'project',
  });
  return name === null ? null : callHost('project:open', { from: 'folder', name });
}
