import type { Point } from '../base/point';
import type { Target } from './tool';

/** Where a wire may end; the same shape as the commands take. */
export type WireEndTarget =
  | { readonly at: 'cavity'; readonly connector: string; readonly cavity: string }
  | { readonly at: 'splice'; readonly splice: string }
  | { readonly at: 'free'; readonly position: Point };

/** The wire end that a release at this target means; null where no wire can end. */
export function wireEndAt(target: Target, at: Point): WireEndTarget | null {
  switch (target.on) {
    case 'cavity':
      return { at: 'cavity', connector: target.connector, cavity: target.cavity };
    case 'splice':
      return { at: 'splice', splice: target.id };
    case 'sheet':
    case 'equipment':
      return { at: 'free', position: at };
    default:
      return null;
  }
}

export const samePlace = (a: WireEndTarget, b: WireEndTarget): boolean =>
  (a.at === 'cavity' && b.at === 'cavity' && a.connector === b.connector && a.cavity === b.cavity) ||
  (a.at === 'splice' && b.at === 'splice' && a.splice === b.splice);
