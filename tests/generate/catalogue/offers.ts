import { roundTo } from '@latchwork/core/model/length-text';
import type { Offer } from '@latchwork/core/model/parts/common';

/** What a piece (or a metre) costs at quantity 1, and how it is packed. */
export interface Terms {
  readonly price: number;
  readonly minimum?: number;
  readonly multiple?: number;
  readonly leadTimeDays?: number;
  /** Quantities at which the price falls, in minimum quantities; four steps unless said. */
  readonly steps?: readonly number[];
  /** A second supplier who sells single pieces at a higher price. */
  readonly second?: boolean;
  /** How contacts of the first supplier come; a second one then cuts strips into loose pieces and sells them in bags. */
  readonly form?: 'strip' | 'loose';
}

const PRICE_DATE = '2026-01-15';
const STEPS = [1, 10, 100, 1000];

const NORTH = { supplier: 'Example Trading North (invented)', currency: 'EUR', priceDate: PRICE_DATE };
const SOUTH = { supplier: 'Example Trading South (invented)', currency: 'EUR', priceDate: PRICE_DATE };

/** Invented offers with up to four price breaks; the second supplier is dearer but sells small quantities from stock. */
export function offersOf(partNumber: string, terms: Terms): Offer[] {
  const minimum = terms.minimum ?? 1;
  const first: Offer = {
    ...NORTH,
    orderCode: `N-${partNumber}`,
    ...(terms.form ? { form: terms.form } : {}),
    minimum,
    multiple: terms.multiple ?? 1,
    leadTimeDays: terms.leadTimeDays ?? 10 + (partNumber.length % 5) * 7,
    priceBreaks: (terms.steps ?? STEPS).map((step, i) => ({
      quantity: minimum * step,
      price: roundTo(terms.price * [1, 0.86, 0.7, 0.58][i]!, 4),
    })),
  };
  if (terms.form === 'strip') return [first, cutStrip(partNumber, terms.price)];
  return terms.second ? [first, singles(partNumber, terms.price)] : [first];
}

const singles = (partNumber: string, price: number): Offer => ({
  ...SOUTH,
  orderCode: `S.${partNumber}`,
  minimum: 1,
  multiple: 1,
  leadTimeDays: 3,
  priceBreaks: [
    { quantity: 1, price: roundTo(price * 1.6, 4) },
    { quantity: 100, price: roundTo(price * 1.2, 4) },
  ],
  stock: { quantity: 400, date: PRICE_DATE },
});

const cutStrip = (partNumber: string, price: number): Offer => ({
  ...SOUTH,
  orderCode: `S.${partNumber}.C`,
  form: 'loose',
  minimum: 100,
  multiple: 100,
  leadTimeDays: 5,
  priceBreaks: [
    { quantity: 100, price: roundTo(price * 2.4, 4) },
    { quantity: 500, price: roundTo(price * 1.9, 4) },
  ],
  stock: { quantity: 6000, date: PRICE_DATE },
});
