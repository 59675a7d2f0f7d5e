import { boardChecks } from './board-checks';
import { bundleChecks } from './bundle-checks';
import type { PublishedCheck } from './check';
import { crimpChecks } from './crimp-checks';
import { lengthChecks } from './length-checks';
import { purchaseChecks } from './purchase-checks';
import { workedGeometryChecks } from './worked-geometry-checks';

/** Every calculation of geometry and process beside what was published, or worked by hand where nothing is published. */
export const geometryChecks: readonly PublishedCheck[] = [
  ...bundleChecks,
  ...lengthChecks,
  ...crimpChecks,
  ...boardChecks,
  ...workedGeometryChecks,
  ...purchaseChecks,
];
