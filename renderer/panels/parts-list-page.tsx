import { type ReactNode, useMemo } from 'react';
import type { Table } from '@latchwork/core/exports/table';
import { useApp } from '../app/store';
import { DocumentGrid } from './document-grid';
import { OrderPage } from './purchase/order-page';
import { orderView, useOrderView, type ListMode } from './purchase/order-view';
import './purchase/purchase.css';
import { useDocument } from './use-document';

const MODES: readonly (readonly [ListMode, string])[] = [
  ['harness', 'One harness'],
  ['order', 'An order'],
  ['volumes', 'Volumes'],
];

/** What one harness needs, what an order of many has to buy, and the volumes side by side. */
export function PartsListPage() {
  const mode = useOrderView((s) => s.mode);
  const modes = (
    <div className="list-modes" role="group" aria-label="Parts for">
      {MODES.map(([id, text]) => (
        <button
          key={id}
          type="button"
          className="button"
          data-look="outline"
          aria-pressed={id === mode}
          onClick={() => orderView.setState({ mode: id })}
        >
          {text}
        </button>
      ))}
    </div>
  );
  if (mode === 'order') return <OrderPage modes={modes} />;
  return mode === 'harness' ? <HarnessParts modes={modes} /> : <Volumes modes={modes} />;
}

const EMPTY = 'Nothing is placed yet, so nothing is needed. Place a connector on the Diagram page.';

function HarnessParts({ modes }: { modes: ReactNode }) {
  const table = useDocument('parts-list');
  const unit = useApp((s) => s.view.lengthUnit);
  return (
    <DocumentGrid
      table={table}
      empty={EMPTY}
      head={(tools) => (
        <div className="bar">
          <h2>
            {table.title}{' '}
            <span className="second bar-note">
              for one harness{unit === 'in' ? ', lengths in metres as ordered' : ''}
            </span>
          </h2>
          {modes}
          {tools}
        </div>
      )}
    />
  );
}

function Volumes({ modes }: { modes: ReactNode }) {
  const whole = useDocument('purchase-volumes');
  const table = useMemo(() => narrowed(whole), [whole]);
  return (
    <DocumentGrid
      table={table}
      empty={EMPTY}
      renderCell={(column, row) => costText(column.key, row.cells)}
      head={(tools) => (
        <>
          <div className="bar">
            <h2>{table.title}</h2>
            {modes}
            {tools}
          </div>
          <dl className="volume-sums">
            {table.head
              .filter(([label]) => label.startsWith('For '))
              .map(([label, text]) => (
                <div key={label}>
                  <dt>{label}</dt>
                  <dd>{text}</dd>
                </div>
              ))}
          </dl>
        </>
      )}
    />
  );
}

/** What fits side by side on the screen, descriptions last; files hold every column. */
function narrowed(table: Table): Table {
  const shown = table.columns.filter((c) =>
    /^(item|partNumber|colour|unit|perHarness|v\d+-(order|cost))$/.test(c.key),
  );
  return { ...table, columns: [...shown, ...table.columns.filter((c) => c.key === 'description')] };
}

/** Costs of lines with two digits, so that the points stand below each other; sums stay as they are. */
function costText(key: string, cells: Table['rows'][number]): string | undefined {
  const value = cells[key];
  return key.endsWith('-cost') && cells['item'] !== null && typeof value === 'number'
    ? value.toFixed(2)
    : undefined;
}
