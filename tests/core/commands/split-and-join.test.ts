import { distance } from '@latchwork/core/base/point';
import { byId } from '@latchwork/core/base/by-id';
import { segmentLengths } from '@latchwork/core/derive/formboard/segment-path';
import type { Project } from '@latchwork/core/model/project';
import { referenceIssues } from '@latchwork/core/model/references';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthsOf, placesOf, randomTree } from './random-tree';
import { after, refusal } from './try-call';

const NODE = '00000000-0000-4000-8000-0000000e0001';
const REST = '00000000-0000-4000-8000-0000000e0002';

const split = (project: Project, segment: string, atMm: number): Project =>
  after(project, { id: 'segment.split', args: { station: { segment, atMm }, node: NODE, segment: REST } });
const join = (project: Project, node = NODE): Project =>
  after(project, { id: 'segment.join', args: { node } });

const seeds = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  pick: fc.nat(100),
  part: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
});

/** The tree with one of its segments, and a station on it. */
function choice({ seed, pick, part }: { seed: number; pick: number; part: number }) {
  const project = randomTree(seed);
  const segment = project.segments[pick % project.segments.length]!;
  const { usedMm } = segmentLengths(segment, byId(project.nodes));
  fc.pre(usedMm > 30);
  return { project, segment, atMm: part * usedMm };
}

function expectSameLengths(a: Project, b: Project): void {
  const [was, is] = [lengthsOf(a), lengthsOf(b)];
  expect(is.totalMm).toBeCloseTo(was.totalMm, 6);
  expect(is.cut).toEqual(was.cut);
  for (const key of ['wires', 'coverings'] as const)
    was[key].forEach((x, i) =>
      typeof x === 'number' ? expect(is[key][i]).toBeCloseTo(x, 6) : expect(is[key][i]).toBe(x),
    );
}
const farthest = (a: Project, b: Project): number => {
  const [was, is] = [placesOf(a), placesOf(b)];
  expect(is.length).toBe(was.length);
  return Math.max(0, ...was.map((p, i) => distance(p, is[i]!)));
};

describe('splitting a segment', () => {
  it('changes no length, no tolerance, no way and, on straight runs, no place', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { project, segment, atMm } = choice(seed);
        const cut = split(project, segment.id, atMm);
        expect(referenceIssues(cut)).toEqual([]);
        expectSameLengths(project, cut);
        const [a, b] = [byId(cut.segments).get(segment.id)!, byId(cut.segments).get(REST)!];
        if (segment.plusMm !== undefined) expect(a.plusMm! + b.plusMm!).toBeCloseTo(segment.plusMm, 9);
        // The halves of a curve are other curves: near, not the same.
        const curved = segment.shape === 'curve' && segment.via;
        if (!curved) expect(farthest(project, cut)).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('divides a typed length in proportion and leaves a drawn one drawn', () => {
    const typed = split(
      tiny((t) => void (t.project.segments[0]!.lengthMm = 600)),
      tiny().segments[0]!.id,
      200,
    );
    expect(typed.segments.map((s) => s.lengthMm)).toEqual([200, 400]);
    // 200 of 600 mm typed is a third of the 300 mm that are drawn.
    expect(typed.nodes.at(-1)).toMatchObject({ id: NODE, designator: 'N3', position: { x: 100, y: 0 } });
    const drawn = split(tiny(), tiny().segments[0]!.id, 200);
    expect(drawn.segments.map((s) => 'lengthMm' in s)).toEqual([false, false]);
  });

  it('lays pinned paths over both halves, in the direction of the wire', () => {
    const pinned = (turned: boolean) =>
      tiny((t) => {
        const s = t.project.segments[0]!;
        if (turned) [s.from, s.to] = [s.to, s.from];
        t.wire('W1').path = [s.id];
      });
    const s1 = tiny().segments[0]!.id;
    expect(split(pinned(false), s1, 100).wires[0]!.path).toEqual([s1, REST]);
    expect(split(pinned(true), s1, 100).wires[0]!.path).toEqual([REST, s1]);
  });

  it('is refused where there is nothing to split', () => {
    const segment = tiny().segments[0]!.id;
    const say = (atMm: number) =>
      refusal(tiny(), { id: 'segment.split', args: { station: { segment, atMm } } });
    expect(say(0)).toBe('S1 ends there; there is nothing to split.');
    expect(say(300)).toBe('S1 ends there; there is nothing to split.');
    expect(say(301)).toBe('S1 is 300 mm long; 301 mm lies beyond its end.');
  });
});

describe('joining again', () => {
  it('gives the lengths from before the split, whatever the order of the halves', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, swap) => {
        const { project, segment, atMm } = choice(seed);
        const cut = split(project, segment.id, atMm);
        const turned = swap ? { ...cut, segments: [...cut.segments].reverse() } : cut;
        const whole = join(turned);
        expect(referenceIssues(whole)).toEqual([]);
        expectSameLengths(project, whole);
        expect(whole.segments).toHaveLength(project.segments.length);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('gives the very project where all runs are straight', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { project, segment, atMm } = choice(seed);
        if (segment.shape === 'curve' && segment.via) return;
        const whole = join(split(project, segment.id, atMm));
        const back = byId(whole.segments).get(segment.id)!;
        expect(back.via ?? []).toEqual(segment.via ?? []);
        expect([back.from, back.to, back.lengthMm === undefined]).toEqual([segment.from, segment.to, segment.lengthMm === undefined]); // prettier-ignore
        expect(whole.wires).toEqual(project.wires);
        expect(whole.nodes).toEqual(project.nodes);
        expect(farthest(project, whole)).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  const joint = (change?: (t: TinyDraft) => void): Project => {
    const base = tiny(change);
    return split(base, base.segments[0]!.id, 100);
  };
  const say = (p: Project) => refusal(p, { id: 'segment.join', args: { node: NODE } });

  it('turns a dimension from the node into one from the place', () => {
    const cut = joint();
    const dimension = {
      id: '00000000-0000-4000-8000-0000000e0003',
      form: 'chain' as const,
      offsetMm: 0,
      datums: [
        { at: 'node' as const, node: NODE },
        { at: 'node' as const, node: cut.nodes[0]!.id },
      ],
    };
    const whole = join({ ...cut, dimensions: [dimension] });
    expect(whole.dimensions[0]!.datums[0]).toEqual({ at: 'station', station: { segment: cut.segments[0]!.id, atMm: 100 } }); // prettier-ignore
  });

  it('is refused, in words, while something sits on the node', () => {
    const cut = joint();
    const on = (c: Project['connectors'][number]) => (c.designator === 'X3' ? { ...c, node: NODE } : c);
    expect(say({ ...cut, connectors: cut.connectors.map(on) })).toBe('X3 sits on N3; move it first.');
    const splice = { id: REST, designator: 'XS1', position: { x: 0, y: 0 }, node: NODE };
    expect(say({ ...cut, splices: [splice] })).toBe('XS1 sits on N3; move it first.');
  });

  it('is refused where not just two meet, where they close a loop, or agree on no wire style', () => {
    expect(refusal(tiny(), { id: 'segment.join', args: { node: tiny().nodes[0]!.id } })).toBe(
      '1 segment meets at N1; two are joined where just they meet.',
    );
    const cut = joint();
    const direct = {
      ...cut.segments[0]!,
      id: '00000000-0000-4000-8000-0000000e0004',
      designator: 'S9',
      to: cut.nodes[1]!.id,
    };
    expect(say({ ...cut, segments: [...cut.segments, direct] })).toBe('S9 joins these nodes already.');
    const styles = cut.segments.map((s, i) => ({ ...s, wireStyles: [`style ${i}`] }));
    expect(say({ ...cut, segments: styles })).toBe('S1 and S2 approve no wire style in common.');
  });
});

describe('a branch, and a splice on a segment', () => {
  it('leaves all ways as they were', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { project, segment, atMm } = choice(seed);
        const cut = after(project, {
          id: 'branch.insert',
          args: { at: { segment: segment.id, atMm }, to: { x: -50, y: -50 } },
        });
        expect(referenceIssues(cut)).toEqual([]);
        expect(lengthsOf(cut).cut).toEqual(lengthsOf(project).cut);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('at the end of a segment needs no split', () => {
    const base = tiny((t) =>
      t.project.splices.push({ id: NODE, designator: 'XS1', position: { x: 0, y: 0 } }),
    );
    const station = { segment: base.segments[0]!.id, atMm: 300 };
    const branch = after(base, { id: 'branch.insert', args: { at: station, to: { x: 300, y: 80 } } });
    expect([branch.nodes.length, branch.segments.length]).toEqual([3, 2]);
    expect(branch.segments[1]).toMatchObject({ from: base.nodes[1]!.id, to: branch.nodes[2]!.id });
    const placed = after(base, { id: 'splice.place-on-segment', args: { splice: NODE, station } });
    expect([placed.nodes.length, placed.splices[0]!.node]).toEqual([2, base.nodes[1]!.id]);
    const within = after(base, { id: 'splice.place-on-segment', args: { splice: NODE, station: { ...station, atMm: 50 } } }); // prettier-ignore
    expect(within.splices[0]!.node).toBe(within.nodes[2]!.id);
  });

  it('needs a length', () => {
    const at = { node: tiny().nodes[1]!.id };
    expect(refusal(tiny(), { id: 'branch.insert', args: { at, to: { x: 300, y: 0 } } })).toContain(
      'needs a length',
    );
  });
});
