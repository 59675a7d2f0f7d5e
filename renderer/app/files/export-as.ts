import type { ExportAnswer } from '@latchwork/core/bridge/answers';
import { say } from '../../ui/toasts';
import { hostStore } from '../host';
import { appStore } from '../store';
import { askFileName } from './ask-file-name';
import { askReplace } from './save';

/** Where the host asks for the place itself `name` is null. */
export interface ExportTarget {
  readonly suggestedName: string;
  readonly name: string | null;
  readonly replace: boolean;
}

/** Asks for a name and whether a file of that name is replaced, has `write` do it, and says what came of it. */
export async function exportAs(
  document: { readonly id: string; readonly title: string },
  ending: string,
  write: (target: ExportTarget) => Promise<ExportAnswer | null>,
): Promise<void> {
  const { titleBlock } = appStore.getState().history.project;
  const suggestedName =
    `${titleBlock.identificationNumber || titleBlock.title} ${document.id}${ending}`.trim();
  const ask = (name: string): Promise<string | null> =>
    askFileName(`Export ${document.title.toLowerCase()}`, name, ending);
  const native = hostStore.getState().info?.dialogs === 'native';
  let name = native ? null : await ask(suggestedName);
  let replace = false;
  while (native || name !== null) {
    const answer = await write({ suggestedName, name, replace });
    if (!answer || answer.status === 'cancelled') return;
    if (answer.status === 'failed') return say('problem', `Nothing was exported. ${answer.reason}`);
    if (answer.status === 'saved')
      return say('done', `Exported ${answer.name}${native ? '' : ' to the exports folder'}.`);
    const over = await askReplace(answer.name);
    if (over === null) return;
    replace = over === 'replace';
    if (!replace) name = await ask(answer.name);
  }
}
