import { compareNatural } from '../../base/stable-order';
import type { Project } from '../../model/project';
import { PURCHASING_DEFAULTS, purchasingValue } from '../../model/purchasing';
import { crimpTools } from './contact-form';
import { lineName, whyUnpriced } from './line-words';
import type { PurchaseOrder } from './purchase-order';

type HeadLine = readonly [string, string];

/** Money as people write it, in the head of a document; in cells it stays a number. */
export function moneyText(amount: number, currency: string, digits = 2): string {
  const [whole = '', part] = amount.toFixed(digits).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${grouped}${part === undefined ? '' : `.${part}`} ${currency}`;
}

export const harnessesText = (n: number): string => `${n} ${n === 1 ? 'harness' : 'harnesses'}`;

/** Sums and warnings of an order, for the head of its documents. */
export function orderHead(order: PurchaseOrder): readonly HeadLine[] {
  const { slowest, priceDates, undatedPrices, unpriced } = order;
  const offer = slowest?.chosen?.weighed.offer;
  return [
    ['Order', harnessesText(order.harnesses)],
    ...order.totals.flatMap((t): HeadLine[] => [
      [`Cash to buy (${t.currency})`, moneyText(t.cash, t.currency)],
      [`Material used per harness (${t.currency})`, moneyText(t.usedPerHarness, t.currency, 4)],
      [`Left over (${t.currency})`, moneyText(t.leftOver, t.currency)],
    ]),
    ...(order.totals.length > 1
      ? [['Currencies', 'added up each by itself; nothing is converted'] as const]
      : []),
    ...(unpriced.length > 0
      ? [
          [
            'Not in the sums',
            unpriced.map((l) => `${lineName(l)} (${whyUnpriced(l) ?? ''})`).join('; '),
          ] as const,
        ]
      : []),
    [
      'Slowest line',
      slowest && offer?.leadTimeDays !== undefined
        ? `${lineName(slowest)}: ${offer.leadTimeDays} days, ${offer.supplier}`
        : 'no lead time is stated',
    ],
    ...(order.withoutLeadTime.length > 0
      ? [['Lead time not stated', order.withoutLeadTime.map(lineName).join(', ')] as const]
      : []),
    ['Prices of', pricesText(priceDates, undatedPrices)],
  ];
}

function pricesText(dates: PurchaseOrder['priceDates'], undated: number): string {
  const span = dates ? (dates[0] === dates[1] ? dates[0] : `${dates[0]} to ${dates[1]}`) : 'no day stated';
  return undated > 0 && dates ? `${span}; ${undated} without a day` : span;
}

/** Tools are no lines of an order; one that is missing comes later than any contact. */
export function orderTools(project: Project, order: PurchaseOrder): readonly HeadLine[] {
  const contacts = order.lines.flatMap((l) =>
    l.line.part?.kind === 'contact' ? [{ l, tools: crimpTools(project, l.line.part) }] : [],
  );
  const there = [...new Set(contacts.flatMap(({ tools }) => [...tools.press, ...tools.hand]))];
  const without = contacts.filter(({ tools }) => tools.press.length + tools.hand.length === 0);
  return [
    ...(there.length > 0
      ? [['Crimp tools', `taken to be in the shop: ${there.sort(compareNatural).join(', ')}`] as const]
      : []),
    ...(without.length > 0
      ? [
          [
            'No crimp tool on the tool list',
            without
              .map(({ l, tools }) => `${lineName(l)} (takes ${tools.named.join(' or ') || 'not stated'})`)
              .join('; '),
          ] as const,
        ]
      : []),
  ];
}

/** What stands behind the quantities, and what is in none of the sums. */
export function orderTerms(project: Project): readonly HeadLine[] {
  const setUp = purchasingValue(project, 'setUpPieces');
  const samples = purchasingValue(project, 'samplesPerCrimp');
  const waste = purchasingValue(project, 'runWasteMm');
  const rounds = project.purchasing?.harnessesPerSetUp;
  const entered = Object.keys(project.purchasing?.scrap ?? {}).length > 0;
  return [
    [
      'Set-up',
      `${setUp.value} pieces for each contact and wire that are crimped together (${setUp.source}); ${waste.value} mm for each part and colour that is cut (${waste.source})`,
    ],
    ['Destructive samples', `${samples.value} for each contact and wire (${samples.source})`],
    ['Settings', rounds === undefined ? 'one for the whole order' : `one for every ${rounds} harnesses`],
    [
      'Scrap',
      `shares by kind of part, in the column scrap (${entered ? 'some entered for this project, else ' : ''}${PURCHASING_DEFAULTS.source})`,
    ],
    ['Not counted', 'labour, tools, freight, duty, tax and the cost of keeping what is left over'],
  ];
}
