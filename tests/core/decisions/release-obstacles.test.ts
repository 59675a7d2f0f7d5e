import { expect, test } from 'vitest';
import { releaseObstacles } from '@latchwork/core/decisions/release-obstacles';
import type { Finding } from '@latchwork/core/rules/finding';
import { faulty, permitOn, theFinding, withDecisions } from './sample';

const project = faulty();
const found = theFinding(project);
const like = (key: string, change: Partial<Finding>): Finding => ({ ...found, key, ...change });
const findings = [
  like('a', { severity: 'critical' }),
  like('b', { severity: 'critical', result: 'cannot-verify', needs: [{ what: 'length' }] }),
  like('c', { severity: 'major' }),
  like('d', { severity: 'note', result: 'cannot-verify' }),
];
const permit = (key: string) =>
  permitOn(
    project,
    findings.find((f) => f.key === key)!,
  );

const told = (date: string, ...decided: string[]) => {
  const p = withDecisions(project, ...decided.map(permit));
  const { blocking, open, accepted } = releaseObstacles(p, findings, date);
  return [blocking, open, accepted].map((list) => list.map((f) => f.finding.key).join(''));
};

test.each([
  ['nothing decided: what fails and what cannot be verified blocks alike', '2026-03-01', '', ['ab', 'cd', '']],
  ['one of two decided: the other still blocks', '2026-03-01', 'a', ['b', 'cd', 'a']],
  ['both decided', '2026-03-01', 'ab', ['', 'cd', 'ab']],
  ['both decided, and the day is past', '2026-07-01', 'ab', ['ab', 'cd', '']],
  ['a lighter one never blocks, and is listed', '2026-03-01', 'abcd', ['', '', 'abcd']],
])('%s', (_name, date, decided, expected) => {
  expect(told(date, ...decided)).toEqual(expected);
}); // prettier-ignore
