import { DocumentGrid } from './document-grid';
import { PanelHead } from './panel-head';
import { useDocument } from './use-document';

/** The length table under the formboard: what every wire is cut to, and what that is made of. */
export function LengthLedger() {
  const table = useDocument('length-table');
  return (
    <DocumentGrid
      table={table}
      head={(tools) => (
        <PanelHead id="ledger" title={table.title}>
          {tools}
        </PanelHead>
      )}
      empty="No wire yet. Draw wires on the diagram."
    />
  );
}
