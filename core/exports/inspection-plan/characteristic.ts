import type { ObjectRef } from '../../rules/finding';

/** How much hangs on a characteristic; it decides how many are looked at. */
export type CharacteristicClass = 'critical' | 'major' | 'minor';

/** One thing that is held against a requirement. Bounds are absent where none are stated. */
export interface Characteristic {
  readonly what: string;
  /** "X1", "W3", "C-1 on WIRE-22". */
  readonly at: string;
  readonly requirement: string;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly unit?: string;
  readonly class: CharacteristicClass;
  readonly method: string;
  /** Items of that kind in one harness. */
  readonly perHarness: number;
  /**
   * `every`: each item is looked at whatever the lot. `plan`: by the sampling plan of its class. A check: a fixed number of
   * pieces each time the frequency says.
   */
  readonly sampling: 'every' | 'plan' | { readonly pieces: number; readonly frequency: string };
  readonly source: string;
  /** Document on which the result is written down. */
  readonly record: string;
  /** What is not stated. */
  readonly missing: readonly string[];
  readonly objects: readonly ObjectRef[];
}
