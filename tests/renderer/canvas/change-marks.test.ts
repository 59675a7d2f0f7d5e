import { expect, test } from 'vitest';
import type { Box } from '@latchwork/core/base/point';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { compareProjects } from '@latchwork/core/exports/compare/compare-projects';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { changeMarks } from '../../../renderer/canvas/compare/change-marks';

const inputOf = (project: Project) => {
  const check = checkHarness(deriveHarness(project), []);
  return { harness: check.harness, check, date: '2026-03-01' };
};
const box = (x: number): Box => ({ minX: x, minY: 0, maxX: x + 1, maxY: 1 });
const NOW = box(0);
const THEN = box(100);

const marksOf = (before: Project, after: Project) =>
  changeMarks(
    compareProjects(inputOf(before), inputOf(after), []),
    () => NOW,
    () => THEN,
    () => true,
  );

test('what is there is marked where it is, what is gone where it was, each once and with its sign', () => {
  const before = tiny();
  const [w1, w2] = before.wires;
  const after = {
    ...before,
    wires: [{ ...w1!, colour: { base: 'VT' }, note: 'mind' } as typeof w1 & object],
  };
  const wires = marksOf(before, after).filter((m) => m.text.includes('W'));
  expect(wires).toEqual([
    { what: 'removed', text: '− W2', box: THEN },
    { what: 'changed', text: '~ W1', box: NOW },
  ]);
  expect(marksOf(after, before)).toContainEqual({ what: 'added', text: '+ W2', box: NOW });
  expect(w2?.designator).toBe('W2');
});

test('nothing is marked where nothing differs, nor what has no place on the sheet', () => {
  expect(marksOf(tiny(), tiny())).toEqual([]);
  const before = tiny();
  const after = { ...before, wires: before.wires.slice(1) };
  const c = compareProjects(inputOf(before), inputOf(after), []);
  expect(
    changeMarks(
      c,
      () => null,
      () => null,
      () => true,
    ),
  ).toEqual([]);
});
