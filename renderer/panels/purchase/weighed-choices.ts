import type { OrderChoice } from '@latchwork/core/calc/purchase/order-choices';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';

/** A quantity of one of the offers that may be taken. */
export interface WeighedChoice {
  readonly choice: OrderChoice;
  /** "offer 2", as the offers of the part are numbered. */
  readonly offer: string;
  readonly currency: string;
  /** The one that is ordered. */
  readonly best: boolean;
}

/** Everything that was weighed for a line: the quantities of every offer that may be taken. */
export const weighedChoices = (line: PurchaseLine): readonly WeighedChoice[] =>
  line.offers.flatMap((w, i) =>
    w.against === undefined
      ? w.choices.map((choice) => ({
          choice,
          offer: `offer ${i + 1}`,
          currency: w.offer.currency,
          best: choice === line.chosen?.choice,
        }))
      : [],
  );
