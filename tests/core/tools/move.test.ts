import { tiny } from '@latchwork/core/model/tiny';
import { expect, it } from 'vitest';
import { bench } from '../../drive/bench-driver';
import { twoConnectors } from '../../drive/bench-parts';

it('moves a connector by its title, onto the grid, in one step', () => {
  const b = bench.open(twoConnectors()).press('X1').dragBy(22, 31).release();
  expect(b.position('X1')).toEqual({ x: 20, y: 30 });
  expect(b.steps()).toBe(1);
});

it('moves off the grid while Alt is held', () => {
  const b = bench.open(twoConnectors()).holding({ alt: true }).press('X1').dragBy(22, 31).release();
  expect(b.position('X1')).toEqual({ x: 22, y: 31 });
});

it('moves all that is selected when one of them is dragged', () => {
  const b = bench.open(twoConnectors());
  b.press({ x: -20, y: -20 }).dragTo({ x: 160, y: 80 }).release();
  expect(b.selection()).toEqual(['X1', 'X2']);
  b.press('X2').dragBy(0, 50).release();
  expect([b.position('X1').y, b.position('X2').y]).toEqual([50, 70]);
});

it('selects on a click, adds with Shift, and lets go on the empty sheet', () => {
  const b = bench.open(twoConnectors()).click('X1');
  expect(b.selection()).toEqual(['X1']);
  b.holding({ add: true }).click('X2');
  expect(b.selection()).toEqual(['X1', 'X2']);
  b.click({ x: 60, y: 200 });
  expect(b.selection()).toEqual([]);
});

it('puts everything back on Escape', () => {
  const b = bench.open(twoConnectors()).press('X1').dragBy(40, 0).escape().release();
  expect(b.position('X1')).toEqual({ x: 0, y: 0 });
});

it('mates two halves when one is dropped beside the other, in one step', () => {
  const b = bench.open(twoConnectors()).press('X2').dragTo({ x: 42, y: 4 }).release();
  expect(b.mates()).toEqual(['X2=X1']);
  expect(b.steps()).toBe(1);
  expect(b.position('X2')).toEqual({ x: 28, y: 0 });
  b.undo();
  expect([b.mates(), b.position('X2')]).toEqual([[], { x: 120, y: 20 }]);
});

it('says why two halves cannot mate, and keeps them all the same when told to', () => {
  const b = bench.open(
    tiny((t) => {
      Object.assign(t.project, twoConnectors());
      t.part('housing', 'H-PIN').keying = 'B';
    }),
  );
  b.press('X2').dragTo({ x: 42, y: 4 }).release();
  expect(b.mates()).toEqual([]);
  expect(b.question()).toContain('keying code');
  b.keepAnyway();
  expect(b.mates()).toEqual(['X2=X1']);
  expect(b.question()).toBeNull();
});
