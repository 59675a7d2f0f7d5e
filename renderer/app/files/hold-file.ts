import { askChoice } from '../../ui/ask-choice';
import { say } from '../../ui/toasts';
import { hostStore } from '../host';
import { appStore } from '../store';
import { dateText } from './ask-listed-file';

/** Names this window to others. */
const window = crypto.randomUUID();

/** Well below the time after which a silent holder counts as gone. */
const EVERY_MS = 20_000;

/** Says that this window works on the open file, and learns who else does. Quiet where there is no file or no host. */
export async function holdFile({ takeOver = false } = {}): Promise<void> {
  const { client } = hostStore.getState();
  const { token, heldBy } = appStore.getState().document;
  if (!client || token === null) return;
  const answer = await client.call('project:hold', { token, window, takeOver }).catch(() => null);
  const now = appStore.getState().document;
  if (!answer || now.token !== token) return;
  const holder =
    answer.status === 'held-elsewhere' ? { user: answer.user, host: answer.host, since: answer.since } : null;
  if (JSON.stringify(holder) === JSON.stringify(now.heldBy)) return;
  appStore.getState().setDocument({ heldBy: holder });
  if (holder && !heldBy)
    say('plain', `${holderText(holder)}. Look as you like; before you save you will be asked.`);
}

/** Gives the open file free for others. */
export async function letGo(): Promise<void> {
  const { client } = hostStore.getState();
  const { token, heldBy } = appStore.getState().document;
  if (!client || token === null || heldBy) return;
  await client.call('project:let-go', { token, window }).catch(() => null);
}

/** Asks before a file is written that someone else works on. */
export async function mayWrite(): Promise<'write' | 'other' | null> {
  await holdFile();
  const { heldBy } = appStore.getState().document;
  if (!heldBy) return 'write';
  const choice = await askChoice(
    'Someone else works on this file',
    `${holderText(heldBy)}. Nothing was written yet. If you take the file over, they are told; what they changed meanwhile is compared with yours before anything is overwritten.`,
    [
      { answer: 'write', text: 'Take it over and save' },
      { answer: 'other', text: 'Save under another name', primary: true },
    ],
  );
  if (choice === 'write') await holdFile({ takeOver: true });
  return choice;
}

/** Renews the hold now and then, and gives it free when the window closes. Returns how to stop. */
export function keepHold(everyMs = EVERY_MS): () => void {
  const timer = setInterval(() => void holdFile(), everyMs);
  const leave = (): void => void letGo();
  globalThis.addEventListener('pagehide', leave);
  return () => {
    clearInterval(timer);
    globalThis.removeEventListener('pagehide', leave);
  };
}

export const holderText = (holder: { user: string; host: string; since: string }): string =>
  `${holder.user} on ${holder.host} has worked on it since ${dateText(holder.since)}`;
