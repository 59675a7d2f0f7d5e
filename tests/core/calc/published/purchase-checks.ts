import { purchaseQuantity } from '@latchwork/core/calc/purchase-quantity';
import { valueOf, type PublishedCheck } from './check';

/** Loose contacts in packs of 100, then reels of 4,000: 20 for a harness, 10 set-up pieces, 5 samples, 3 % scrap. */
const LOOSE = { minimum: 100, multiple: 100, priceBreaks: [{ quantity: 100, price: 0.096 }, { quantity: 500, price: 0.076 }] }; // prettier-ignore
const REELS = { minimum: 4000, multiple: 4000, priceBreaks: [{ quantity: 4000, price: 0.04 }, { quantity: 12000, price: 0.0344 }, { quantity: 40000, price: 0.028 }] }; // prettier-ignore

// Worked by hand on the page tests/core/exports/purchase/PURCHASE.md.
const WORKED = [
  { harnesses: 1, terms: LOOSE, total: 36, quantity: 100, cost: 9.6, leftOver: 64 },
  { harnesses: 10, terms: LOOSE, total: 221, quantity: 300, cost: 28.8, leftOver: 79 },
  { harnesses: 100, terms: LOOSE, total: 2075, quantity: 2100, cost: 159.6, leftOver: 25 },
  { harnesses: 100, terms: REELS, total: 2075, quantity: 4000, cost: 160, leftOver: 1925 },
  { harnesses: 1000, terms: REELS, total: 20615, quantity: 24000, cost: 825.6, leftOver: 3385 },
] as const;

export const purchaseChecks: readonly PublishedCheck[] = WORKED.flatMap(
  ({ harnesses, terms, ...expected }) => {
    const got = valueOf(
      purchaseQuantity.run({
        perHarness: 20,
        harnesses,
        scrapPercent: 3,
        setUp: 10,
        samples: 5,
        onHand: 0,
        minimum: terms.minimum,
        multiple: terms.multiple,
        priceBreaks: [...terms.priceBreaks],
      }),
    );
    return (['total', 'quantity', 'cost', 'leftOver'] as const).map((key) => ({
      calculation: 'purchase-quantity',
      group: 'Contacts in bags and on reels, worked by hand',
      source: 'worked by hand; exhaustive search over all quantities in order-choices.test.ts',
      confidence: 'derived',
      what: `${key} for ${harnesses} harnesses, packs of ${terms.multiple}`,
      computed: got[key],
      published: expected[key],
      unit: '',
      allowed: { relative: 1e-12 },
    }));
  },
);
