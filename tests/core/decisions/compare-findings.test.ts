import { expect, test } from 'vitest';
import { compareFindings } from '@latchwork/core/decisions/compare-findings';
import { goOnSeen, startSeen } from '@latchwork/core/decisions/seen-findings';
import type { Project } from '@latchwork/core/model/project';
import { faulty, findingsOf } from './sample';

const checked = (project: Project) => ({
  project,
  findings: findingsOf(project).filter((f) => f.rule === 'strip-length'),
});
const nine = checked(faulty());
const ten = checked(faulty((t) => void (t.wire('W1').ends[0].stripLengthMm = 10)));
const two = checked(faulty((t) => void (t.wire('W2').ends[0].stripLengthMm = 10)));
const none = checked(faulty((t) => void delete t.project.wires.splice(0, 1)[0]));
const again = checked(faulty());

test.each([
  ['another value', nine, ten, [0, 0, 1]],
  ['one more', nine, two, [0, 1, 0]],
  ['one less', two, nine, [1, 0, 0]],
  ['gone with its wire', nine, none, [1, 0, 0]],
  ['made anew from the same file', nine, again, [0, 0, 0]],
])('findings compared: %s', (_name, before, after, [gone, added, changed]) => {
  const c = compareFindings(before, after);
  expect([c.gone.length, c.added.length, c.changed.length]).toEqual([gone, added, changed]);
});

test('a watch says since when each finding is there, and when it last changed', () => {
  const key = nine.findings[0]!.key;
  let seen = startSeen(nine.findings, '10:00');
  expect(seen.get(key)).toEqual({ first: '10:00', fromStart: true, changed: null });
  expect(goOnSeen(seen, nine, again, '10:01')).toBe(seen);
  seen = goOnSeen(seen, nine, ten, '10:02');
  expect(seen.get(key)).toEqual({ first: '10:00', fromStart: true, changed: '10:02' });
  seen = goOnSeen(seen, ten, none, '10:03');
  expect(seen.size).toBe(0);
  seen = goOnSeen(seen, none, nine, '10:04');
  expect(seen.get(key)).toEqual({ first: '10:04', fromStart: false, changed: null });
});
