import { expect, test } from 'vitest';
import { compareFindings } from '@latchwork/core/decisions/compare-findings';
import { RememberedFindings } from '@latchwork/core/model/remembered-finding';
import { goOnSeen, recall, startSeen, toRemember } from '@latchwork/core/decisions/seen-findings';
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

const [DAY_1, DAY_2, DAY_3] = ['2026-03-01T10:00:00Z', '2026-03-02T10:00:00Z', '2026-03-03T10:00:00Z'];

test('the machine remembers a watch over the closing of the file', () => {
  const remembered = toRemember(startSeen(nine.findings, DAY_1), nine);
  const key = nine.findings[0]!.key;
  const reopened = (now: typeof nine) => recall(startSeen(now.findings, DAY_2), now, remembered, DAY_2);
  expect(reopened(again).get(key)).toEqual({ first: DAY_1, fromStart: false, changed: null });
  expect(reopened(ten).get(key)).toEqual({ first: DAY_1, fromStart: false, changed: DAY_2 });
  const other = two.findings.find((f) => f.key !== key)!.key;
  expect(reopened(two).get(other)).toEqual({ first: DAY_2, fromStart: false, changed: null });
  const third = recall(startSeen(ten.findings, DAY_3), ten, toRemember(reopened(ten), ten), DAY_3);
  expect(third.get(key)).toEqual({ first: DAY_1, fromStart: false, changed: DAY_2 });
});

test('what was seen while the machine was being asked stands', () => {
  const remembered = toRemember(startSeen(nine.findings, DAY_1), nine);
  const seen = goOnSeen(startSeen(nine.findings, DAY_2), nine, two, DAY_3);
  const other = two.findings.find((f) => f.key !== nine.findings[0]!.key)!.key;
  expect(recall(seen, two, remembered, DAY_3).get(other)?.first).toBe(DAY_3);
  expect(recall(seen, two, remembered, DAY_3).get(nine.findings[0]!.key)?.first).toBe(DAY_1);
});

test('no word of the project is remembered', () => {
  const remembered = toRemember(startSeen(nine.findings, DAY_1), nine);
  expect(RememberedFindings.safeParse(remembered).success).toBe(true);
  expect(JSON.stringify(remembered)).not.toMatch(/strip|W1|X1/i);
  for (const { id } of nine.project.wires) expect(JSON.stringify(remembered)).not.toContain(id);
});
