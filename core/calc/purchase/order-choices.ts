import { roundUp, tidy } from './order-need';

/** A supplier's terms for one part, per piece or metre. */
export interface OrderTerms {
  readonly minimum?: number | undefined;
  /** Pack or reel; absent: whole pieces or metres. */
  readonly multiple?: number | undefined;
  readonly breaks: readonly { readonly quantity: number; readonly price: number }[];
}

/** A quantity that may be ordered, with the price that holds for it. */
export interface OrderChoice {
  readonly quantity: number;
  /** From this quantity on the price holds. */
  readonly breakQuantity: number;
  readonly price: number;
  readonly cost: number;
}

/** The least that may be ordered: what is wanted and the minimum, in whole packs, before any price is looked at. */
export function leastOrder(toBuy: number, terms: Pick<OrderTerms, 'minimum' | 'multiple'>): number {
  return roundUp(Math.max(toBuy, terms.minimum ?? 0), terms.multiple ?? 1);
}

/**
 * The quantities that can be the cheapest, by quantity: the least that may be ordered, and the first whole pack from each
 * price break above it, since between two breaks the cost only grows. None where no price holds; nothing to buy needs none.
 */
export function orderChoices(toBuy: number, terms: OrderTerms): readonly OrderChoice[] {
  if (toBuy <= 0) return [];
  const least = leastOrder(toBuy, terms);
  const multiple = terms.multiple ?? 1;
  const starts = terms.breaks.map((b) => roundUp(b.quantity, multiple)).filter((q) => q > least);
  return [...new Set([least, ...starts])]
    .sort((a, b) => a - b)
    .flatMap((quantity) => {
      const holds = breakAt(terms.breaks, quantity);
      if (!holds) return [];
      const { quantity: breakQuantity, price } = holds;
      return [{ quantity, breakQuantity, price, cost: tidy(quantity * price) }];
    });
}

/** The cheapest; of equal ones the smallest, which leaves least over. */
export const cheapestChoice = (choices: readonly OrderChoice[]): OrderChoice | undefined =>
  choices.reduce<OrderChoice | undefined>((best, c) => (best && best.cost <= c.cost ? best : c), undefined);

/** The last break that the quantity reaches. Below the first there is no price. */
function breakAt(breaks: OrderTerms['breaks'], quantity: number): OrderTerms['breaks'][number] | undefined {
  return breaks
    .filter((b) => b.quantity <= quantity)
    .reduce<OrderTerms['breaks'][number] | undefined>(
      (last, b) => (last && last.quantity >= b.quantity ? last : b),
      undefined,
    );
}
