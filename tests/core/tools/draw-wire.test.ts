import { expect, it } from 'vitest';
import { bench } from '../../drive/bench-driver';
import { twoConnectors } from '../../drive/bench-parts';

it('draws a wire from cavity to cavity, with the contacts that fit', () => {
  const b = bench.open(twoConnectors()).pressPin('X1:1').dragTo('X2:3').release();
  expect(b.wires()).toEqual(['X1:1–X2:3']);
  expect(b.contactsAt('X1:1')).toEqual(['C-SOCKET']);
  expect(b.contactsAt('X2:3')).toEqual(['C-PIN']);
  expect(b.steps()).toBe(1);
  b.undo();
  expect(b.wires()).toEqual([]);
});

it('writes nothing before the release, and nothing at all after Escape', () => {
  const b = bench.open(twoConnectors()).pressPin('X1:1').dragTo('X2:3');
  expect(b.gesture()).toBe('draw-wire');
  expect(b.wires()).toEqual([]);
  b.escape().release();
  expect(b.wires()).toEqual([]);
  expect(b.steps()).toBe(0);
});

it('lets a wire end in the open when it is released on the empty sheet, on the grid', () => {
  const b = bench.open(twoConnectors()).pressPin('X1:2').dragTo({ x: 61, y: 78 }).release();
  expect(b.wires()).toEqual(['X1:2–(60,80)']);
});

it('ends a wire at a splice', () => {
  const b = bench.open(twoConnectors()).take('splice').click({ x: 60, y: 60 });
  b.pressPin('X1:1').dragTo('XS1').release();
  expect(b.wires()).toEqual(['X1:1–XS1']);
});

it('selects the cavity when the press does not move', () => {
  const b = bench.open(twoConnectors()).click('X1:2');
  expect(b.wires()).toEqual([]);
  expect(b.selection()).toEqual(['X1:2']);
});

it('says why when a wire is let go on a body', () => {
  const b = bench.open(twoConnectors()).pressPin('X1:1').dragTo('X2').release();
  expect(b.wires()).toEqual([]);
  expect(b.note()).toContain('cavity');
});

it('takes the end of a selected wire to another cavity', () => {
  const b = bench.open(twoConnectors()).pressPin('X1:1').dragTo('X2:1').release();
  b.click('W1');
  expect(b.selection()).toEqual(['W1']);
  // The handle stands where the wire leaves the body of X2, at its left edge.
  const at = { x: b.position('X2').x, y: b.position('X2').y };
  const end = b.project().wires[0]!.ends[1];
  expect(end.at).toBe('cavity');
  b.press({ x: at.x, y: at.y + 12 + 12 })
    .dragTo('X2:2')
    .release();
  expect(b.wires()).toEqual(['X1:1–X2:2']);
});

it('draws a wire from the keyboard', () => {
  const b = bench.open(twoConnectors()).click('X1:1').enter().walk('next-cavity').enter();
  expect(b.wires()).toEqual(['X1:1–X2:2']);
});
