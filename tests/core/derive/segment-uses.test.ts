import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { SegmentUse } from '@latchwork/core/derive/harness';
import { bundleMembers, bundleOf, diametersAlong, thickestMm } from '@latchwork/core/derive/bundle';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { produce } from 'immer';
import { describe, expect, it } from 'vitest';

/** X1 – S1, 300 mm – N2 – S2, 200 mm – N3: X2 moves to N3, X5 hangs on N2. */
const branched = (change?: (t: TinyDraft) => void): Project =>
  tiny((t) => {
    const n3 = t.newId();
    t.project.nodes.push({ id: n3, designator: 'N3', position: { x: 500, y: 0 } });
    t.project.segments.push({ id: t.newId(), designator: 'S2', from: t.project.nodes[1]!.id, to: n3 });
    t.connector('X2').node = n3;
    change?.(t);
  });

function covering(
  t: TinyDraft,
  wallMm: number,
  from: [number, number],
  to: [number, number],
  layer = 1,
): void {
  const part = t.newId();
  const record = {
    maker: 'Example Works (invented)',
    description: 'Sleeve',
    partNumber: `SLEEVE-${part.slice(-3)}`,
  };
  t.project.parts.push({ kind: 'covering', form: 'sleeve', id: part, ...record, wallMm });
  const at = ([segment, atMm]: [number, number]) => ({ segment: t.project.segments[segment]!.id, atMm });
  t.project.coverings.push({ id: t.newId(), part, from: at(from), to: at(to), layer });
}

const use = (project: Project, designator: string): SegmentUse =>
  deriveHarness(project).segments.find((s) => s.segment.designator === designator)!;

const extents = (s: SegmentUse): number[][] => s.coverings.map((c) => [c.fromMm, c.toMm]);

describe('a segment', () => {
  it('knows its wires, its length and the connectors at its ends', () => {
    const s1 = use(branched(), 'S1');
    expect(s1.wires.map((w) => w.wire.designator)).toEqual(['W1', 'W2']);
    expect(s1.lengthMm).toBe(300);
    expect(s1.fromConnectors.map((c) => c.connector.designator)).toEqual(['X1']);
    expect(s1.toConnectors).toEqual([]);
    expect(use(branched(), 'S2').toConnectors.map((c) => c.connector.designator)).toEqual(['X2']);
  });

  it('has the share of a covering that runs over several segments, whichever end comes first', () => {
    for (const [from, to] of [
      [
        [0, 250],
        [1, 60],
      ],
      [
        [1, 60],
        [0, 250],
      ],
    ] as [[number, number], [number, number]][]) {
      const project = branched((t) => covering(t, 0.5, from, to));
      expect(extents(use(project, 'S1'))).toEqual([[250, 300]]);
      expect(extents(use(project, 'S2'))).toEqual([[0, 60]]);
    }
  });

  it('cuts a station that lies beyond its end', () => {
    expect(
      extents(
        use(
          branched((t) => covering(t, 0.5, [0, 280], [0, 400])),
          'S1',
        ),
      ),
    ).toEqual([[280, 300]]);
  });
});

describe('a bundle', () => {
  // Two equal circles in a circle: twice the diameter; plain geometry.
  it('of two wires of 1.2 mm is 2.4 mm thick', () => {
    expect(bundleOf(use(branched(), 'S1'))?.laidMm).toBeCloseTo(2.4, 9);
  });

  it('counts a twisted pair as one circle of twice the wire, and a cable as its own diameter', () => {
    const twisted = branched((t) => {
      t.project.groups.push({
        id: t.newId(),
        designator: 'WG1',
        form: 'twisted',
        wires: [t.wire('W1').id, t.wire('W2').id],
      });
    });
    const members = bundleMembers(use(twisted, 'S1').wires);
    expect(members.map((m) => m.diameterMm)).toEqual([2.4]);
    const cabled = branched((t) => {
      const [part, cable] = [t.newId(), t.newId()];
      const core = { size: { system: 'awg' as const, gauge: 22 }, odMm: 1.2 };
      t.project.parts.push({
        kind: 'cable', id: part, maker: 'Example Works (invented)', partNumber: 'CABLE', description: 'Cable', odMm: 4.2,
        cores: [{ name: '1', ...core }, { name: '2', ...core }],
      }); // prettier-ignore
      t.project.cables.push({ id: cable, designator: 'WC1', part });
      for (const w of ['W1', 'W2']) {
        delete t.wire(w).part;
        t.wire(w).core = { cable, name: w.slice(1) };
      }
    });
    expect(bundleMembers(use(cabled, 'S1').wires).map((m) => m.diameterMm)).toEqual([4.2]);
  });

  it('grows by twice the wall of each covering, where the covering lies', () => {
    const project = branched((t) => {
      covering(t, 0.5, [0, 50], [0, 200]);
      covering(t, 0.3, [0, 150], [0, 300], 2);
    });
    const s1 = use(project, 'S1');
    const shown = diametersAlong(s1, 0, 300)!.map((d) => [
      d.fromMm,
      d.toMm,
      Math.round(d.diameterMm * 10) / 10,
    ]);
    expect(shown).toEqual([
      [0, 50, 2.4],
      [50, 150, 3.4],
      [150, 200, 4],
      [200, 300, 3],
    ]);
    expect(thickestMm(s1)).toBeCloseTo(4, 9);
    expect(thickestMm(s1, 20, 20)).toBeCloseTo(2.4, 9);
    expect(diametersAlong(s1, 150, 200, 2)!.map((d) => d.diameterMm)[0]).toBeCloseTo(3.4, 9);
  });

  it('has no diameter where one wire has none', () => {
    expect(
      bundleOf(
        use(
          branched((t) => delete t.part('wire', 'WIRE-22').odMm),
          'S1',
        ),
      ),
    ).toBeUndefined();
  });
});

describe('an edit', () => {
  const before = branched((t) => covering(t, 0.5, [0, 50], [0, 200]));
  const harness = deriveHarness(before);
  const after = (change: (p: Project) => void) => deriveHarness(produce(before, change as never), harness);
  const kept = (next: ReturnType<typeof deriveHarness>): boolean[] =>
    next.segments.map((s, i) => s === harness.segments[i]);

  it('elsewhere leaves the segments and their list as they are', () => {
    expect(after((p) => void p.notes.push('x')).segments).toBe(harness.segments);
  });

  it('of one segment leaves the others as they are', () => {
    expect(kept(after((p) => void (p.segments[1]!.plusMm = 5)))).toEqual([false, false]);
    const apart = produce(
      before,
      (p) => void p.nodes.push({ id: before.id, designator: 'N9', position: { x: 0, y: 90 } }),
    );
    const base = deriveHarness(apart);
    const next = deriveHarness(
      produce(apart, (p) => void (p.nodes[3]!.position.y = 95)),
      base,
    );
    expect(next.segments.every((s, i) => s === base.segments[i])).toBe(true);
  });

  it('of a colour makes new uses, but no new cross-section', () => {
    const next = after((p) => void (p.wires[0]!.colour = { base: 'BU' }));
    expect(kept(next)).toEqual([false, false]);
    expect(next.segments.map((s) => s.diametersMm)).toEqual(harness.segments.map((s) => s.diametersMm));
    next.segments.forEach((s, i) => expect(s.diametersMm).toBe(harness.segments[i]!.diametersMm));
    expect(bundleOf(next.segments[0]!)).toBe(bundleOf(harness.segments[0]!));
  });

  it('of a tie touches its segment only', () => {
    const next = after((p) => {
      const part = p.parts[0]!.id;
      p.ties.push({ id: before.id, part, station: { segment: p.segments[1]!.id, atMm: 20 } });
    });
    expect(kept(next)).toEqual([true, false]);
    expect(next.segments[1]!.ties.map((t) => t.atMm)).toEqual([20]);
  });
});
