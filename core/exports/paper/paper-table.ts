import type { Cell } from '../table';
import type { PaperBlock } from './paper';

export interface PaperColumn<T> {
  readonly title: string;
  readonly share: number;
  readonly align?: 'right';
  of(row: T): Cell;
}

/** What stands on paper for a value that is not known. */
export const NOT_KNOWN = '–';

export const cellText = (cell: Cell): string => (cell === null ? NOT_KNOWN : String(cell));

/** Rows as a table on paper: the columns that a reader at the bench needs, out of those that a file has. */
export const paperTable = <T>(columns: readonly PaperColumn<T>[], rows: readonly T[]): PaperBlock => ({
  kind: 'table',
  columns: columns.map(({ title, share, align }) => ({ title, share, ...(align ? { align } : {}) })),
  rows: rows.map((row) => columns.map((c) => cellText(c.of(row)))),
});

/** A line of plain text. */
export const plainText = (text: string): PaperBlock => ({ kind: 'text', text: [{ text }] });

/** "Label: text", the label in bold. */
export const namedText = (label: string, text: string): PaperBlock => ({
  kind: 'text',
  text: [{ text: `${label}: `, look: 'strong' }, { text }],
});
