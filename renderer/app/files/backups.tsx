import { serialiseProject } from '@latchwork/core/model/serialise';
import type { Project } from '@latchwork/core/model/project';
import { askChoice } from '../../ui/ask-choice';
import { callHost, hostStore } from '../host';
import { appStore, isDirty } from '../store';
import { dateText } from './ask-listed-file';
import { takeOpened } from './opened';

const EVERY_MS = 4_000;

/** Writes unsaved work to the host's own folder every few seconds. Returns how to stop. */
export function keepBackups(everyMs = EVERY_MS): () => void {
  let written: Project | null = null;
  const write = async (): Promise<void> => {
    const state = appStore.getState();
    const { history, document } = state;
    if (!hostStore.getState().client || !isDirty(state) || history.project === written) return;
    written = history.project;
    const { id, token, revision, name } = document;
    const answer = await callHost('backup:write', {
      document: id,
      token,
      revision,
      name,
      text: serialiseProject(history.project),
    });
    // Tried again at the next turn.
    if (answer?.status !== 'done') written = null;
  };
  const timer = setInterval(() => void write(), everyMs);
  return () => clearInterval(timer);
}

/** Work that an earlier run could not save: offers it. True when one was opened. */
export async function offerBackups(): Promise<boolean> {
  const listed = await callHost('backup:list', {});
  for (const backup of listed?.backups ?? []) {
    const choice = await askChoice(
      'Work from last time was not saved',
      `${backup.name}, as it was on ${dateText(backup.written)}. You can go on with it, keep it for later, or throw it away.`,
      [
        { answer: 'discard', text: 'Throw away' },
        { answer: 'later', text: 'Later' },
        { answer: 'open', text: 'Go on with it', primary: true },
      ],
    );
    if (choice === 'discard') await callHost('backup:discard', { document: backup.document });
    if (choice !== 'open') continue;
    const answer = await callHost('backup:open', { document: backup.document });
    if (
      answer?.status === 'opened' &&
      (await takeOpened(answer, { unsaved: true, document: backup.document }))
    )
      return true;
  }
  return false;
}
