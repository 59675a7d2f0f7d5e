import { tidy } from '../../calc/purchase/order-need';
import type { Harness } from '../../derive/harness';
import { PART_KIND_NAMES } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';
import { documentHead } from '../document-head';
import { lineObjects } from '../parts/harness-lines';
import type { Column, Table } from '../table';
import { harnessesText } from './order-head';
import { money, type PurchaseLine } from './purchase-line';
import { purchaseOrder } from './purchase-order';

/** A line that is bought in one revision and otherwise in the other. */
export interface DeltaLine {
  readonly change: 'added' | 'removed' | 'changed';
  readonly before: PurchaseLine | undefined;
  readonly after: PurchaseLine | undefined;
  /** How much more an order needs, scrap and set-up included; null where one side is not known. */
  readonly moreNeeded: number | null;
  /** How much more is to be ordered, in whole packs. */
  readonly moreOrdered: number | null;
  /** What it costs more; null where a price is missing or the currencies differ. */
  readonly moreCost: number | null;
}

/** Lines whose need differs between two states of a harness, for an order of so many. Parts go by maker and number. */
export function purchaseDelta(before: Harness, after: Harness, harnesses: number): readonly DeltaLine[] {
  const old = byKey(before, harnesses);
  const fresh = byKey(after, harnesses);
  const keys = [...fresh.keys(), ...[...old.keys()].filter((k) => !fresh.has(k))];
  return keys.flatMap((key) => {
    const [was, is] = [old.get(key), fresh.get(key)];
    const moreNeeded = difference(was, is, (l) => l.need?.total ?? null);
    if (was && is && was.perHarness === is.perHarness && moreNeeded === 0) return [];
    if (was && is && was.perHarness === null && is.perHarness === null) return [];
    const change = was ? (is ? 'changed' : 'removed') : 'added';
    return [
      {
        change,
        before: was,
        after: is,
        moreNeeded,
        moreOrdered: difference(was, is, (l) => l.orderQuantity),
        moreCost: costDifference(was, is),
      } as const,
    ];
  });
}

function byKey(harness: Harness, harnesses: number): ReadonlyMap<string, PurchaseLine> {
  return new Map(
    purchaseOrder(harness, harnesses).lines.map((l) => {
      const { kind, part, colour, unit } = l.line;
      return [JSON.stringify([kind, part?.maker ?? '', part?.partNumber ?? '', colour, unit]), l] as const;
    }),
  );
}

function difference(
  was: PurchaseLine | undefined,
  is: PurchaseLine | undefined,
  of: (line: PurchaseLine) => number | null,
): number | null {
  const [a, b] = [was ? of(was) : 0, is ? of(is) : 0];
  return a === null || b === null ? null : tidy(b - a);
}

function costDifference(was: PurchaseLine | undefined, is: PurchaseLine | undefined): number | null {
  const currencies = new Set([was, is].flatMap((l) => l?.chosen?.weighed.offer.currency ?? []));
  const more = difference(was, is, (l) => l.cost);
  return currencies.size > 1 || more === null ? null : money(more);
}

const right = { align: 'right' } as const;

const COLUMNS = [
  { key: 'change', title: 'Change' },
  { key: 'kind', title: 'Kind' },
  { key: 'maker', title: 'Maker' },
  { key: 'partNumber', title: 'Part number' },
  { key: 'description', title: 'Description' },
  { key: 'colour', title: 'Colour' },
  { key: 'unit', title: 'Unit' },
  { key: 'perHarnessBefore', title: 'Per harness before', ...right },
  { key: 'perHarnessAfter', title: 'Per harness after', ...right },
  { key: 'moreNeeded', title: 'Needed more', ...right },
  { key: 'orderBefore', title: 'Order before', ...right },
  { key: 'orderAfter', title: 'Order after', ...right },
  { key: 'moreCost', title: 'Costs more', ...right },
  { key: 'currency', title: 'Currency' },
  { key: 'effect', title: 'Effect on the order' },
] as const satisfies readonly Column[];

/** The change of what is bought as a table; its objects are those of the later state. */
export function deltaTable(before: Harness, after: Harness, harnesses: number): Table {
  const delta = purchaseDelta(before, after, harnesses);
  const revision = (h: Harness): string => h.project.revisions.at(-1)?.revision ?? 'not given';
  return {
    id: 'purchase-delta',
    title: 'Change of purchase',
    head: documentHead(after.project, 'Change of purchase', [
      ['From revision', revision(before)],
      ['To revision', revision(after)],
      ['Order', harnessesText(harnesses)],
    ]),
    columns: [...COLUMNS],
    rows: delta.map((d) => {
      const { line } = (d.after ?? d.before) as PurchaseLine;
      return {
        change: d.change,
        kind: PART_KIND_NAMES[line.kind],
        maker: line.part?.maker ?? null,
        partNumber: line.part?.partNumber ?? null,
        description: line.part?.description ?? 'no part chosen',
        colour: line.colour === '' ? null : line.colour,
        unit: line.unit,
        perHarnessBefore: d.before ? d.before.perHarness : 0,
        perHarnessAfter: d.after ? d.after.perHarness : 0,
        moreNeeded: d.moreNeeded,
        orderBefore: d.before ? d.before.orderQuantity : 0,
        orderAfter: d.after ? d.after.orderQuantity : 0,
        moreCost: d.moreCost,
        currency: (d.after ?? d.before)?.chosen?.weighed.offer.currency ?? null,
        effect: effectOf(d),
      };
    }),
    objects: delta.map((d): ObjectRef[] => (d.after ? lineObjects(d.after.line) : [])),
  };
}

/** What it means for an order that is placed already. */
function effectOf({ change, before, after, moreNeeded, moreOrdered }: DeltaLine): string {
  const unit = ((after ?? before) as PurchaseLine).line.unit;
  if (change === 'removed')
    return before?.orderQuantity
      ? `${before.orderQuantity} ${unit} of an order placed would be left over`
      : 'no longer needed';
  if (moreNeeded === null) return 'cannot be told: a quantity is not known';
  if (moreOrdered === null) return `${signed(moreNeeded)} ${unit} needed; what to order cannot be told`;
  if (moreOrdered === 0) return 'covered by the same order';
  return moreOrdered > 0 ? `order ${moreOrdered} ${unit} more` : `${-moreOrdered} ${unit} fewer to order`;
}

const signed = (n: number): string => (n > 0 ? `+${n}` : String(n));
