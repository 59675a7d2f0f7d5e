import { unzipSync, zipSync } from 'fflate';
import writeXlsxFile, { type SheetData } from 'write-excel-file/node';
import { columnHeading, type Cell, type Column, type Table } from '@latchwork/core/exports/table';

/**
 * A table as a workbook of one sheet: the head, an empty row, the headings, the rows. Text is stored as text, so
 * nothing in it can start a formula; numbers are numbers. The same table gives the same bytes.
 */
export async function xlsxOfTable(table: Table): Promise<Uint8Array> {
  const head = table.head.map(([label, value]) => [
    { ...text(label), fontWeight: 'bold' as const },
    text(value),
  ]);
  const headings = table.columns.map((c) => ({
    ...text(columnHeading(c)),
    ...aligned(c),
    fontWeight: 'bold' as const,
    backgroundColor: '#e8e8e8',
  }));
  const rows = table.rows.map((row) => table.columns.map((c) => cellOf(row[c.key] ?? null, c)));
  const data: SheetData = [...head, [], headings, ...rows];
  const bytes = await writeXlsxFile(data, {
    sheet: sheetName(table.title),
    columns: table.columns.map((c) => ({ width: widthOf(table, c) })),
    stickyRowsCount: table.head.length + 2,
  }).toBuffer();
  return atFixedTime(bytes);
}

/** What a sheet can hold at most in one cell (common practice among spreadsheet programs). */
const MAX_CELL_TEXT = 32_767;

/** Control characters have no place in XML 1.0; a pasted one must not make the whole file unreadable. */
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;
const LONE_SURROGATE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

function text(value: string): { value: string; type: typeof String } {
  const clean = value.replace(NOT_XML, '?').replace(LONE_SURROGATE, '?');
  const whole = clean.length <= MAX_CELL_TEXT;
  return { value: whole ? clean : `${clean.slice(0, MAX_CELL_TEXT - 1)}…`, type: String };
}

function cellOf(value: Cell, column: Column): SheetData[number][number] {
  if (value === null || value === '') return null;
  if (typeof value === 'number') return { value, type: Number, ...aligned(column) };
  return { ...text(value), ...aligned(column) };
}

const aligned = (column: Column): { align?: 'right' } => (column.align === 'right' ? { align: 'right' } : {});

/** Sheet names are short and know no brackets, slashes, colons, question marks and stars. */
const sheetName = (title: string): string => title.replace(/[[\]:*?/\\]/g, ' ').slice(0, 31);

function widthOf(table: Table, column: Column): number {
  const longest = table.rows
    .slice(0, 200)
    .reduce((n, row) => Math.max(n, String(row[column.key] ?? '').length), columnHeading(column).length);
  return Math.min(60, Math.max(8, longest + 2));
}

/** Zips keep the time at which they were made; the first moment that the format knows stands for "none". */
function atFixedTime(bytes: Uint8Array): Uint8Array {
  const entries = Object.entries(unzipSync(bytes)).sort(([a], [b]) => (a < b ? -1 : 1));
  return zipSync(Object.fromEntries(entries), { mtime: new Date(1980, 0, 1), level: 6 });
}
