import { Copy } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { csvOfTable } from '@latchwork/core/exports/csv';
import type { DocumentOptions } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { Table } from '@latchwork/core/exports/table';
import { appStore, keyOfRef, useApp } from '../app/store';
import { showable } from '../app/selection';
import { Button } from '../ui/button';
import { DataGrid, type DataGridProps } from '../ui/grid/data-grid';
import type { GridRow } from '../ui/grid/grid-rows';
import { say } from '../ui/toasts';
import './document-grid.css';
import { ExportMenu } from './export-menu';

export interface DocumentGridProps {
  readonly table: Table;
  /** What the table was made with; its files are made with the same. */
  readonly options?: DocumentOptions | undefined;
  /** Draws the title around the tools of the table. */
  readonly head: (tools: ReactNode) => ReactNode;
  readonly empty: string;
  /** Draws a cell in place of its plain text. */
  readonly renderCell?: DataGridProps['renderCell'];
  /** Off where the export stands elsewhere. */
  readonly hasExport?: boolean;
  /** Also told which row was chosen. */
  readonly choose?: (row: GridRow) => void;
}

/** A document as a table: filter, copy, export; its selection is that of the sheet. */
export function DocumentGrid({
  table,
  options,
  head,
  empty,
  renderCell,
  choose,
  hasExport = true,
}: DocumentGridProps) {
  const [filter, setFilter] = useState('');
  const [allColumns, setAllColumns] = useState(false);
  const selection = useApp((s) => s.view.selection);
  const isSelected = (row: GridRow): boolean =>
    selection.size > 0 && row.objects.some((ref) => selection.has(keyOfRef(ref)));
  const exporter = EXPORTERS.find((e) => e.id === table.id);
  const tools = (
    <>
      <input
        className="input grid-filter"
        type="search"
        placeholder="Filter rows"
        aria-label={`Filter rows: ${table.title.toLowerCase()}`}
        value={filter}
        onChange={(e) => setFilter(e.target.value)}
      />
      <label className="check grid-all">
        <input type="checkbox" checked={allColumns} onChange={(e) => setAllColumns(e.target.checked)} />
        empty columns
      </label>
      <Button look="plain" onClick={() => void copyTable(table)}>
        <Copy size={14} aria-hidden />
        Copy
      </Button>
      {hasExport && exporter && <ExportMenu document={exporter} options={options} />}
    </>
  );
  return (
    <div className="column">
      {head(tools)}
      {table.rows.length === 0 ? (
        <p className="grid-empty second">{empty}</p>
      ) : (
        <DataGrid
          table={table}
          filter={filter}
          allColumns={allColumns}
          isSelected={isSelected}
          point={pointAt}
          select={(row, add) => {
            choose?.(row);
            selectRow(row, add);
          }}
          {...(renderCell ? { renderCell } : {})}
        />
      )}
    </div>
  );
}

function selectRow(row: GridRow, add: boolean): void {
  const { history, select } = appStore.getState();
  select(showable(history.project, row.objects).map(keyOfRef), add);
}

/** The sheet lights what the row under the pointer speaks of. */
function pointAt(row: GridRow | null): void {
  const { history, setView } = appStore.getState();
  setView({ hover: (row && showable(history.project, row.objects)[0]) ?? null });
}

async function copyTable(table: Table): Promise<void> {
  await navigator.clipboard.writeText(csvOfTable(table));
  say('done', `${table.rows.length} rows are on the clipboard as CSV.`);
}
