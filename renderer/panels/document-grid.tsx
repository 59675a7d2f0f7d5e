import { Copy, Download } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { Button as AriaButton, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { csvOfTable } from '@latchwork/core/exports/csv';
import type { Table } from '@latchwork/core/exports/table';
import { TABLE_FORMATS, exportTable } from '../app/files/export-table';
import { appStore, keyOfRef, useApp } from '../app/store';
import { showable } from '../app/selection';
import { Button } from '../ui/button';
import { DataGrid } from '../ui/grid/data-grid';
import type { GridRow } from '../ui/grid/grid-rows';
import { say } from '../ui/toasts';
import './document-grid.css';

export interface DocumentGridProps {
  readonly table: Table;
  /** Draws the title around the tools of the table. */
  readonly head: (tools: ReactNode) => ReactNode;
  readonly empty: string;
}

const FORMAT_NAMES = {
  csv: 'Comma-separated values (CSV)',
  xlsx: 'Spreadsheet (XLSX)',
  json: 'JSON',
} as const;

/** A document as a table: filter, copy, export; its selection is that of the sheet. */
export function DocumentGrid({ table, head, empty }: DocumentGridProps) {
  const [filter, setFilter] = useState('');
  const [allColumns, setAllColumns] = useState(false);
  const selection = useApp((s) => s.view.selection);
  const isSelected = (row: GridRow): boolean =>
    selection.size > 0 && row.objects.some((ref) => selection.has(keyOfRef(ref)));
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
      <MenuTrigger>
        <AriaButton className="button" data-look="outline">
          <Download size={14} aria-hidden />
          Export
        </AriaButton>
        <Popover className="popover" placement="bottom end">
          <Menu
            className="menu"
            aria-label="Export as"
            onAction={(key) => void exportTable(table, key as (typeof TABLE_FORMATS)[number])}
          >
            {TABLE_FORMATS.map((format) => (
              <MenuItem key={format} id={format} className="menu-item" textValue={FORMAT_NAMES[format]}>
                <span>{FORMAT_NAMES[format]}</span>
              </MenuItem>
            ))}
          </Menu>
        </Popover>
      </MenuTrigger>
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
          select={selectRow}
        />
      )}
    </div>
  );
}

function selectRow(row: GridRow, add: boolean): void {
  const { history, select } = appStore.getState();
  select(showable(history.project, row.objects).map(keyOfRef), add);
}

async function copyTable(table: Table): Promise<void> {
  await navigator.clipboard.writeText(csvOfTable(table));
  say('done', `${table.rows.length} rows are on the clipboard as CSV.`);
}
