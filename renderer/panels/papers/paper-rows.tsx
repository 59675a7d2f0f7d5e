import { useEffect, useMemo } from 'react';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { DocumentGrid } from '../document-grid';
import { emptyWords } from './empty-words';
import { tellState } from './use-survey';

/** Stand in the band above, or at the foot. */
const ELSEWHERE = new Set(['Document', 'Revision', 'Caution', 'Limit']);

/** A document as rows: choose one, and the sheets show what it speaks of. */
export function PaperRows({ exporter, input }: { exporter: Exporter; input: DocumentInput }) {
  const table = useMemo(() => exporter.table(input), [exporter, input]);
  useEffect(() => tellState(exporter.id, { rows: table.rows.length }), [exporter, table]);
  const head = table.head.filter(([label]) => !ELSEWHERE.has(label));
  return (
    <>
      <details className="paper-head">
        <summary>Title block and summary</summary>
        <dl className="paper-block">
          {head.map(([label, value], i) => (
            <div key={`${label} ${i}`}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </details>
      <div className="paper-rows">
        <DocumentGrid
          table={table}
          options={input.options}
          hasExport={false}
          empty={
            exporter.id === 'findings-report' ? 'No finding. What was asked stands above.' : emptyWords(exporter.id).text
          }
          head={(tools) => <div className="page-bar">{tools}</div>}
        />
      </div>
    </>
  );
} // prettier-ignore
