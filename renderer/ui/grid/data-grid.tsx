import { useVirtualizer } from '@tanstack/react-virtual';
import { type ReactNode, useEffect, useId, useMemo, useRef, useState } from 'react';
import { csvOfTable } from '@latchwork/core/exports/csv';
import type { Cell, Column, Table } from '@latchwork/core/exports/table';
import { ColumnHead } from './column-head';
import './data-grid.css';
import { type GridRow, type Sorting, columnWidth, filledColumns, gridRows } from './grid-rows';
import { useGridKeys } from './use-grid-keys';

export interface DataGridProps {
  readonly table: Table;
  readonly filter?: string;
  /** Also columns in which nothing stands. */
  readonly allColumns?: boolean;
  readonly isSelected?: (row: GridRow) => boolean;
  readonly select?: (row: GridRow, add: boolean) => void;
  /** The row under the pointer; null when it leaves. */
  readonly point?: (row: GridRow | null) => void;
  /** Draws a cell in place of its plain text. */
  readonly renderCell?: (column: Column, row: GridRow) => ReactNode | undefined;
}

const ROW_PX = 28;
const MONO = /designator|part|cavity|wire|from|to|contact|colour|path|key|rule$/i;

/** A document's rows as an ARIA grid: sortable, resizable, and only the rows in view exist. */
export function DataGrid({
  table,
  filter = '',
  allColumns = false,
  isSelected,
  select,
  point,
  renderCell,
}: DataGridProps) {
  const id = useId();
  const scroller = useRef<HTMLDivElement>(null);
  const [sorting, setSorting] = useState<Sorting | null>(null);
  const [widths, setWidths] = useState<Readonly<Record<string, number>>>({});
  const columns = useMemo(() => (allColumns ? table.columns : filledColumns(table)), [table, allColumns]);
  const rows = useMemo(() => gridRows(table, filter, sorting), [table, filter, sorting]);
  const guesses = useMemo(() => new Map(table.columns.map((c) => [c.key, columnWidth(table, c)])), [table]);
  const widthOf = (c: Column): number => widths[c.key] ?? guesses.get(c.key) ?? 80;
  const total = columns.reduce((sum, c) => sum + widthOf(c), 0);

  const sort = (c: Column): void =>
    setSorting((s) =>
      s?.key !== c.key ? { key: c.key, down: false } : s.down ? null : { key: c.key, down: true },
    );
  const keys = useGridKeys(
    rows.length,
    columns.length,
    (row, add) => rows[row] && select?.(rows[row], add),
    (column) => columns[column] && sort(columns[column]),
  );
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => ROW_PX,
    overscan: 10,
    scrollPaddingStart: ROW_PX,
  });
  const selected = isSelected ? rows.findIndex(isSelected) : -1;
  useEffect(() => {
    if (selected >= 0) virtual.scrollToIndex(selected, { align: 'auto' });
    // Only when the first selected row is another one.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [selected]);
  useEffect(() => {
    if (keys.at.row >= 0) virtual.scrollToIndex(keys.at.row, { align: 'auto' });
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [keys.at.row]);

  // What is put away while the pointer is over it has nothing under the pointer any more.
  useEffect(() => () => point?.(null), [point]);

  const cellId = (row: number, column: number): string => `${id}-${row}-${column}`;
  return (
    <div
      ref={scroller}
      role="grid"
      className="grid"
      aria-label={table.title}
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length}
      aria-multiselectable={select ? true : undefined}
      aria-activedescendant={cellId(keys.at.row, keys.at.column)}
      tabIndex={0}
      onKeyDown={keys.onKeyDown}
      onCopy={(event) => {
        event.preventDefault();
        event.clipboardData.setData('text/plain', csvOfTable(tableAsShown(table, columns, rows, isSelected)));
      }}
    >
      <div role="row" aria-rowindex={1} className="grid-heads" style={{ width: total }}>
        {columns.map((c, i) => (
          <ColumnHead
            key={c.key}
            id={cellId(-1, i)}
            column={c}
            index={i}
            width={widthOf(c)}
            sorting={sorting}
            active={keys.at.row === -1 && keys.at.column === i}
            sort={() => sort(c)}
            resize={(width) => setWidths((w) => ({ ...w, [c.key]: width }))}
          />
        ))}
      </div>
      <div role="presentation" className="grid-body" style={{ height: virtual.getTotalSize(), width: total }}>
        {virtual.getVirtualItems().map((v) => {
          const row = rows[v.index] as GridRow;
          return (
            <div
              key={row.index}
              role="row"
              className="grid-row"
              aria-rowindex={v.index + 2}
              aria-selected={isSelected?.(row) ?? false}
              style={{ transform: `translateY(${v.start}px)`, width: total }}
              onPointerEnter={point && (() => point(row))}
              onPointerLeave={point && (() => point(null))}
              onClick={(e) => select?.(row, e.ctrlKey || e.metaKey || e.shiftKey)}
            >
              {columns.map((c, i) => (
                <div
                  key={c.key}
                  id={cellId(v.index, i)}
                  role="gridcell"
                  className={MONO.test(c.key) || c.align === 'right' ? 'grid-cell mono' : 'grid-cell'}
                  aria-colindex={i + 1}
                  data-align={c.align}
                  data-active={keys.at.row === v.index && keys.at.column === i ? '' : undefined}
                  style={{ width: widthOf(c) }}
                  title={String(row.cells[c.key] ?? '')}
                  onClick={() => keys.moveTo({ row: v.index, column: i })}
                >
                  {renderCell?.(c, row) ?? cellText(row.cells[c.key])}
                </div>
              ))}
            </div>
          );
        })}
      </div>
    </div>
  );
}

const cellText = (cell: Cell | undefined): string =>
  cell === null || cell === undefined ? '' : String(cell);

/** The rows in the order shown; only the selected ones where some are. */
function tableAsShown(
  table: Table,
  columns: readonly Column[],
  rows: readonly GridRow[],
  isSelected?: (row: GridRow) => boolean,
): Table {
  const chosen = isSelected ? rows.filter(isSelected) : [];
  const shown = chosen.length ? chosen : rows;
  return { ...table, columns: [...columns], rows: shown.map((r) => r.cells), objects: [] };
}
