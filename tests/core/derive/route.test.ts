import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createRouter } from '@latchwork/core/derive/route';
import type { Node, Segment } from '@latchwork/core/model/topology';

const node = (id: string, x = 0, y = 0): Node => ({ id, designator: id, position: { x, y } });
const run = (id: string, from: string, to: string, lengthMm?: number): Segment => ({
  id,
  designator: id,
  from,
  to,
  ...(lengthMm === undefined ? {} : { lengthMm }),
});

describe('the way of a wire', () => {
  //   A --300-- B --200-- C        A to C direct is 600
  const nodes = [node('A'), node('B'), node('C'), node('D')];
  const segments = [run('AB', 'A', 'B', 300), run('BC', 'C', 'B', 200), run('AC', 'A', 'C', 600)];
  const router = createRouter(nodes, segments);

  test('is the shortest one, whichever way round the segments were drawn', () => {
    expect(router.between('A', 'C')).toEqual({ found: true, segments: ['AB', 'BC'], lengthMm: 500 });
    expect(router.between('C', 'A')).toEqual({ found: true, segments: ['BC', 'AB'], lengthMm: 500 });
  });

  test('is the same object for the same question', () => {
    expect(router.between('A', 'C')).toBe(router.between('A', 'C'));
  });

  test('follows a pinned path, even a longer one', () => {
    expect(router.along(['AC'], 'A', 'C')).toEqual({ found: true, segments: ['AC'], lengthMm: 600 });
  });

  test('says why there is none', () => {
    expect(router.between('A', 'D')).toEqual({ found: false, reason: 'not-connected' });
    expect(router.between('A', undefined)).toEqual({ found: false, reason: 'end-without-node' });
    expect(router.along(['AB'], 'A', 'C')).toEqual({ found: false, reason: 'path-broken' });
  });

  test('within one node has no length', () => {
    expect(router.between('A', 'A')).toEqual({ found: true, segments: [], lengthMm: 0 });
  });

  test('is drawn length where none is typed, along the via points', () => {
    const bent: Segment = { ...run('S', 'P', 'Q'), via: [{ x: 30, y: 0 }] };
    const r = createRouter([node('P', 0, 0), node('Q', 30, 40)], [bent]);
    expect(r.between('P', 'Q')).toMatchObject({ lengthMm: 70 });
  });
});

test('shortest ways equal those of the Floyd–Warshall method (CACM 5, 1962, algorithm 97)', () => {
  const graphs = fc.record({
    n: fc.integer({ min: 2, max: 9 }),
    edges: fc.array(fc.tuple(fc.nat(8), fc.nat(8), fc.integer({ min: 0, max: 50 })), { maxLength: 24 }),
  });
  fc.assert(
    fc.property(graphs, ({ n, edges }) => {
      const nodes = Array.from({ length: n }, (_, i) => node(`N${i}`));
      const segments = edges
        .filter(([a, b]) => a < n && b < n && a !== b)
        .map(([a, b, d], i) => ({ ...run(`S${i}`, `N${a}`, `N${b}`), lengthMm: d }));
      const d = Array.from({ length: n }, (_, i) =>
        Array.from({ length: n }, (_, k) => (i === k ? 0 : Infinity)),
      );
      for (const [a, b, w] of edges) {
        if (a >= n || b >= n || a === b) continue;
        d[a]![b] = Math.min(d[a]![b]!, w);
        d[b]![a] = Math.min(d[b]![a]!, w);
      }
      for (let k = 0; k < n; k++)
        for (let i = 0; i < n; i++)
          for (let j = 0; j < n; j++) d[i]![j] = Math.min(d[i]![j]!, d[i]![k]! + d[k]![j]!);
      const router = createRouter(nodes, segments);
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) {
          const route = router.between(`N${i}`, `N${j}`);
          expect(route.found ? route.lengthMm : Infinity).toBe(d[i]![j]);
          if (route.found)
            expect(router.along(route.segments, `N${i}`, `N${j}`)).toMatchObject({ lengthMm: d[i]![j] });
        }
    }),
    { numRuns: 300 },
  );
});
