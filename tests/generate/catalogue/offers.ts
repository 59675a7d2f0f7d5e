import { roundTo } from '@latchwork/core/model/length-text';
import type { Offer } from '@latchwork/core/model/parts/common';

/** What a piece (or a metre) costs at quantity 1, and how it is packed. */
export interface Terms {
  readonly price: number;
  readonly minimum?: number;
  readonly multiple?: number;
  readonly leadTimeDays?: number;
  /** A second supplier who sells single pieces at a higher price. */
  readonly second?: boolean;
}

const PRICE_DATE = '2026-01-15';

/** Invented offers with four price breaks; the second supplier is dearer but sells any quantity from stock. */
export function offersOf(partNumber: string, terms: Terms): Offer[] {
  const minimum = terms.minimum ?? 1;
  const first: Offer = {
    supplier: 'Example Trading North (invented)',
    currency: 'EUR',
    minimum,
    multiple: terms.multiple ?? 1,
    leadTimeDays: terms.leadTimeDays ?? 10 + (partNumber.length % 5) * 7,
    priceBreaks: [1, 10, 100, 1000].map((step, i) => ({
      quantity: minimum * step,
      price: roundTo(terms.price * [1, 0.86, 0.7, 0.58][i]!, 4),
    })),
    priceDate: PRICE_DATE,
  };
  if (!terms.second) return [first];
  return [
    first,
    {
      supplier: 'Example Trading South (invented)',
      currency: 'EUR',
      minimum: 1,
      multiple: 1,
      leadTimeDays: 3,
      priceBreaks: [
        { quantity: 1, price: roundTo(terms.price * 1.6, 4) },
        { quantity: 100, price: roundTo(terms.price * 1.2, 4) },
      ],
      priceDate: PRICE_DATE,
    },
  ];
}
