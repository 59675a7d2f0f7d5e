import type { Harness } from '../../derive/harness';
import { lineName, whyUnpriced } from './line-words';
import type { PurchaseLine } from './purchase-line';
import { purchaseOrder, volumesOf } from './purchase-order';

/** A line of a request for quotation. */
export interface AskedLine {
  readonly line: PurchaseLine;
  readonly quantity: number;
  /** What the other volumes of the project need, for prices at these too. */
  readonly also: readonly { readonly harnesses: number; readonly quantity: number }[];
}

export interface Asked {
  readonly lines: readonly AskedLine[];
  /** What the harness needs and nobody can be asked for, with the reason. */
  readonly left: readonly string[];
}

/** Code of a unit after UN/ECE recommendation 20: one (piece), metre. */
export const UNIT_CODES = { pcs: 'C62', m: 'MTR' } as const;

/** What has to be asked for: what the order buys, or needs where no offer says in which packs it comes. */
export function askedLines(harness: Harness, harnesses: number, supplier: string | undefined): Asked {
  const order = purchaseOrder(harness, harnesses);
  const others = volumesOf(harness.project)
    .filter((n) => n !== harnesses)
    .map((n) => purchaseOrder(harness, n));
  const left: string[] = [];
  const lines = order.lines.flatMap((line, i): AskedLine[] => {
    if (!line.line.part || !line.need) {
      left.push(`${lineName(line)} (${whyUnpriced(line) ?? ''})`);
      return [];
    }
    if (line.need.toBuy === 0) return [];
    if (supplier !== undefined && !line.offers.some((w) => w.offer.supplier === supplier)) return [];
    const also = others.flatMap(({ harnesses: n, lines: same }) => {
      const toBuy = same[i]?.need?.toBuy;
      return toBuy ? [{ harnesses: n, quantity: toBuy }] : [];
    });
    return [{ line, quantity: line.orderQuantity ?? line.need.toBuy, also }];
  });
  return { lines, left };
}

/** What a quotation has to say. */
export const PLEASE_STATE =
  'price breaks with their date, minimum, pack, lead time, stock, country of origin and declarations of substances';

export const SUBSTITUTES = 'Parts other than those named only after written approval.';
