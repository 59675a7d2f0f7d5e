import type { Call } from '@latchwork/core/commands/dispatch';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { boardAngleDeg } from '@latchwork/core/derive/formboard/board-angle';
import { normalDeg } from '@latchwork/core/derive/formboard/normal-deg';
import { pathThrough } from '@latchwork/core/derive/formboard/wire-path';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { describe, expect, it, test } from 'vitest';
import { workbench } from './calls';
import { after, refusal } from './try-call';

/** N1 – S1, 300 – N2, and the long way N1 – S2 – N3 – S3 – N2 about. */
const ring = (change?: (t: TinyDraft) => void): Project =>
  tiny((t) => {
    const [n1, n2] = t.project.nodes.map((n) => n.id) as [string, string];
    const n3 = t.newId();
    t.project.nodes.push({ id: n3, designator: 'N3', position: { x: 150, y: 200 } });
    t.project.segments.push(
      { id: t.newId(), designator: 'S2', from: n3, to: n1 },
      { id: t.newId(), designator: 'S3', from: n3, to: n2 },
    );
    change?.(t);
  });
const segments = (p: Project, ...names: string[]) =>
  names.map((n) => p.segments.find((s) => s.designator === n)!.id);

describe('a pinned path', () => {
  const p = ring();
  const wires = [p.wires[0]!.id];

  it('is kept in the direction of the wire, from whichever end it was given', () => {
    for (const path of [segments(p, 'S2', 'S3'), segments(p, 'S3', 'S2')])
      expect(after(p, { id: 'wire.pin-path', args: { wires, path } }).wires[0]!.path).toEqual(
        segments(p, 'S2', 'S3'),
      );
  });

  it('lays the wire the longer way, and lets go of it again', () => {
    const pinned = after(p, { id: 'wire.pin-path', args: { wires, path: segments(p, 'S2', 'S3') } });
    const lengths = (q: Project) => deriveHarness(q).wires.map((w) => w.length.routeMm);
    expect(lengths(pinned)).toEqual([500, 300]);
    expect(lengths(after(pinned, { id: 'wire.unpin-path', args: { wires } }))).toEqual([300, 300]);
  });

  it.each([
    [['S2'], 'S2 does not lead W1 from N1 to N2 without a gap.'],
    [['S1', 'S3', 'S2', 'S1'], 'The path of W1 runs through a segment twice.'],
    [[], 'No segment is chosen for W1, which goes from N1 to N2.'],
  ] as const)('over %j is refused in words', (names, words) => {
    expect(refusal(p, { id: 'wire.pin-path', args: { wires, path: segments(p, ...names) } })).toBe(words);
  });

  it('is refused for a wire whose end has no place on the formboard', () => {
    const loose = ring((t) => delete t.connector('X2').node);
    expect(refusal(loose, { id: 'wire.pin-path', args: { wires, path: segments(loose, 'S1') } })).toBe(
      'W1 cannot be laid: X2 has no node on the formboard.',
    );
  });

  it('can be asked for by the segments that it is to pass', () => {
    const { router } = deriveHarness(p);
    expect(pathThrough(p, router, p.wires[0]!, segments(p, 'S3'))).toEqual(segments(p, 'S2', 'S3'));
    expect(pathThrough(p, router, p.wires[0]!, segments(p, 'S1'))).toEqual(segments(p, 'S1'));
    expect(pathThrough(p, router, p.wires[0]!, [])).toEqual(segments(p, 'S1'));
    const stub = ring((t) => {
      const end = t.newId();
      t.project.nodes.push({ id: end, designator: 'N4', position: { x: 0, y: 90 } });
      t.project.segments.push({ id: t.newId(), designator: 'S4', from: t.project.nodes[0]!.id, to: end });
    });
    expect(pathThrough(stub, deriveHarness(stub).router, stub.wires[0]!, segments(stub, 'S4'))).toBeNull();
  });
});

describe('things on a segment', () => {
  const p = workbench();
  const s1 = p.segments[0]!.id;
  const beyond = { segment: s1, atMm: 300.5 };
  const words = 'S1 is 300 mm long; 300.5 mm lies beyond its end.';

  test.each([
    ['a fixing', { id: 'fixing.edit', args: { id: p.fixings[0]!.id, change: { station: beyond } } }],
    ['a tie', { id: 'tie.edit', args: { id: p.ties[0]!.id, change: { station: beyond } } }],
    ['a covering', { id: 'covering.edit', args: { id: p.coverings[0]!.id, change: { to: beyond } } }],
    [
      'a label',
      { id: 'label.edit', args: { id: p.labels[0]!.id, change: { on: { at: 'station', station: beyond } } } },
    ],
    [
      'a dimension',
      {
        id: 'dimension.edit',
        args: {
          id: p.dimensions[0]!.id,
          change: {
            datums: [
              { at: 'station', station: beyond },
              { at: 'node', node: p.nodes[0]!.id },
            ],
          },
        },
      },
    ],
  ] as [string, Call][])('%s cannot lie beyond its end', (_, call) => {
    expect(refusal(p, call)).toBe(words);
  });

  it('can be moved to another segment, and to the very end', () => {
    const station = { segment: s1, atMm: 300 };
    expect(
      after(p, { id: 'tie.edit', args: { id: p.ties[0]!.id, change: { station } } }).ties[0]!.station,
    ).toEqual(station);
  });

  it('get designators of their own', () => {
    const part = p.parts.find((x) => x.kind === 'clamp')!;
    const added = after(p, {
      id: 'fixing.add',
      args: { part: part as never, station: { segment: s1, atMm: 5 } },
    });
    expect(added.fixings.map((f) => f.designator)).toEqual(['FX1', 'FX2']);
  });
});

describe('a dimension', () => {
  const p = workbench();
  const node = { at: 'node' as const, node: p.nodes[0]!.id };
  const add = (...datums: Extract<Call, { id: 'dimension.add' }>['args']['datums']): string =>
    refusal(p, { id: 'dimension.add', args: { form: 'chain', datums, offsetMm: 10 } });

  it('needs two different places that are on the board', () => {
    expect(add(node, node)).toBe('A dimension goes from one place to another.');
    const x3 = p.connectors.find((c) => c.designator === 'X3')!.id;
    expect(add(node, { at: 'connector', connector: x3 })).toBe(
      'X3 has no node on the formboard to measure from.',
    );
    expect(add(node, { at: 'node', node: x3 })).toBe(`There is no node with id ${x3}.`);
    expect(add(node)).toContain('datums');
  });
});

describe('a connector on the formboard', () => {
  it('looks away from its run, turns, and goes back in line', () => {
    const p = tiny();
    const x1 = p.connectors[0]!.id;
    expect(boardAngleDeg(p, x1)).toBe(180);
    const turned = after(p, { id: 'connector.turn', args: { ids: [x1], byDeg: 45 } });
    expect(boardAngleDeg(turned, x1)).toBe(-135);
    expect(boardAngleDeg(after(turned, { id: 'connector.turn', args: { ids: [x1], toDeg: null } }), x1)).toBe(
      180,
    );
    const x3 = p.connectors.find((c) => c.designator === 'X3')!.id;
    expect(refusal(p, { id: 'connector.turn', args: { ids: [x3], toDeg: 0 } })).toBe(
      'X3 has no node on the formboard.',
    );
  });

  test.each([[0, 0], [180, 180], [-180, 180], [181, -179], [-450, -90], [720, 0]])('%d degrees is %d', (a, b) => {
    expect(normalDeg(a)).toBe(b);
  }); // prettier-ignore
});

test('a locked length is kept by whatever moves its nodes', () => {
  const p = tiny((t) => (t.project.segments[0]!.lengthLocked = true));
  const [n1, n2] = p.nodes.map((n) => n.id) as [string, string];
  const to = { x: 0, y: 100 };
  for (const call of [
    { id: 'objects.move', args: { moves: [{ id: n2, to }] } },
    { id: 'node.edit', args: { id: n2, change: { position: to } } },
  ] as Call[])
    expect(after(p, call).nodes[1]!.position).toEqual({ x: 0, y: 300 });
  expect(refusal(p, { id: 'objects.align', args: { ids: [n1, n2], edge: 'left' } })).toBe(
    'The length of S1 is locked; its ends cannot move like this.',
  );
});

test('a segment is locked, bent and let go by one command', () => {
  const p = tiny();
  const id = p.segments[0]!.id;
  const locked = after(p, {
    id: 'segment.edit',
    args: { id, change: { lengthLocked: true, shape: 'curve' } },
  });
  expect(locked.segments[0]).toMatchObject({ lengthLocked: true, shape: 'curve' });
  const [n1, n2] = p.nodes.map((n) => n.id) as [string, string];
  const moved = after(locked, { id: 'nodes.move', args: { moves: [{ id: n2, to: { x: 0, y: 50 } }] } });
  expect(moved.nodes[1]!.position).toEqual({ x: 0, y: 300 });
  expect(moved.nodes[0]!.id).toBe(n1);
  const open = after(locked, {
    id: 'segment.edit',
    args: { id, change: { lengthLocked: null, shape: null } },
  });
  expect(open).toEqual(p);
});

test('the method of labels is settled and taken back', () => {
  const set = after(tiny(), { id: 'project.edit', args: { change: { labelMethod: 'remote-end' } } });
  expect(set.labelMethod).toBe('remote-end');
  expect(after(set, { id: 'project.edit', args: { change: { labelMethod: null } } })).toEqual(tiny());
});
