import { tiny } from '@latchwork/core/model/tiny';
import { expect, it } from 'vitest';
import { bench } from '../../drive/bench-driver';

const parts = tiny().parts;
/** X2 turned so that its wires run straight to X1. */
const facing = () =>
  tiny((t) => {
    t.connector('X2').exit = 'left';
  });

it('places a housing where it is dropped, on the grid', () => {
  const b = bench.open(tiny(), parts).drop('H-SOCKET', { x: 62, y: 120 });
  const placed = b.project().connectors.at(-1)!;
  expect(placed.designator).toBe('X5');
  expect([placed.position.x % 5, placed.position.y % 5].map(Math.abs)).toEqual([0, 0]);
  expect(placed.equipment).toBeUndefined();
});

it('gives a header to the board under it, but not a free housing', () => {
  const b = bench.open(tiny(), parts).drop('HEADER', { x: -40, y: 55 });
  expect(b.project().connectors.at(-1)!.equipment).toBe(b.project().equipment[0]!.id);
  b.drop('H-SOCKET', { x: -40, y: 55 });
  expect(b.project().connectors.at(-1)!.equipment).toBeUndefined();
});

it.each([
  ['WIRE-26', 'W1', 'wire.set-part'],
  ['LOCK', 'X2', 'connector.add-accessory'],
  ['C-SOCKET-AU', 'X1:1', 'contact.set'],
])('applies %s to %s as %s', (number, place, command) => {
  const b = bench.open(facing(), parts).drop(number, place);
  expect(b.note()).toBeNull();
  expect(b.store.getState().history.undo.map((s) => s.command)).toEqual([command]);
});

it('says where a wire part belongs when it is dropped on nothing', () => {
  const b = bench.open(tiny(), parts).drop('WIRE-26', { x: 60, y: 200 });
  expect(b.steps()).toBe(0);
  expect(b.note()).toContain('Drop it on a wire');
});
