import { COLLECTIONS } from '@latchwork/core/model/project';
import { say } from '../ui/toasts';
import { hostStore } from './host';
import { appStore } from './store';

/** Tells the host's log of an error. Quiet: it must not cause another. */
export function reportError(error: unknown): void {
  const { name, stack } = error instanceof Error ? error : { name: typeof error, stack: '' };
  const request = { name: name.slice(0, 100), stack: (stack ?? '').slice(0, 20_000) };
  void hostStore
    .getState()
    .client?.call('app:report', request)
    .catch(() => undefined);
}

/** Errors that no part of the window has caught. */
export function reportErrors(): void {
  window.addEventListener('error', ({ error }) => reportError(error));
  window.addEventListener('unhandledrejection', ({ reason }) => reportError(reason));
}

/** Puts facts about program, machine and window on the clipboard, for the user to look at and send. */
export async function copyDiagnostics(): Promise<void> {
  const answer = await hostStore
    .getState()
    .client?.call('app:diagnostics', {})
    .catch(() => null);
  const text = [answer?.text ?? 'The host did not answer.', '', ...windowFacts()].join('\n');
  try {
    await navigator.clipboard.writeText(text);
    say('done', 'The diagnostics are on the clipboard. They hold counts and times, nothing of your project.');
  } catch {
    say('problem', 'The system did not let the window write to the clipboard.');
  }
}

/** How much there is of what; no names. */
function windowFacts(): string[] {
  const { history, check, document, view } = appStore.getState();
  const counts = COLLECTIONS.map((c) => `${c} ${history.project[c].length}`);
  return [
    'Window:',
    `Browser: ${navigator.userAgent}`,
    `Size: ${innerWidth} x ${innerHeight} at ${devicePixelRatio}`,
    `Page: ${view.page}`,
    `Project: ${counts.join(', ')}`,
    `Findings: ${check.findings.length}`,
    `Steps that can be undone: ${history.undo.length}`,
    `File: ${document.token === null ? 'none yet' : document.changedOnDisk ? 'changed on disk' : 'open'}`,
  ];
}
