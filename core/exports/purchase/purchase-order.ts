import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness } from '../../derive/harness';
import type { Project } from '../../model/project';
import { compareNatural } from '../../base/stable-order';
import { roundTo } from '../../model/length-text';
import { harnessLines } from '../parts/harness-lines';
import { money, purchaseLine, type PurchaseLine } from './purchase-line';

/** Sums of one currency; never added to those of another. */
export interface CurrencyTotal {
  readonly currency: string;
  /** To be paid for the order. */
  readonly cash: number;
  /** Used up per harness, without what is left over. */
  readonly usedPerHarness: number;
  readonly leftOver: number;
}

/** All lines of an order of so many harnesses, with what they come to. */
export interface PurchaseOrder {
  readonly harnesses: number;
  readonly lines: readonly PurchaseLine[];
  readonly totals: readonly CurrencyTotal[];
  /** Lines that are bought and have no price, so that the totals lack them. */
  readonly unpriced: readonly PurchaseLine[];
  /** The line that comes last of those with a lead time. */
  readonly slowest: PurchaseLine | undefined;
  /** Lines that are bought and do not state their lead time. */
  readonly withoutLeadTime: readonly PurchaseLine[];
  /** First and last day of the prices that were taken. */
  readonly priceDates: readonly [string, string] | undefined;
  readonly undatedPrices: number;
}

/** The harnesses that a project is ordered for when nobody says otherwise: its largest build. */
export const defaultQuantity = (project: Project): number => Math.max(1, ...project.buildQuantities);

/** The volumes of a project that are compared, ascending; 1, 10, 100, 1,000 where it names no more than one. */
export function volumesOf(project: Project): readonly number[] {
  const named = [...new Set(project.buildQuantities)].sort((a, b) => a - b);
  return named.length > 1 ? named : [1, 10, 100, 1000];
}

/** What has to be bought: what comes with the equipment is not. Remembered for as long as the harness lives. */
export function purchaseOrder(harness: Harness, harnesses: number): PurchaseOrder {
  const known = ordersOf(harness);
  let order = known.get(harnesses);
  if (!order) known.set(harnesses, (order = makeOrder(harness, harnesses)));
  return order;
}

const ordersOf = memoByIdentity((_harness: Harness) => new Map<number, PurchaseOrder>());

function makeOrder(harness: Harness, harnesses: number): PurchaseOrder {
  const lines = harnessLines(harness)
    .filter((line) => line.supply === 'harness')
    .map((line) => purchaseLine(harness, line, harnesses));
  const bought = lines.filter((l) => l.orderQuantity !== 0);
  const chosen = bought.flatMap((l) => (l.chosen ? [l.chosen.weighed.offer] : []));
  const days = chosen.flatMap((o) => o.priceDate ?? []).sort(compareNatural);
  const [first, last] = [days[0], days.at(-1)];
  return {
    harnesses,
    lines,
    totals: totalsOf(lines, harnesses),
    unpriced: lines.filter((l) => l.usedCost === null),
    slowest: bought.reduce<PurchaseLine | undefined>(
      (a, b) => (leadTime(b) > leadTime(a) ? b : a),
      undefined,
    ),
    withoutLeadTime: bought.filter((l) => l.chosen && l.chosen.weighed.offer.leadTimeDays === undefined),
    priceDates: first !== undefined && last !== undefined ? [first, last] : undefined,
    undatedPrices: chosen.filter((o) => o.priceDate === undefined).length,
  };
}

const leadTime = (line: PurchaseLine | undefined): number => line?.chosen?.weighed.offer.leadTimeDays ?? -1;

function totalsOf(lines: readonly PurchaseLine[], harnesses: number): readonly CurrencyTotal[] {
  const sums = new Map<string, { cash: number; used: number; leftOver: number }>();
  for (const l of lines) {
    if (!l.chosen) continue;
    const currency = l.chosen.weighed.offer.currency;
    const sum = sums.get(currency) ?? { cash: 0, used: 0, leftOver: 0 };
    sum.cash += l.cost ?? 0;
    sum.used += l.usedCost ?? 0;
    sum.leftOver += l.leftOverCost ?? 0;
    sums.set(currency, sum);
  }
  return [...sums]
    .sort(([a], [b]) => compareNatural(a, b))
    .map(([currency, s]) => ({
      currency,
      cash: money(s.cash),
      usedPerHarness: roundTo(s.used / harnesses, 4),
      leftOver: money(s.leftOver),
    }));
}
