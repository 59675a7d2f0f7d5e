import type { PublishedCheck } from './check';
import { conductorChecks } from './conductor-checks';
import { currentChecks } from './current-checks';
import { handChecks } from './hand-checks';
import { heatChecks } from './heat-checks';
import { insulationChecks } from './insulation-checks';

/** Every electrical calculation beside what was published; the table in the documentation is made from this list. */
export const electricalChecks: readonly PublishedCheck[] = [
  ...conductorChecks,
  ...currentChecks,
  ...handChecks,
  ...heatChecks,
  ...insulationChecks,
];
