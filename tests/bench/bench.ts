/** Timings of one part of the program. They are looked at, never asserted: machines differ. */
export interface Bench {
  readonly name: string;
  readonly cases: readonly {
    readonly name: string;
    readonly targetMs?: number;
    /** An earlier case of this bench; how many times its time this one takes is printed. */
    readonly ratioTo?: string;
    readonly run: () => void;
    /** After each run, not timed: puts things back, so that every run has the same to do. */
    readonly after?: () => void;
  }[];
}
