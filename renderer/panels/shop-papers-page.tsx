import { useState } from 'react';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { DocumentGrid } from './document-grid';
import './shop-papers.css';
import { useDocument } from './use-document';

/** The documents of the harness: look at them, and export them. */
export function ShopPapersPage() {
  const [chosen, choose] = useState('connection-table');
  return (
    <div className="papers">
      <nav className="papers-list" aria-label="Documents">
        <h2>Documents</h2>
        <ul>
          {EXPORTERS.map((e) => (
            <li key={e.id}>
              <button
                type="button"
                aria-current={e.id === chosen ? 'true' : undefined}
                onClick={() => choose(e.id)}
              >
                <span>{e.title}</span>
                <span className="second">{e.summary}</span>
              </button>
            </li>
          ))}
        </ul>
        <p className="second papers-note">
          These are all the documents there are so far. Each is made from the project as it stands now and can
          be exported as CSV, XLSX or JSON.
        </p>
      </nav>
      <Paper key={chosen} id={chosen} />
    </div>
  );
}

function Paper({ id }: { id: string }) {
  const table = useDocument(id);
  const cautions = table.head.filter(([label]) => label === 'Caution');
  return (
    <section className="paper" aria-label={table.title}>
      <dl className="paper-block">
        {table.head
          .filter(([label]) => label !== 'Caution' && label !== 'Limit')
          .map(([label, value], i) => (
            <div key={`${label} ${i}`}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
      <div className="paper-rows">
        <DocumentGrid
          table={table}
          empty={
            id === 'findings-report'
              ? 'No finding. What was asked stands above.'
              : 'No row yet: the project holds nothing for this document.'
          }
          head={(tools) => (
            <div className="bar">
              <h2>{table.title}</h2>
              {tools}
            </div>
          )}
        />
      </div>
      <div className="paper-cautions" role="note">
        {cautions.map(([, text]) => (
          <p key={text}>{text}</p>
        ))}
      </div>
    </section>
  );
}
