import { type ReactNode, useDeferredValue, useMemo } from 'react';
import { defaultQuantity, purchaseOrder, volumesOf } from '@latchwork/core/exports/purchase/purchase-order';
import type { Column, Table } from '@latchwork/core/exports/table';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { NumberField } from '../../ui/number-field';
import { WorkedNumber } from '../../ui/worked-number';
import { DocumentGrid } from '../document-grid';
import { useDocument } from '../use-document';
import { LineCard } from './line-card';
import { lineWorking } from './line-working';
import { OrderSums } from './order-sums';
import { OrderTerms } from './order-terms';
import { lineKey, orderView, useOrderView } from './order-view';

/** What a buyer looks at first; files hold every column. */
const SHOWN = [
  'item', 'partNumber', 'colour', 'form', 'unit', 'perHarness', 'total', 'fromStock', 'orderQuantity', 'unitPrice',
  'lineCost', 'leftOver', 'leadTimeDays', 'supplier', 'leftOverCost', 'currency', 'lifecycle', 'alternates', 'remarks',
  'description',
]; // prettier-ignore

/** An order of many harnesses: its lines, what they come to, and how each quantity came about. */
export function OrderPage({ modes }: { modes: ReactNode }) {
  const project = useApp((s) => s.history.project);
  const harness = useDeferredValue(useApp((s) => s.harness));
  const harnesses = useOrderView((s) => s.harnesses) ?? defaultQuantity(project);
  const chosen = useOrderView((s) => s.line);
  const options = useMemo(() => ({ quantity: harnesses }), [harnesses]);
  const whole = useDocument('purchase-list', options);
  const table = useMemo(() => narrowed(whole), [whole]);
  const order = purchaseOrder(harness, harnesses);
  const line = order.lines.find((l) => lineKey(l) === chosen);
  const renderCell = (column: Column, row: { readonly index: number }): ReactNode | undefined => {
    const at = order.lines[row.index];
    const working = at && lineWorking(project, at, column.key);
    return (
      working && <WorkedNumber working={working}>{shownValue(whole, row.index, column.key)}</WorkedNumber>
    );
  };
  return (
    <div className="order">
      <DocumentGrid
        table={table}
        options={options}
        empty="Nothing has to be bought: nothing is placed yet, or all of it comes with the equipment."
        renderCell={renderCell}
        choose={(row) => {
          const at = order.lines[row.index];
          orderView.setState({ line: at ? lineKey(at) : null });
        }}
        head={(tools) => (
          <>
            <div className="bar">
              <h2>Purchase list</h2>
              {modes}
              {tools}
            </div>
            <div className="order-strip">
              <HarnessCount harnesses={harnesses} volumes={volumesOf(project)} />
              <OrderSums order={order} />
            </div>
          </>
        )}
      />
      <aside className="order-side" aria-label={line ? 'Line of the order' : 'Terms of the order'}>
        {line ? <LineCard key={lineKey(line)} line={line} /> : <OrderTerms project={project} order={order} />}
      </aside>
    </div>
  );
}

function HarnessCount({ harnesses, volumes }: { harnesses: number; volumes: readonly number[] }) {
  const order = (n: number | null): void => orderView.setState({ harnesses: n });
  return (
    <div className="order-count">
      <NumberField
        label="Harnesses"
        value={harnesses}
        whole
        positive
        commit={(n) => (n !== null && !Number.isSafeInteger(n) ? 'That is too many.' : (order(n), null))}
      />
      <div className="order-volumes" role="group" aria-label="Builds of the project">
        {volumes.map((n) => (
          <Button
            key={n}
            look="plain"
            className="mono"
            aria-pressed={n === harnesses}
            onClick={() => order(n)}
          >
            {n.toLocaleString('en')}
          </Button>
        ))}
      </div>
    </div>
  );
}

function narrowed(table: Table): Table {
  const isUsed = (key: string): boolean => key !== 'fromStock' || table.rows.some((r) => r[key]);
  return {
    ...table,
    columns: SHOWN.filter(isUsed).flatMap((key) => table.columns.filter((c) => c.key === key)),
  };
}

/** Costs with two digits, so that the points stand below each other. */
function shownValue(table: Table, row: number, key: string): string {
  const value = table.rows[row]?.[key] ?? '';
  return typeof value === 'number' && /Cost$/.test(key) ? value.toFixed(2) : String(value);
}
