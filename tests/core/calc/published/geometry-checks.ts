import { boardChecks } from './board-checks';
import { bundleChecks } from './bundle-checks';
import type { PublishedCheck } from './check';
import { crimpChecks } from './crimp-checks';
import { handChecks } from './hand-checks';
import { lengthChecks } from './length-checks';

/** Every calculation of geometry and process beside what was published, or worked by hand where nothing is published. */
export const geometryChecks: readonly PublishedCheck[] = [
  ...bundleChecks,
  ...lengthChecks,
  ...crimpChecks,
  ...boardChecks,
  ...handChecks,
];
