import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { countResults } from '../count-results.mjs';

const folder = mkdtempSync(join(tmpdir(), 'latchwork-count-'));
afterAll(() => rmSync(folder, { recursive: true }));

function counted(report: string, ran: boolean) {
  const file = join(folder, 'report.json');
  writeFileSync(file, report);
  return countResults(file, ran);
}
const report = (numPassedTests: number, numFailedTests: number) =>
  JSON.stringify({ numPassedTests, numFailedTests });

describe('what npm test counts', () => {
  it.each([
    ['a good run', report(5, 0), true, { passed: 5, failed: 0 }],
    ['failed tests', report(5, 2), false, { passed: 5, failed: 2 }],
    ['a run that ended badly without a failed test', report(5, 0), false, { passed: 5, failed: 1 }],
    ['a run without any test', report(0, 0), true, { passed: 0, failed: 1 }],
    ['a report cut short', '{"numPassed', false, { passed: 0, failed: 1 }],
  ])('%s', (_what, text, ran, counts) => {
    expect(counted(text, ran)).toEqual(counts);
  });

  it('no report', () => {
    expect(countResults(join(folder, 'nothing.json'), true)).toEqual({ passed: 0, failed: 1 });
  });
});
