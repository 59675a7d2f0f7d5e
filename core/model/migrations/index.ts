/** A step from one format version to the next. `up` changes the raw JSON value in place. */
export interface Migration {
  readonly name: string;
  readonly to: number;
  up(raw: Record<string, unknown>): void;
}

/**
 * Steps in order, one file each. Version 1 is the first; the first change of the format adds `002-….ts` here and
 * a saved project of version 1 is already in tests/files/ to prove it.
 */
export const MIGRATIONS: readonly Migration[] = [];
