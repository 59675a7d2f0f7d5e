import { roundTo } from '../../model/length-text';

/** What makes the need of an order, in pieces or metres. */
export interface NeedParts {
  /** Of one harness. */
  readonly perHarness: number;
  readonly harnesses: number;
  /** Share that is lost: 0.03 is three in a hundred. */
  readonly scrapShare: number;
  readonly setUp: number;
  readonly samples: number;
  readonly onHand: number;
  /** The smallest amount that can be used: 1 for pieces, 0.001 for metres. */
  readonly step: number;
}

export interface OrderNeed {
  /** In the harnesses themselves. */
  readonly need: number;
  readonly scrap: number;
  /** need x (1 + scrap) + set-up + samples, rounded up to the step. */
  readonly total: number;
  /** Taken from the own store. */
  readonly fromStock: number;
  /** What is left to buy. */
  readonly toBuy: number;
}

/** need x (1 + scrap) + set-up + samples, less what is in store (J1 and J6 of common practice). */
export function orderNeed(p: NeedParts): OrderNeed {
  const need = tidy(p.perHarness * p.harnesses);
  const scrap = tidy(need * p.scrapShare);
  const total = roundUp(need + scrap + p.setUp + p.samples, p.step);
  const fromStock = Math.min(p.onHand, total);
  return { need, scrap, total, fromStock, toBuy: roundUp(total - fromStock, p.step) };
}

/** The next multiple of the step; what lies a billionth above one is that one, so that 100 x 1.03 is 103. */
export function roundUp(value: number, step: number): number {
  return tidy(Math.ceil(roundTo(value / step, 9)) * step);
}

/** Without the last binary digits. */
export const tidy = (value: number): number => roundTo(value, 9);
