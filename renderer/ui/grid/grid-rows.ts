import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Cell, Column, Table } from '@latchwork/core/exports/table';
import { columnHeading } from '@latchwork/core/exports/table';
import type { ObjectRef } from '@latchwork/core/rules/finding';

/** A row of a table together with the objects it speaks of; `index` is its place in the document. */
export interface GridRow {
  readonly index: number;
  readonly cells: Readonly<Record<string, Cell>>;
  readonly objects: readonly ObjectRef[];
}

export interface Sorting {
  readonly key: string;
  readonly down: boolean;
}

/** Rows that hold the text in any cell, in the order asked for. Without one they stay as the document has them. */
export function gridRows(table: Table, filter: string, sorting: Sorting | null): readonly GridRow[] {
  const wanted = filter.trim().toLowerCase();
  const all = table.rows.map((cells, index) => ({ index, cells, objects: table.objects[index] ?? [] }));
  const rows = wanted ? all.filter((row) => holds(row, table.columns, wanted)) : all;
  if (!sorting) return rows;
  const sign = sorting.down ? -1 : 1;
  return [...rows].sort(
    (a, b) => compareCells(a.cells[sorting.key], b.cells[sorting.key], sign) || a.index - b.index,
  );
}

const holds = (row: GridRow, columns: readonly Column[], wanted: string): boolean =>
  columns.some((c) =>
    String(row.cells[c.key] ?? '')
      .toLowerCase()
      .includes(wanted),
  );

/** What is not known comes last, whichever way the column is sorted. */
function compareCells(a: Cell | undefined, b: Cell | undefined, sign: 1 | -1): number {
  const left = a ?? null;
  const right = b ?? null;
  if (left === null || right === null) return Number(left === null) - Number(right === null);
  if (typeof left === 'number' && typeof right === 'number') return sign * (left - right);
  return sign * compareNatural(String(left), String(right));
}

/** Columns that say something in at least one row. */
export const filledColumns = (table: Table): readonly Column[] =>
  table.columns.filter(
    (c) => table.rows.length === 0 || table.rows.some((row) => (row[c.key] ?? null) !== null),
  );

/** Up to so many characters every cell is shown whole: numbers and designators must not be cut. */
const SHORT = 20;

/** A width in pixels. Of long texts most are shown whole and the longest cut, so that more columns are in view. */
export function columnWidth(table: Table, column: Column): number {
  const lengths = table.rows
    .slice(0, 200)
    .map((row) => String(row[column.key] ?? '').length)
    .sort((a, b) => a - b);
  const longest = lengths.at(-1) ?? 0;
  const most = longest <= SHORT ? longest : (lengths[Math.floor(lengths.length * 0.8)] ?? 0);
  const characters = Math.max(columnHeading(column).length + 2, most);
  return Math.round(Math.min(Math.max(characters * 7.6 + 22, 56), 220));
}
