import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { purchaseQuantity } from '@latchwork/core/calc/purchase-quantity';
import { cheapestChoice, leastOrder, orderChoices } from '@latchwork/core/calc/purchase/order-choices';
import { orderNeed } from '@latchwork/core/calc/purchase/order-need';

/** Terms in whole numbers: quantities in tenths, prices in ten-thousandths, so that the search below is exact. */
interface Whole {
  readonly toBuy: number;
  readonly minimum: number | undefined;
  readonly multiple: number | undefined;
  readonly breaks: readonly { quantity: number; price: number }[];
}

/** Every quantity that may be ordered, one by one: the cheapest, and of equal ones the smallest. In whole numbers. */
function searched({
  toBuy,
  minimum,
  multiple,
  breaks,
}: Whole): { quantity: number; cost: number } | undefined {
  const pack = multiple ?? 10;
  const end = Math.max(toBuy, minimum ?? 0, ...breaks.map((b) => b.quantity)) + 2 * pack;
  let best: { quantity: number; cost: number } | undefined;
  for (let q = 1; q <= end; q++) {
    if (q < toBuy || q < (minimum ?? 0) || q % pack !== 0) continue;
    let price: number | undefined;
    let from = 0;
    for (const b of breaks)
      if (b.quantity <= q && b.quantity > from) {
        from = b.quantity;
        price = b.price;
      }
    if (price === undefined) continue;
    if (!best || q * price < best.cost) best = { quantity: q, cost: q * price };
  }
  return best;
}

const wholeTerms = fc.record({
  toBuy: fc.integer({ min: 1, max: 900 }),
  minimum: fc.option(fc.integer({ min: 1, max: 900 }), { nil: undefined }),
  multiple: fc.option(fc.integer({ min: 1, max: 250 }), { nil: undefined }),
  breaks: fc.uniqueArray(
    fc.record({ quantity: fc.integer({ min: 1, max: 2000 }), price: fc.integer({ min: 0, max: 900 }) }),
    { selector: (b) => b.quantity, maxLength: 5 },
  ),
});

const tenths = (n: number | undefined): number | undefined => (n === undefined ? undefined : n / 10);

describe('the cheapest quantity', () => {
  // Outside: exhaustive search over every admissible quantity, in whole numbers.
  it('is what exhaustive search finds, whatever the terms', () => {
    fc.assert(
      fc.property(wholeTerms, (w) => {
        const found = cheapestChoice(
          orderChoices(w.toBuy / 10, {
            minimum: tenths(w.minimum),
            multiple: tenths(w.multiple),
            breaks: w.breaks.map((b) => ({ quantity: b.quantity / 10, price: b.price / 10_000 })),
          }),
        );
        const best = searched(w);
        expect(
          found && { quantity: Math.round(found.quantity * 10), cost: Math.round(found.cost * 1e5) },
        ).toEqual(best);
      }),
      { numRuns: 3000 },
    );
  });

  it('is never less than wanted, below the minimum or a part of a pack', () => {
    fc.assert(
      fc.property(wholeTerms, (w) => {
        const terms = { minimum: w.minimum, multiple: w.multiple, breaks: w.breaks };
        for (const c of orderChoices(w.toBuy, terms)) {
          expect(c.quantity).toBeGreaterThanOrEqual(w.toBuy);
          expect(c.quantity).toBeGreaterThanOrEqual(w.minimum ?? 0);
          expect(c.quantity % (w.multiple ?? 1)).toBe(0);
          expect(c.quantity).toBeGreaterThanOrEqual(leastOrder(w.toBuy, terms));
        }
      }),
    );
  });

  it.each([
    // By hand. 95 pieces at 0.10 are 9.50, 100 at 0.09 are 9.00.
    ['a price break just above is cheaper', 95, { breaks: [{ quantity: 1, price: 0.1 }, { quantity: 100, price: 0.09 }] }, 100, 9],
    ['a price break far above is not', 50, { breaks: [{ quantity: 1, price: 0.1 }, { quantity: 100, price: 0.09 }] }, 50, 5],
    ['a minimum that is no whole pack is rounded up to one', 12, { minimum: 100, multiple: 30, breaks: [{ quantity: 1, price: 1 }] }, 120, 120],
    ['of equal costs the smaller quantity', 90, { breaks: [{ quantity: 1, price: 0.1 }, { quantity: 100, price: 0.09 }] }, 90, 9],
    ['a reel of 152.4 m (500 ft)', 20, { multiple: 152.4, breaks: [{ quantity: 1, price: 0.25 }] }, 152.4, 38.1],
    ['no price below the first break: up to it', 3, { breaks: [{ quantity: 50, price: 0.02 }] }, 50, 1],
  ] as const)('%s', (_, toBuy, terms, quantity, cost) => {
    expect(cheapestChoice(orderChoices(toBuy, terms))).toMatchObject({ quantity, cost });
  }); // prettier-ignore

  it('is not known without a price, and nothing is bought where nothing is wanted', () => {
    expect(orderChoices(10, { breaks: [] })).toEqual([]);
    expect(orderChoices(0, { minimum: 100, breaks: [{ quantity: 1, price: 1 }] })).toEqual([]);
  });
});

describe('the need of an order', () => {
  it.each([
    // By hand: 14 x 100 x 1.03 + 20 + 10 = 1442 + 30 = 1472.
    ['contacts for a hundred', { perHarness: 14, harnesses: 100, scrapShare: 0.03, setUp: 20, samples: 10, onHand: 0, step: 1 }, { need: 1400, scrap: 42, total: 1472, toBuy: 1472 }],
    ['100 x 1.03 is 103 and not 104', { perHarness: 1, harnesses: 100, scrapShare: 0.03, setUp: 0, samples: 0, onHand: 0, step: 1 }, { total: 103 }],
    ['a share of a piece is a piece', { perHarness: 1, harnesses: 1, scrapShare: 0.02, setUp: 0, samples: 0, onHand: 0, step: 1 }, { scrap: 0.02, total: 2 }],
    // 1.234 x 10 x 1.02 + 0.5 = 13.0868, up to the millimetre 13.087.
    ['metres to the millimetre', { perHarness: 1.234, harnesses: 10, scrapShare: 0.02, setUp: 0.5, samples: 0, onHand: 0, step: 0.001 }, { total: 13.087 }],
    ['less what is in store', { perHarness: 5, harnesses: 10, scrapShare: 0, setUp: 0, samples: 0, onHand: 30, step: 1 }, { total: 50, fromStock: 30, toBuy: 20 }],
    ['a full store buys nothing', { perHarness: 5, harnesses: 10, scrapShare: 0, setUp: 0, samples: 0, onHand: 300, step: 1 }, { fromStock: 50, toBuy: 0 }],
  ] as const)('%s', (_, parts, expected) => {
    expect(orderNeed(parts)).toMatchObject(expected);
  }); // prettier-ignore
});

describe('the calculation by name', () => {
  const ask = (input: Record<string, unknown>) => purchaseQuantity.run(purchaseQuantity.inputs.parse(input));

  it('answers what the two halves answer', () => {
    const result = ask({
      perHarness: 14,
      harnesses: 100,
      setUp: 20,
      samples: 10,
      multiple: 100,
      priceBreaks: [
        { quantity: 1, price: 0.05 },
        { quantity: 2000, price: 0.03 },
      ],
    });
    // By hand: 1472 needed; 1500 at 0.05 are 75.00, 2000 at 0.03 are 60.00.
    expect(result.ok && result.value).toMatchObject({
      total: 1472,
      quantity: 2000,
      price: 0.03,
      cost: 60,
      leftOver: 528,
      leftOverCost: 15.84,
    });
  });

  it('orders nothing where the store suffices', () => {
    const breaks = [{ quantity: 100, price: 1 }];
    expect(ask({ perHarness: 1, scrapPercent: 0, onHand: 5, priceBreaks: breaks })).toMatchObject({
      ok: true,
      value: { quantity: 0, cost: 0 },
    });
  });
});
