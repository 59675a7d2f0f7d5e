import type { CalcProblem } from '@latchwork/core/calc/calc-problem';
import type { Result } from '@latchwork/core/base/result';

/** One number that this program computes, beside the number that somebody else published. */
export interface PublishedCheck {
  /** Id of the calculation. */
  readonly calculation: string;
  /** Checks of one table or example share a group; the documentation shows one line for each. */
  readonly group: string;
  readonly source: string;
  /** How far the published number can be trusted. */
  readonly confidence: 'published' | 'derived' | 'memory';
  readonly what: string;
  readonly computed: number;
  readonly published: number;
  readonly unit: string;
  /**
   * What may lie between them: rounding of the printed number (`relative` or `absolute`), or `below`: the published number
   * is a maximum, and the computed one lies under it, but by no more than this share.
   */
  readonly allowed:
    { readonly relative: number } | { readonly absolute: number } | { readonly below: number };
}

/** The answer, or an error that names the problem. */
export function valueOf<T>(result: Result<T, CalcProblem>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

export const relativeDeviation = (c: PublishedCheck): number =>
  c.published === 0 ? Math.abs(c.computed) : (c.computed - c.published) / c.published;

export function passes(c: PublishedCheck): boolean {
  const gap = c.computed - c.published;
  if ('relative' in c.allowed) return Math.abs(gap) <= c.allowed.relative * Math.abs(c.published);
  // A printed decimal has no exact binary form: the last bit is not a deviation.
  if ('absolute' in c.allowed) return Math.abs(gap) <= c.allowed.absolute + 1e-12;
  return gap <= 0 && -gap <= c.allowed.below * c.published;
}
