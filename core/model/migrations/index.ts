import { fixingsAndDimensions } from './002-fixings-and-dimensions';
import type { Migration } from './migration';

/** Steps in order, one file each; a saved project of every version stands in tests/files/projects to prove them. */
export const MIGRATIONS: readonly Migration[] = [fixingsAndDimensions];
