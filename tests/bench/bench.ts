/** Timings of one part of the program. They are looked at, never asserted: machines differ. */
export interface Bench {
  readonly name: string;
  readonly cases: readonly { readonly name: string; readonly targetMs?: number; readonly run: () => void }[];
}
