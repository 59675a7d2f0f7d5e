import { expect, test } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Net } from '@latchwork/core/derive/harness';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';

const points = (net: Net): string[] =>
  net.points.map((p) => `${p.connector.connector.designator}:${p.cavity}`).sort();
const netOf = (change: ((t: TinyDraft) => void) | undefined, point: string): string[] => {
  const net = deriveHarness(tiny(change)).nets.find((n) => points(n).includes(point));
  return net ? points(net) : [];
};

test('a net runs through wires and mated contacts', () => {
  expect(netOf(undefined, 'X1:1')).toEqual(['X1:1', 'X2:1', 'X3:1', 'X4:1']);
});

test('without the mate it ends at the connector', () => {
  expect(netOf((t) => (t.project.mates = t.project.mates.slice(1)), 'X1:1')).toEqual([
    'X1:1',
    'X2:1',
    'X4:1',
  ]);
});

test('a declared map leads it to another number', () => {
  const crossed = (t: TinyDraft): void => {
    t.project.mates[0]!.map = [
      { a: '1', b: '2' },
      { a: '2', b: '1' },
      { a: '3', b: '3' },
    ];
  };
  expect(netOf(crossed, 'X1:1')).toEqual(['X1:1', 'X2:1', 'X3:2', 'X4:1']);
});

test('a splice joins every wire end that names it', () => {
  const spliced = (t: TinyDraft): void => {
    const splice = { id: t.newId(), designator: 'XS1', position: { x: 0, y: 0 } };
    t.project.splices.push(splice);
    t.wire('W1').ends[1] = { at: 'splice', splice: splice.id };
    t.wire('W2').ends[1] = { at: 'splice', splice: splice.id };
  };
  expect(netOf(spliced, 'X1:1')).toEqual(['X1:1', 'X1:2', 'X3:1', 'X3:2']);
});

test('a free end joins nothing', () => {
  const free = (t: TinyDraft): void => {
    t.wire('W1').ends[1] = { at: 'free', position: { x: 0, y: 0 } };
    t.wire('W2').ends[1] = { at: 'free', position: { x: 0, y: 0 } };
  };
  expect(netOf(free, 'X1:1')).toEqual(['X1:1', 'X3:1']);
  expect(netOf(free, 'X1:2')).toEqual(['X1:2', 'X3:2']);
});

test('a net that an edit did not touch keeps its identity', () => {
  const before = tiny();
  const first = deriveHarness(before);
  const [w1, w2] = before.wires as [(typeof before.wires)[0], (typeof before.wires)[0]];
  const second = deriveHarness({ ...before, wires: [{ ...w1, note: 'changed' }, w2] }, first);
  const net = (h: typeof first, point: string): Net => h.nets.find((n) => points(n).includes(point))!;
  expect(net(second, 'X1:2')).toBe(net(first, 'X1:2'));
  expect(net(second, 'X1:1')).not.toBe(net(first, 'X1:1'));
  expect(second.wires[1]).toBe(first.wires[1]);
});
