import type { Finish } from '../model/parts/common';

/** Finishes that do not oxidise and wear alike. */
const NOBLE: ReadonlySet<Finish> = new Set<Finish>(['gold', 'palladium-nickel']);

/**
 * Whether contacts of these finishes may meet: the same finish, or two noble ones (table of finish pairs from memory;
 * tin on gold: Chudnovsky, "Detrimental processes and aging of plating", CRC Press).
 */
export const finishesAgree = (a: Finish, b: Finish): boolean => a === b || (NOBLE.has(a) && NOBLE.has(b));
