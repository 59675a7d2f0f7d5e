import type { ReactNode } from 'react';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import { purchasingValue } from '@latchwork/core/model/purchasing';
import type { Project } from '@latchwork/core/model/project';
import { lineName } from '@latchwork/core/exports/purchase/line-words';
import { Quantity } from '../../ui/quantity';
import type { Working, WorkingLine } from '../../ui/worked-number';
import { BreakPicture } from './break-picture';
import { weighedChoices } from './weighed-choices';

/** How a number of an order came about; undefined for a column that is no result or a line that has none. */
export function lineWorking(project: Project, line: PurchaseLine, column: string): Working | undefined {
  if (!line.need) return undefined;
  if (column === 'total') return needWorking(project, line);
  if (!line.chosen) return undefined;
  if (column === 'orderQuantity') return orderWorking(line);
  if (column === 'lineCost' || column === 'leftOverCost' || column === 'leftOver') return costWorking(line);
  return undefined;
}

const amount = (value: number, unit?: string): ReactNode => <Quantity value={value} unit={unit} />;

/** need × (1 + scrap) + set-up + samples. */
export function needWorking(project: Project, l: PurchaseLine): Working {
  const { need, line } = l;
  const unit = line.unit;
  const isCut = unit === 'm';
  const times = l.setUps.length * l.rounds;
  const settings = `${times} ${times === 1 ? 'setting' : 'settings'}`;
  const setUp = purchasingValue(project, isCut ? 'runWasteMm' : 'setUpPieces');
  const samples = purchasingValue(project, 'samplesPerCrimp');
  const lines: readonly WorkingLine[] = need
    ? [
        { label: 'In one harness', value: amount(l.perHarness ?? 0, unit), source: 'parts list' },
        { label: 'Harnesses', value: amount(l.harnesses), source: 'order' },
        { label: 'Need', value: amount(need.need, unit), source: 'in one harness × harnesses' },
        {
          label: 'Scrap',
          value: amount(Math.round(need.scrap * 1000) / 1000, unit),
          source: `${Math.round(l.scrap.value * 1e4) / 100} % (${l.scrap.source})`,
        },
        ...(l.setUp > 0
          ? [
              {
                label: 'Set-up',
                value: amount(l.setUp, unit),
                source: isCut
                  ? `${setUp.value} mm for each run (${setUp.source})`
                  : `${settings} × ${setUp.value} pieces: ${l.setUps.join('; ')} (${setUp.source})`,
              },
            ]
          : []),
        ...(l.samples > 0
          ? [
              {
                label: 'Destructive samples',
                value: amount(l.samples, unit),
                source: `${settings} × ${samples.value} (${samples.source})`,
              },
            ]
          : []),
        ...(need.fromStock > 0
          ? [{ label: 'From the own store', value: amount(need.fromStock, unit), source: 'entered here' }]
          : []),
      ]
    : [];
  return {
    title: `Needed in all: ${lineName(l)}`,
    lines,
    result: amount(need?.total ?? 0, unit),
    method: `need × (1 + scrap) + set-up + samples, rounded up to ${isCut ? 'a millimetre' : 'a piece'}.`,
  };
}

/** Every quantity that could be the cheapest, with its cost. */
export function orderWorking(l: PurchaseLine): Working {
  const offer = l.chosen?.weighed.offer;
  const { unit } = l.line;
  return {
    title: `Order: ${lineName(l)}`,
    formula: <BreakPicture line={l} />,
    lines: [
      {
        label: 'To buy',
        value: amount(l.need?.toBuy ?? 0, unit),
        source: 'needed in all, less the own store',
      },
      {
        label: 'Minimum',
        value: offer?.minimum === undefined ? 'not stated' : amount(offer.minimum, unit),
        source: offer?.supplier ?? '',
      },
      {
        label: 'Pack',
        value:
          offer?.multiple === undefined
            ? `one ${unit === 'm' ? 'metre' : 'piece'}`
            : amount(offer.multiple, unit),
        source: offer?.multiple === undefined ? 'not stated' : (offer.supplier ?? ''),
      },
      ...weighedChoices(l).map(({ choice, offer: name, currency, best }) => ({
        label: `${choice.quantity} ${unit}, ${name}`,
        value: amount(Math.round(choice.cost * 100) / 100, currency),
        source: `${choice.price} each from ${choice.breakQuantity} on${best ? ': the cheapest' : ''}`,
      })),
    ],
    result: amount(l.orderQuantity ?? 0, unit),
    method:
      'The least quantity in whole packs, and the first pack from every price break above it: between two breaks the cost only grows.',
  };
}

export function costWorking(l: PurchaseLine): Working {
  const offer = l.chosen?.weighed.offer;
  const { unit } = l.line;
  return {
    title: `Cost: ${lineName(l)}`,
    lines: [
      { label: 'Order', value: amount(l.orderQuantity ?? 0, unit), source: 'cheapest quantity' },
      {
        label: 'Price of one',
        value: amount(l.chosen?.choice.price ?? 0, offer?.currency),
        source: `${offer?.supplier ?? ''}, ${offer?.priceDate ?? 'day of the price not stated'}`,
      },
      { label: 'Left over', value: amount(l.leftOver ?? 0, unit), source: 'order less what is to buy' },
      {
        label: 'Cost of what is left over',
        value: amount(l.leftOverCost ?? 0, offer?.currency),
        source: 'left over × price',
      },
    ],
    result: amount(l.cost ?? 0, offer?.currency),
    method: 'Order × price of one, rounded to hundredths.',
  };
}
