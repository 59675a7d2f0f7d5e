import { useMemo } from 'react';
import { changeNote } from '@latchwork/core/exports/compare/change-note';
import { compareTable } from '@latchwork/core/exports/compare/compare-table';
import { type Comparing, stopComparing, useComparing } from '../../app/compare';
import { exportAs } from '../../app/files/export-as';
import { exportTable } from '../../app/files/export-table';
import { callHost } from '../../app/host';
import { Button } from '../../ui/button';
import { DocumentGrid } from '../document-grid';
import { PanelHead } from '../panel-head';

/** The changes against another state, under the sheet: pick a row, see the object. */
export function ComparePanel({ otherwise }: { otherwise: React.ReactNode }) {
  const comparing = useComparing();
  return comparing ? <Changes comparing={comparing} /> : otherwise;
}

function Changes({ comparing }: { comparing: Comparing }) {
  const { comparison } = comparing;
  const table = useMemo(() => compareTable(comparison), [comparison]);
  return (
    <DocumentGrid
      table={table}
      hasExport={false}
      head={(tools) => (
        <PanelHead id="ledger" title={`Changes since ${comparing.with} (${table.rows.length})`}>
          {tools}
          <Button look="plain" onClick={() => void exportTable(table, 'xlsx')}>
            XLSX
          </Button>
          <Button look="plain" onClick={() => void exportNote(comparing)}>
            Change note (PDF)
          </Button>
          <Button onClick={stopComparing}>End the comparison</Button>
        </PanelHead>
      )}
      empty="Nothing differs."
    />
  );
}

const exportNote = ({ comparison }: Comparing): Promise<void> => {
  const paper = changeNote(comparison);
  return exportAs(paper, '.pdf', (target) => callHost('paper:export', { paper, ...target }));
};
