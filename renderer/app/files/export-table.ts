import type { Table } from '@latchwork/core/exports/table';
import { say } from '../../ui/toasts';
import { callHost, hostStore } from '../host';
import { appStore } from '../store';
import { askFileName } from './ask-file-name';
import { askReplace } from './save';

export const TABLE_FORMATS = ['csv', 'xlsx', 'json'] as const;
export type TableFormat = (typeof TABLE_FORMATS)[number];

/** Writes a document to a file of the user's choice. Always all its rows and columns, whatever the view shows. */
export async function exportTable(table: Table, format: TableFormat): Promise<void> {
  const { titleBlock } = appStore.getState().history.project;
  const ending = `.${format}`;
  const suggestedName = `${titleBlock.identificationNumber || titleBlock.title} ${table.id}${ending}`.trim();
  const native = hostStore.getState().info?.dialogs === 'native';
  let name = native ? null : await askFileName(`Export ${table.title.toLowerCase()}`, suggestedName, ending);
  let replace = false;
  while (native || name !== null) {
    const answer = await callHost('table:export', { table, format, suggestedName, name, replace });
    if (!answer || answer.status === 'cancelled') return;
    if (answer.status === 'failed') return say('problem', `Nothing was exported. ${answer.reason}`);
    if (answer.status === 'saved')
      return say('done', `Exported ${answer.name}${native ? '' : ' to the exports folder'}.`);
    const over = await askReplace(answer.name);
    if (over === null) return;
    replace = over === 'replace';
    if (!replace) name = await askFileName(`Export ${table.title.toLowerCase()}`, answer.name, ending);
  }
}
