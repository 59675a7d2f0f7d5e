import { Fragment } from 'react';
import { moneyText } from '@latchwork/core/exports/purchase/order-head';
import { lineName, whyUnpriced } from '@latchwork/core/exports/purchase/line-words';
import type { PurchaseOrder } from '@latchwork/core/exports/purchase/purchase-order';
import { Quantity } from '../../ui/quantity';
import { WorkedNumber, type Working } from '../../ui/worked-number';
import { SeverityMark } from '../../ui/severity-mark';

/** What an order comes to: by currency, with the line that comes last and what is in none of the sums. */
export function OrderSums({ order }: { order: PurchaseOrder }) {
  const { slowest, unpriced } = order;
  const offer = slowest?.chosen?.weighed.offer;
  return (
    <dl className="order-sums">
      {order.totals.length === 0 ? (
        <div>
          <dt>Cash to buy</dt>
          <dd>not known: no line has a price</dd>
        </div>
      ) : null}
      {order.totals.map((t) => (
        <Fragment key={t.currency}>
          <div>
            <dt>Cash to buy</dt>
            <dd className="order-cash">
              <WorkedNumber working={cashWorking(order, t)}>{moneyText(t.cash, t.currency)}</WorkedNumber>
            </dd>
          </div>
          <div>
            <dt>Material per harness</dt>
            <dd>
              <WorkedNumber working={usedWorking(order, t)}>
                {moneyText(t.usedPerHarness, t.currency, 4)}
              </WorkedNumber>
            </dd>
          </div>
          <div>
            <dt>Left over</dt>
            <dd className="mono">{moneyText(t.leftOver, t.currency)}</dd>
          </div>
        </Fragment>
      ))}
      <div>
        <dt>Slowest line</dt>
        <dd>
          {slowest && offer?.leadTimeDays !== undefined ? (
            <>
              <Quantity value={offer.leadTimeDays} unit="days" />{' '}
              <span className="mono">{lineName(slowest)}</span>
            </>
          ) : (
            'no lead time stated'
          )}
        </dd>
      </div>
      <div>
        <dt>Prices of</dt>
        <dd className="mono">
          {order.priceDates ? [...new Set(order.priceDates)].join(' to ') : 'no day stated'}
        </dd>
      </div>
      {unpriced.length > 0 ? (
        <div className="order-open">
          <dt>
            <SeverityMark kind="unknown" size={12} /> Not in the sums
          </dt>
          <dd title={unpriced.map((l) => `${lineName(l)}: ${whyUnpriced(l) ?? ''}`).join('\n')}>
            {unpriced.slice(0, 3).map(lineName).join(', ')}
            {unpriced.length > 3 ? ` and ${unpriced.length - 3} more` : ''}
          </dd>
        </div>
      ) : null}
    </dl>
  );
}

type Total = PurchaseOrder['totals'][number];

const linesIn = (order: PurchaseOrder, { currency }: Total) =>
  order.lines.filter((l) => l.chosen?.weighed.offer.currency === currency);

function cashWorking(order: PurchaseOrder, t: Total): Working {
  const lines = linesIn(order, t);
  const dearest = [...lines].sort((a, b) => (b.cost ?? 0) - (a.cost ?? 0)).slice(0, 5);
  const rest = lines.filter((l) => !dearest.includes(l)).reduce((sum, l) => sum + (l.cost ?? 0), 0);
  return {
    title: `Cash to buy in ${t.currency}`,
    lines: [
      ...dearest.map((l) => ({
        label: lineName(l),
        value: <Quantity value={(l.cost ?? 0).toFixed(2)} />,
        source: l.chosen?.weighed.offer.supplier ?? '',
      })),
      {
        label: `${lines.length - dearest.length} other lines`,
        value: <Quantity value={rest.toFixed(2)} />,
        source: 'added up',
      },
    ],
    result: <Quantity value={t.cash.toFixed(2)} unit={t.currency} />,
    method:
      'Cost of every line, each rounded to hundredths as an invoice does. Other currencies are not converted.',
  };
}

function usedWorking(order: PurchaseOrder, t: Total): Working {
  return {
    title: 'Material used per harness',
    lines: [
      { label: 'Cash to buy', value: <Quantity value={t.cash.toFixed(2)} />, source: 'sum of the lines' },
      {
        label: 'less left over',
        value: <Quantity value={t.leftOver.toFixed(2)} />,
        source: 'stays in the store',
      },
      { label: 'Harnesses', value: <Quantity value={order.harnesses} />, source: 'order' },
    ],
    result: <Quantity value={t.usedPerHarness.toFixed(4)} unit={t.currency} />,
    method:
      'What is used up with scrap, set-up and samples, at the price that is paid; what comes from the own store counts at the same price. Labour, tools, freight and tax are not counted.',
  };
}
