import type { Branch, Load, Network, Source } from '@latchwork/core/calc/network/network';
import { solveNetwork } from '@latchwork/core/calc/network/solve-network';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveByLibrary } from './by-library';

const r = (id: string, from: string, to: string, ohm: number): Branch => ({ id, from, to, ohm });
const draws = (id: string, from: string, to: string, currentA: number): Load => ({
  id,
  from,
  to,
  draws: 'current',
  currentA,
});
const source = (voltageV: number, more?: Partial<Source>): Source => ({
  id: 'G1', positive: 'S', negative: '0', voltageV, innerOhm: 0, ...more,
}); // prettier-ignore

function solved(n: Partial<Network>) {
  const result = solveNetwork({ branches: [], sources: [], loads: [], reference: '0', ...n });
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  const find =
    <T extends { id: string }>(list: readonly T[]) =>
    (id: string): T =>
      list.find((x) => x.id === id)!;
  const s = result.value;
  return {
    ...s,
    v: (node: string) => s.nodeV.get(node),
    branch: find(s.branches),
    load: find(s.loads),
    source: find(s.sources),
  };
}
const problemOf = (n: Partial<Network>) => {
  const result = solveNetwork({ branches: [], sources: [], loads: [], reference: '0', ...n });
  return result.ok ? undefined : result.problem;
};

describe('networks solved by hand', () => {
  it('out and return in series with a load', () => {
    // 12 V, 0.1 + 0.1 ohm of wire, 2 A: 0.4 V lost, 0.8 W; by Ohm's law.
    const s = solved({
      sources: [source(12)],
      branches: [r('W1', 'S', 'L', 0.1), r('W2', 'R', '0', 0.1)],
      loads: [draws('E1', 'L', 'R', 2)],
    });
    expect(s.load('E1').voltageV).toBeCloseTo(11.6, 12);
    expect(s.lossW).toBeCloseTo(0.8, 12);
    expect(s.loadW).toBeCloseTo(23.2, 12);
    expect(s.sourceW).toBeCloseTo(24, 12);
    expect(s.branch('W2').currentA).toBeCloseTo(2, 12);
  });

  it('a Wheatstone bridge out of balance', () => {
    // 10 V; arms 1, 2 and 2, 1 ohm; 1 ohm across. Node equations 2.5 M - N = 10 and M - 2.5 N = -5 give M = 40/7, N = 30/7 V.
    const s = solved({
      sources: [source(10)],
      branches: [
        r('a', 'S', 'M', 1),
        r('b', 'M', '0', 2),
        r('c', 'S', 'N', 2),
        r('d', 'N', '0', 1),
        r('x', 'M', 'N', 1),
      ],
    });
    expect(s.v('M')).toBeCloseTo(40 / 7, 12);
    expect(s.v('N')).toBeCloseTo(30 / 7, 12);
    expect(s.branch('x').currentA).toBeCloseTo(10 / 7, 12);
    expect(s.source('G1').currentA).toBeCloseTo(50 / 7, 12);
  });

  it('a balanced bridge carries nothing across', () => {
    const s = solved({
      sources: [source(10)],
      branches: [
        r('a', 'S', 'M', 1),
        r('b', 'M', '0', 2),
        r('c', 'S', 'N', 10),
        r('d', 'N', '0', 20),
        r('x', 'M', 'N', 5),
      ],
    });
    expect(s.branch('x').currentA).toBeCloseTo(0, 12);
  });

  it('parallel wires share by conductance', () => {
    const s = solved({
      sources: [source(24)],
      branches: [r('thin', 'S', 'L', 0.04), r('thick', 'S', 'L', 0.01)],
      loads: [draws('E1', 'L', '0', 10)],
    });
    expect(s.branch('thin').currentA).toBeCloseTo(2, 11);
    expect(s.branch('thick').currentA).toBeCloseTo(8, 11);
    expect(s.v('L')).toBeCloseTo(24 - 0.08, 12);
  });

  it('a tree of splices: each trunk carries what its branches draw', () => {
    // S -T1- A; A draws 1 A and feeds B over T2; B feeds 2 A and 3 A. T1 6 A, T2 5 A; every wire 0.1 ohm.
    const s = solved({
      sources: [source(28)],
      branches: [
        r('T1', 'S', 'A', 0.1),
        r('T2', 'A', 'B', 0.1),
        r('b1', 'B', 'x', 0.1),
        r('b2', 'B', 'y', 0.1),
      ],
      loads: [draws('e0', 'A', '0', 1), draws('e1', 'x', '0', 2), draws('e2', 'y', '0', 3)],
    });
    expect(s.branch('T1').currentA).toBeCloseTo(6, 11);
    expect(s.branch('T2').currentA).toBeCloseTo(5, 11);
    expect(s.v('y')).toBeCloseTo(28 - 0.6 - 0.5 - 0.3, 11);
  });

  it('a source behind its own resistance, into a resistance', () => {
    const s = solved({
      sources: [source(12, { innerOhm: 0.5 })],
      loads: [{ id: 'E1', from: 'S', to: '0', draws: 'resistance', ohm: 5.5 }],
    });
    expect(s.source('G1').currentA).toBeCloseTo(2, 12);
    expect(s.source('G1').voltageV).toBeCloseTo(11, 12);
    expect(s.lossW).toBeCloseTo(2, 12);
  });

  it('gives the current through zero ohm and through ideal sources in series', () => {
    const s = solved({
      sources: [source(12), source(12, { id: 'G2', positive: 'S2', negative: 'S' })],
      branches: [r('link', 'S2', 'K', 0), r('w', 'K', 'L', 1)],
      loads: [draws('E1', 'L', '0', 3)],
    });
    expect(s.v('L')).toBeCloseTo(21, 12);
    expect(s.branch('link').currentA).toBeCloseTo(3, 12);
    expect(s.source('G1').currentA).toBeCloseTo(3, 12);
    expect(s.source('G2').currentA).toBeCloseTo(3, 12);
  });

  it('supplies that share nothing each have their own zero', () => {
    const s = solved({
      sources: [source(5), source(12, { id: 'G2', positive: 'P', negative: 'Q' })],
      branches: [r('w', 'P', 'L', 1)],
      loads: [draws('E1', 'L', 'Q', 1)],
    });
    expect(s.v('Q')).toBe(0);
    expect(s.v('L')).toBeCloseTo(11, 12);
  });
});

describe('conductors at their own temperature', () => {
  it('settles where loss and resistance agree', () => {
    // rise = 60 K x (I/10)^2; at a constant 10 A the wire is at 90 C: R = 1 x (234.5 + 90)/254.5.
    const warming = { ambientC: 30, ratedC: 90, ampacityA: 10 };
    const s = solved({
      sources: [source(100)],
      branches: [{ ...r('w', 'S', 'L', 1), warming }],
      loads: [draws('E1', 'L', '0', 10)],
    });
    expect(s.branch('w').temperatureC).toBeCloseTo(90, 9);
    expect(s.branch('w').voltageV).toBeCloseTo((10 * 324.5) / 254.5, 9);
  });

  it('with a resistive load the round trip closes on itself', () => {
    const warming = { ambientC: 20, ratedC: 105, ampacityA: 5 };
    const s = solved({
      sources: [source(24)],
      branches: [{ ...r('w', 'S', 'L', 0.5), warming }],
      loads: [{ id: 'E1', from: 'L', to: '0', draws: 'resistance', ohm: 4 }],
    });
    const w = s.branch('w');
    expect(w.temperatureC).toBeCloseTo(20 + 85 * (w.currentA / 5) ** 2, 5);
    expect(w.currentA).toBeCloseTo(24 / (4 + (0.5 * (234.5 + w.temperatureC!)) / 254.5), 9);
    expect(s.rounds).toBeGreaterThan(2);
  });
});

describe('networks without a solution are named', () => {
  it('a load without a return path', () => {
    expect(problemOf({ sources: [source(12)], branches: [r('w', 'S', 'L', 1)], loads: [draws('E1', 'L', 'R', 1)] })).toEqual({
      code: 'no-return-path', ids: ['E1'], nodes: ['R'],
    }); // prettier-ignore
  });
  it('a load that no source feeds', () => {
    expect(problemOf({ branches: [r('w', 'A', '0', 1)], loads: [draws('E1', 'A', '0', 1)] })).toEqual({
      code: 'no-source', ids: ['E1'], nodes: ['0', 'A'],
    }); // prettier-ignore
  });
  it('sources that disagree', () => {
    expect(problemOf({ sources: [source(12), source(24, { id: 'G2' })] })).toEqual({
      code: 'sources-conflict',
      ids: ['G1', 'G2'],
    });
  });
  it('a source across zero ohm', () => {
    expect(problemOf({ sources: [source(12)], branches: [r('short', 'S', '0', 0)] })).toEqual({
      code: 'sources-conflict', ids: ['short', 'G1'],
    }); // prettier-ignore
  });
  it('a loop without resistance', () => {
    expect(problemOf({ sources: [source(12)], branches: [r('a', 'S', 'L', 0), r('b', 'S', 'L', 0)] })).toEqual({
      code: 'loop-without-resistance', ids: ['a', 'b'],
    }); // prettier-ignore
  });
  it('an id used twice', () => {
    expect(problemOf({ branches: [r('a', 'S', 'L', 1), r('a', 'L', '0', 1)] })).toEqual({
      code: 'same-id',
      ids: ['a'],
    });
  });
  it('what floats has no potential and carries nothing', () => {
    const s = solved({ sources: [source(12)], branches: [r('w', 'S', '0', 1), r('lost', 'P', 'Q', 1)] });
    expect(s.floating).toEqual(['P', 'Q']);
    expect(s.branch('lost').currentA).toBe(0);
    expect(s.nodeV.has('P')).toBe(false);
  });
});

/** Meshed networks of 2 to 25 nodes: a spanning tree, more branches, some of them without resistance in the tree, loads. */
const anyNetwork = fc
  .record({
    tree: fc.array(fc.record({ up: fc.nat(), ohm: fc.double({ min: 1e-3, max: 1e3, noNaN: true }), zero: fc.integer({ min: 0, max: 9 }) }), {
      minLength: 1, maxLength: 24,
    }),
    more: fc.array(fc.record({ a: fc.nat(), b: fc.nat(), ohm: fc.double({ min: 1e-3, max: 1e3, noNaN: true }) }), { maxLength: 20 }),
    loads: fc.array(
      fc.record({ a: fc.nat(), b: fc.nat(), currentA: fc.double({ min: 0, max: 20, noNaN: true }), resistive: fc.boolean() }),
      { maxLength: 10 },
    ),
    volts: fc.double({ min: 1, max: 60, noNaN: true }),
    inner: fc.constantFrom(0, 0.01),
  })
  .map(({ tree, more, loads, volts, inner }): Network => {
    const count = tree.length + 1;
    const n = (k: number): string => `n${k % count}`;
    return {
      reference: 'n0',
      sources: [{ id: 'G', positive: 'p', negative: 'n0', voltageV: volts, innerOhm: inner }],
      branches: [
        r('feed', 'p', n(tree.length), 0.02),
        ...tree.map((t, i) => r(`t${i}`, `n${i + 1}`, n(t.up % (i + 1)), t.zero === 0 ? 0 : t.ohm)),
        ...more.map((m, i) => r(`m${i}`, n(m.a), n(m.b), m.ohm)),
      ],
      loads: loads.map((l, i): Load =>
        l.resistive
          ? { id: `l${i}`, from: n(l.a), to: n(l.b), draws: 'resistance', ohm: 1 + l.currentA }
          : draws(`l${i}`, n(l.a), n(l.b), l.currentA),
      ),
    };
  }); // prettier-ignore

describe('any network', () => {
  it('has the potentials that a general-purpose linear-algebra library finds', () => {
    fc.assert(
      fc.property(anyNetwork, (network) => {
        const ours = solved(network);
        const theirs = solveByLibrary(network, 'n0');
        const scale = Math.max(1, ...[...ours.nodeV.values()].map(Math.abs));
        for (const [node, v] of ours.nodeV) expect(Math.abs(v - theirs(node)) / scale).toBeLessThan(1e-9);
      }),
      { numRuns: 200 },
    );
  });

  it('takes from its sources what it loses and delivers, and every node gets what leaves it', () => {
    fc.assert(
      fc.property(anyNetwork, (network) => {
        const s = solved(network);
        const scale = Math.max(1, Math.abs(s.sourceW), s.lossW, Math.abs(s.loadW));
        expect(Math.abs(s.sourceW - s.lossW - s.loadW) / scale).toBeLessThan(1e-9);
        const sum = new Map<string, number>();
        let largest = 1;
        const flow = (from: string, to: string, a: number): void => {
          sum.set(from, (sum.get(from) ?? 0) - a);
          sum.set(to, (sum.get(to) ?? 0) + a);
          largest = Math.max(largest, Math.abs(a));
        };
        network.branches.forEach((b) => flow(b.from, b.to, s.branch(b.id).currentA));
        network.loads.forEach((l) => flow(l.from, l.to, s.load(l.id).currentA));
        network.sources.forEach((g) => flow(g.negative, g.positive, s.source(g.id).currentA));
        for (const a of sum.values()) expect(Math.abs(a) / largest).toBeLessThan(1e-8);
      }),
      { numRuns: 200 },
    );
  });

  it('drops in proportion to its wires', () => {
    fc.assert(
      fc.property(anyNetwork, fc.double({ min: 1.01, max: 10, noNaN: true }), (network, k) => {
        const longer = { ...network, branches: network.branches.map((b) => ({ ...b, ohm: b.ohm * k })) };
        const drawing = {
          ...network,
          loads: network.loads.filter((l) => l.draws === 'current'),
          sources: [{ ...network.sources[0]!, voltageV: 0, innerOhm: 0 }],
        };
        const a = solved(drawing);
        const b = solved({ ...drawing, branches: longer.branches });
        const scale = Math.max(1, ...[...b.nodeV.values()].map(Math.abs));
        for (const [node, v] of a.nodeV)
          expect(Math.abs(b.nodeV.get(node)! - k * v) / scale).toBeLessThan(1e-8);
      }),
    );
  });
});

describe('resistances far apart', () => {
  it('a micro-ohm joint, a parallel one, and a giga-ohm load in one mesh', () => {
    const s = solved({
      sources: [source(24)],
      branches: [
        r('a', 'S', 'J', 1e-6),
        r('b', 'S', 'J', 3e-6),
        r('w', 'J', 'L', 0.02),
        r('leak', 'L', 'Q', 1e9),
        r('q', 'Q', '0', 1e-3),
      ],
      loads: [draws('E1', 'L', 'Q', 10)],
    });
    expect(s.branch('a').currentA).toBeCloseTo(7.5, 6);
    expect(s.branch('b').currentA).toBeCloseTo(2.5, 6);
    expect(s.branch('leak').currentA * 1e9).toBeCloseTo(24 - 10 * (0.02 + 0.75e-6 + 1e-3), 6);
    expect(Math.abs(s.sourceW - s.lossW - s.loadW)).toBeLessThan(1e-6);
  });
});

describe('large sparse networks', () => {
  it('a tree of 10,000 wires with 500 loops', () => {
    const branches = Array.from({ length: 10_000 }, (_, i) =>
      r(`w${i}`, `n${i + 1}`, `n${Math.floor(i / 3)}`, 0.01 + (i % 7) / 100),
    );
    for (let i = 0; i < 500; i++) branches.push(r(`x${i}`, `n${i * 19 + 7}`, `n${i * 19 + 11}`, 0.05));
    const loads = Array.from({ length: 3000 }, (_, i) => draws(`l${i}`, `n${10_000 - i}`, '0', 0.01));
    const s = solved({ sources: [source(48, { positive: 'n0' })], branches, loads });
    expect(s.source('G1').currentA).toBeCloseTo(30, 8);
    expect(Math.abs(s.sourceW - s.lossW - s.loadW)).toBeLessThan(1e-7);
  });
});
