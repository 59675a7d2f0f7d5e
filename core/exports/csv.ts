import { columnHeading, type Cell, type Table } from './table';

/**
 * A table as comma-separated text after RFC 4180: lines end in CR LF, the first holds the headings, every line
 * has as many fields as there are columns. The head is not part of it: it would break the rectangle.
 *
 * No spreadsheet may start a formula from a cell. Text that begins like one gets an apostrophe in front; so does
 * text behind a character that another locale takes for the separator, since a spreadsheet set to semicolons
 * starts a cell there. Plain numbers stay as they are.
 */
export function csvOfTable(table: Table): string {
  const lines = [
    table.columns.map((c) => csvField(columnHeading(c))),
    ...table.rows.map((row) => table.columns.map((c) => csvField(row[c.key] ?? null))),
  ];
  return lines.map((fields) => `${fields.join(',')}\r\n`).join('');
}

export function csvField(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const text = neutral(cell);
  return /[",;\r\n\t]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const PLAIN_NUMBER = /^[+-]?\d+(?:[.,]\d+)?(?:[eE][+-]?\d+)?$/;
/** Also the full-width forms, which spreadsheets take for the plain ones. */
const STARTS_FORMULA = /^[\s\u00a0\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/;
const FORMULA_BEHIND_SEPARATOR = /([;\t\r\n][\s"]*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/g;

function neutral(text: string): string {
  if (PLAIN_NUMBER.test(text)) return text;
  const inner = text.replace(FORMULA_BEHIND_SEPARATOR, "$1'");
  return STARTS_FORMULA.test(text) ? `'${inner}` : inner;
}
