/** Where the command line talks: results to `out`, talk to `err`; and what it stands on. */
export interface Io {
  /** Root folder of the program: what comes with it lies there. */
  readonly root: string;
  /** The day, YYYY-MM-DD, on which decisions are judged where none is named. */
  today(): string;
  out(text: string): void;
  err(text: string): void;
}

/** 0 clean; 1 findings at or above the wanted severity, or a difference that was asked for; 2 could not run. */
export type ExitCode = 0 | 1 | 2;
export const CLEAN = 0;
export const FOUND = 1;
export const COULD_NOT_RUN = 2;
