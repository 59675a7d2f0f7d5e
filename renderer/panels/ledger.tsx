import { DocumentGrid } from './document-grid';
import { PanelHead } from './panel-head';
import { useDocument } from './use-document';

/** The connection table under the sheet: pick a row, see the wire; pick the wire, see the row. */
export function Ledger() {
  const table = useDocument('connection-table');
  return (
    <DocumentGrid
      table={table}
      head={(tools) => (
        <PanelHead id="ledger" title={table.title}>
          {tools}
        </PanelHead>
      )}
      empty="No wire yet. Press on a cavity on the sheet, drag to another and let go."
    />
  );
}
