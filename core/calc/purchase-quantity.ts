import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { cheapestChoice, orderChoices } from './purchase/order-choices';
import { orderNeed, tidy } from './purchase/order-need';

export interface PurchaseQuantity extends Answer {
  readonly total: number;
  readonly quantity: number;
  readonly breakQuantity: number;
  readonly price: number;
  readonly cost: number;
  readonly leftOver: number;
  readonly leftOverCost: number;
}

const PRACTICE: CalcSource = {
  title: 'Common practice: need x (1 + scrap) + set-up + samples; minimum, whole packs, price breaks',
  verified: true,
};
const SAMPLES: CalcSource = {
  title: 'NASA LLIS-0465: destructive samples for each tool and setting',
  verified: false,
};

const inputs = z.strictObject({
  perHarness: field(z.number().positive(), 'Needed for one harness (pieces or metres)'),
  harnesses: field(z.int().positive().default(1), 'Harnesses'),
  scrapPercent: field(z.number().min(0).max(100).default(3), 'Scrap', '%'),
  setUp: field(z.number().nonnegative().default(0), 'Set-up'),
  samples: field(z.number().nonnegative().default(0), 'Destructive samples'),
  onHand: field(z.number().nonnegative().default(0), 'In the own store'),
  minimum: field(z.number().positive().optional(), 'Minimum of an order'),
  multiple: field(z.number().positive().default(1), 'Pack'),
  priceBreaks: field(
    z.array(z.strictObject({ quantity: z.number().positive(), price: z.number().nonnegative() })).min(1),
    'Price breaks',
  ),
});

/**
 * The cheapest quantity that covers an order: need x (1 + scrap) + set-up + samples, at least the minimum, in whole packs,
 * at the price that holds from that quantity on. More than needed is taken where the next price makes it cheaper.
 */
export const purchaseQuantity = calculation<typeof inputs, PurchaseQuantity>({
  id: 'purchase-quantity',
  title: 'Purchase quantity',
  about: 'The cheapest quantity to order over price breaks, minimum and packs, and what is left over.',
  inputs,
  outputs: {
    total: { label: 'Needed in all', unit: '' },
    quantity: { label: 'Order', unit: '' },
    breakQuantity: { label: 'Price from', unit: '' },
    price: { label: 'Price of one', unit: '' },
    cost: { label: 'Cost', unit: '' },
    leftOver: { label: 'Left over', unit: '' },
    leftOverCost: { label: 'Cost of what is left over', unit: '' },
  },
  sources: [PRACTICE, SAMPLES],
  run(input) {
    const { perHarness, harnesses, setUp, samples, onHand } = input;
    const step = Number.isInteger(perHarness) ? 1 : 0.001;
    const scrapShare = input.scrapPercent / 100;
    const need = orderNeed({ perHarness, harnesses, scrapShare, setUp, samples, onHand, step });
    const choices = orderChoices(need.toBuy, { ...input, breaks: input.priceBreaks });
    const best = cheapestChoice(choices);
    const quantity = best?.quantity ?? 0;
    const price = best?.price ?? 0;
    const leftOver = tidy(quantity - need.toBuy);
    return answer({
      total: need.total,
      quantity,
      breakQuantity: best?.breakQuantity ?? 0,
      price,
      cost: best?.cost ?? 0,
      leftOver,
      leftOverCost: tidy(leftOver * price),
      working: {
        formula: 'total = need x (1 + scrap) + setUp + samples',
        figures: [
          figure('Need', need.need),
          figure('Scrap', need.scrap),
          figure('Set-up', setUp),
          figure('Samples', samples),
          figure('From the own store', need.fromStock),
          figure('To buy', need.toBuy),
          ...choices.map((c) => figure(`Cost of ${c.quantity} at ${c.price}`, c.cost)),
        ],
        sources: [PRACTICE, SAMPLES],
        notes: [
          'Prices in one currency; the cost of keeping what is left over is not counted.',
          ...(step === 1 ? ['Pieces: what is needed is rounded up to whole ones.'] : []),
        ],
      },
    });
  },
});
