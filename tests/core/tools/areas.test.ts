import { expect, it } from 'vitest';
import { bench } from '../../drive/bench-driver';
import { twoConnectors } from '../../drive/bench-parts';

it('draws a board as a frame and puts the tool down', () => {
  const b = bench
    .open(twoConnectors())
    .take('board')
    .press({ x: 0, y: 101 })
    .dragTo({ x: 52, y: 149 })
    .release();
  expect(b.project().equipment).toMatchObject([
    { kind: 'board', designator: 'A1', position: { x: 0, y: 100 }, widthMm: 50, heightMm: 50 },
  ]);
  expect(b.store.getState().view.tool).toBe('select');
});

it('selects only what lies wholly in the frame', () => {
  const b = bench.open(twoConnectors());
  b.pressPin('X1:1').dragTo('X2:1').release();
  b.press({ x: -10, y: -10 }).dragTo({ x: 60, y: 60 }).release();
  expect(b.selection()).toEqual(['X1']);
  b.press({ x: -10, y: -10 }).dragTo({ x: 200, y: 90 }).release();
  expect(b.selection().sort()).toEqual(['W1', 'X1', 'X2']);
});
