import type { LimitSet } from '../limit-set';
import { AEROSPACE_LIMITS } from './aerospace';
import { GENERAL_LIMITS } from './general';

/** The shipped sets, in the order in which they are offered. */
export const LIMIT_SETS: readonly LimitSet[] = [GENERAL_LIMITS, AEROSPACE_LIMITS];
