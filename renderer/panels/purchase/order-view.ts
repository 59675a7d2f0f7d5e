import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import { createStore, useStore } from 'zustand';

export type ListMode = 'harness' | 'order' | 'volumes';

export interface OrderView {
  readonly mode: ListMode;
  /** Null: the largest build of the project. */
  readonly harnesses: number | null;
  /** Line that is looked at: its part and colour, see `lineKey`. */
  readonly line: string | null;
}

/** What the Parts list page shows; kept while other pages are looked at, not in the project. */
export const orderView = createStore<OrderView>()(() => ({ mode: 'harness', harnesses: null, line: null }));

export const useOrderView = <T>(pick: (state: OrderView) => T): T => useStore(orderView, pick);

/** The same line in another order, or after an edit. */
export const lineKey = ({ line }: PurchaseLine): string =>
  [line.kind, line.part?.id ?? '', line.colour ?? '', line.unit].join(' ');
