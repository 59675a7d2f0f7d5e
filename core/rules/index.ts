import type { AnyRule } from './rule';

/** The rule book, in the order in which it is read. */
export const RULES: readonly AnyRule[] = [];
