import type { Table } from './table';

/** Raised when a field changes its meaning or goes away; new fields do not raise it. */
export const DOCUMENT_FORMAT_VERSION = 1;

/** A table as JSON text: keys in a fixed order, one row per line, values as they are, null for "not known". */
export function jsonOfTable(table: Table): string {
  const rows = table.rows.map((row) =>
    JSON.stringify(Object.fromEntries(table.columns.map((c) => [c.key, row[c.key] ?? null]))),
  );
  const head = table.head.map(([label, value]) => JSON.stringify({ label, value }));
  const columns = table.columns.map((c) =>
    JSON.stringify({ key: c.key, title: c.title, ...(c.unit ? { unit: c.unit } : {}) }),
  );
  return [
    '{',
    '  "format": "latchwork-document",',
    `  "formatVersion": ${DOCUMENT_FORMAT_VERSION},`,
    `  "document": ${JSON.stringify(table.id)},`,
    `  "title": ${JSON.stringify(table.title)},`,
    `  "head": ${lines(head)},`,
    `  "columns": ${lines(columns)},`,
    `  "rows": ${lines(rows)}`,
    '}',
    '',
  ].join('\n');
}

const lines = (items: readonly string[]): string =>
  items.length === 0 ? '[]' : `[\n${items.map((i) => `    ${i}`).join(',\n')}\n  ]`;
