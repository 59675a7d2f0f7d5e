import { readFileSync } from 'node:fs';

/**
 * Counts what vitest wrote. A run that ended badly without a failed test (a file that does not load, an unhandled
 * rejection, nothing found) is one failure: it must not look like success.
 * @param {string} file its JSON report
 * @param {boolean} ran whether it ended with 0
 * @returns {{ passed: number; failed: number }}
 */
export function countResults(file, ran) {
  let report;
  try {
    report = JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return { passed: 0, failed: 1 };
  }
  const passed = report.numPassedTests;
  const failed = report.numFailedTests;
  return { passed, failed: failed === 0 && (!ran || passed === 0) ? 1 : failed };
}
