import { distance, type Point } from '@latchwork/core/base/point';
import { heldMoves } from '@latchwork/core/derive/formboard/held-moves';
import { segmentPath } from '@latchwork/core/derive/formboard/segment-path';
import type { Node, Segment } from '@latchwork/core/model/topology';
import { byId } from '@latchwork/core/base/by-id';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../generate/harness/random';
import { randomTree } from '../../commands/random-tree';

const node = (id: string, x: number, y: number): Node => ({ id, designator: id, position: { x, y } });
const run = (id: string, from: string, to: string, more: Partial<Segment> = {}): Segment => ({
  id,
  designator: id,
  from,
  to,
  ...more,
});
const LOCKED = { lengthLocked: true } as const;

const moved = (nodes: Node[], segments: Segment[], ...moves: [string, number, number][]) =>
  heldMoves({ nodes, segments }, moves.map(([id, x, y]) => ({ id, to: { x, y } }))); // prettier-ignore
const places = (...args: Parameters<typeof moved>) => {
  const held = moved(...args);
  if (!held.ok) throw new Error(held.problem);
  return Object.fromEntries(
    [...held.value.nodes].map(([id, p]) => [id, [Math.round(p.x * 1e6) / 1e6, Math.round(p.y * 1e6) / 1e6]]),
  );
};
const refusal = (...args: Parameters<typeof moved>): string => {
  const held = moved(...args);
  return held.ok ? 'moved' : held.problem;
};

describe('a moved node', () => {
  const nodes = [node('A', 0, 0), node('B', 100, 0), node('C', 200, 0)];

  it('goes where it is put when nothing is locked', () => {
    expect(places(nodes, [run('S1', 'A', 'B')], ['B', 30, 40])).toEqual({ B: [30, 40] });
  });

  it('slides on the circle about the other end of one locked segment', () => {
    // 30/40 is 50 mm away from A: 100 mm in that direction is 60/80.
    expect(places(nodes, [run('S1', 'A', 'B', LOCKED)], ['B', 30, 40])).toEqual({ B: [60, 80] });
  });

  it('turns about the last via point, which stays', () => {
    const s = run('S1', 'A', 'B', { ...LOCKED, via: [{ x: 100, y: 60 }] });
    expect(places(nodes, [s], ['B', 500, 60])).toEqual({ B: [160, 60] });
  });

  it('between two locked segments stays, or goes to the mirrored place', () => {
    const bent = [node('A', 0, 0), node('B', 50, 40), node('C', 100, 0)];
    const both = [run('S1', 'A', 'B', LOCKED), run('S2', 'B', 'C', LOCKED)];
    expect(places(bent, both, ['B', 60, -50])).toEqual({ B: [50, -40] });
    expect(refusal(bent, both, ['B', 60, 45])).toBe(
      'B cannot move there: the lengths of S1 and S2 are locked.',
    );
  });

  it('held by three is refused in words', () => {
    const star = [node('A', 0, 0), node('B', 100, 0), node('C', 50, 90), node('M', 50, 30)];
    const three = ['A', 'B', 'C'].map((n, i) => run(`S${i + 1}`, n, 'M', LOCKED));
    expect(refusal(star, three, ['M', 50, -100])).toBe(
      'M cannot move there: the lengths of S1, S2 and S3 are locked.',
    );
  });
});

describe('several moved nodes', () => {
  const nodes = [node('A', 0, 0), node('B', 100, 0), node('C', 200, 0)];

  it('keep what is locked between them, and take via points along', () => {
    const s = run('S2', 'B', 'C', { ...LOCKED, via: [{ x: 150, y: 30 }] });
    const held = moved(nodes, [s], ['B', 110, 20], ['C', 210, 20]);
    expect(held.ok && held.value.vias.get('S2')).toEqual([{ x: 160, y: 50 }]);
  });

  it('slide as one about a node that stays', () => {
    const segments = [run('S1', 'A', 'B', LOCKED), run('S2', 'B', 'C', LOCKED)];
    expect(places(nodes, segments, ['B', 0, 100], ['C', 100, 100])).toEqual({ B: [0, 100], C: [100, 100] });
  });

  it('that would tear a locked segment are refused', () => {
    expect(refusal(nodes, [run('S2', 'B', 'C', LOCKED)], ['B', 90, 0], ['C', 210, 0])).toBe(
      'The length of S2 is locked; its ends cannot move like this.',
    );
  });

  it('may turn a locked segment', () => {
    expect(places(nodes, [run('S2', 'B', 'C', LOCKED)], ['B', 100, 0], ['C', 100, 100])).toEqual({
      B: [100, 0],
      C: [100, 100],
    });
  });
});

it('never changes the drawn length of a locked segment, straight or curved, wherever the node is pulled', () => {
  const coordinate = fc.integer({ min: -300, max: 300 });
  const point = fc.record({ x: coordinate, y: coordinate });
  const apart = (list: readonly Point[]) =>
    list.every((p, i) => list.every((q, k) => i === k || distance(p, q) > 10));
  fc.assert(
    fc.property(
      fc.array(point, { minLength: 2, maxLength: 4 }).filter(apart),
      point,
      fc.constantFrom('straight' as const, 'curve' as const),
      (points, to, shape) => {
        const [first, last] = [points[0]!, points.at(-1)!];
        const nodes = [node('A', first.x, first.y), node('B', last.x, last.y)];
        const s = run('S', 'A', 'B', { ...LOCKED, shape, via: points.slice(1, -1) });
        const before = segmentPath(s, new Map(nodes.map((n) => [n.id, n])))!.lengthMm;
        const held = heldMoves({ nodes, segments: [s] }, [{ id: 'B', to }]);
        if (!held.ok) throw new Error(held.problem);
        const after = new Map([['A', nodes[0]!], ['B', { ...nodes[1]!, position: held.value.nodes.get('B')! }]]); // prettier-ignore
        expect(segmentPath(s, after)!.lengthMm).toBeCloseTo(before, 5);
      },
    ),
    { numRuns: 60 },
  );
}, 60_000);

it('moves any nodes of any tree with every locked length kept, or says what holds them', () => {
  let accepted = 0;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), fc.boolean(), (seed, together) => {
      const random = createRandom(seed);
      const tree = randomTree(seed, 10);
      const segments = tree.segments.map((s) => (random() < 0.4 ? { ...s, lengthLocked: true } : s));
      const chosen = tree.nodes.filter(() => random() < 0.4);
      const common = { x: random() * 100 - 50, y: random() * 100 - 50 };
      const moves = chosen.map(({ id, position }) => {
        const by = together ? common : { x: random() * 100 - 50, y: random() * 100 - 50 };
        return { id, to: { x: position.x + by.x, y: position.y + by.y } };
      });
      const held = heldMoves({ nodes: tree.nodes, segments }, moves);
      if (!held.ok) {
        expect(held.problem).toMatch(/locked/);
        return;
      }
      accepted++;
      const { nodes: placed, vias } = held.value;
      expect([...placed.keys()].sort()).toEqual(chosen.map((n) => n.id).sort());
      const before = byId(tree.nodes);
      const after = new Map(
        tree.nodes.map((n) => [n.id, { ...n, position: placed.get(n.id) ?? n.position }]),
      );
      for (const s of segments) {
        if (!s.lengthLocked) continue;
        const via = vias.get(s.id);
        const now = { ...s, ...(via ? { via: [...via] } : {}) };
        expect(segmentPath(now, after)!.lengthMm).toBeCloseTo(segmentPath({ ...s }, before)!.lengthMm, 5);
      }
    }),
    { numRuns: 150 },
  );
  expect(accepted).toBeGreaterThan(20);
}, 60_000);
