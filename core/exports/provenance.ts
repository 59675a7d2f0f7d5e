import type { Table } from './table';

/** Labels of the head that say what a file was made from, and the first caution. */
const SAID = [
  'Title',
  'Identification number',
  'Revision',
  'Limit set',
  'Baseline (SHA-256)',
  'Caution',
] as const;

/**
 * A table with one column more that says in each row what it was made from. For formats that hold nothing but rows and
 * columns: a file of these is copied, cut and joined with others, and each row must still tell where it belongs.
 */
export function withProvenance(table: Table): Table {
  const text = SAID.flatMap((label) => {
    const found = table.head.find(([l]) => l === label);
    return found ? [`${label}: ${found[1]}`] : [];
  }).join('; ');
  return {
    ...table,
    columns: [...table.columns, { key: 'madeFrom', title: 'Made from' }],
    rows: table.rows.map((row) => ({ ...row, madeFrom: text })),
  };
}
