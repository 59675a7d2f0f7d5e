import { byId } from '@latchwork/core/base/by-id';
import { distance, type Point } from '@latchwork/core/base/point';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { boardAngleDeg } from '@latchwork/core/derive/formboard/board-angle';
import { bodyOutline } from '@latchwork/core/derive/formboard/body-outline';
import type { Project } from '@latchwork/core/model/project';
import { referenceIssues } from '@latchwork/core/model/references';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generateProject } from '../../../../generate/harness-generator';
import { createRandom } from '../../../../generate/harness/random';
import { after, refusal } from '../../../commands/try-call';
import { demoFromFile } from '../../../demos/demo-files';
import { crossings } from '../../../demos/layout';

const LAY_OUT = { id: 'formboard.lay-out', args: {} } as const;
const laidOut = (project: Project): Project => after(project, LAY_OUT);

/** The project as before anything was laid out. */
function bare(project: Project): Project {
  const p = structuredClone(project);
  for (const o of [...p.connectors, ...p.splices]) delete o.node;
  for (const w of p.wires) {
    delete w.path;
    for (const e of w.ends) if (e.at === 'free') delete e.node;
  }
  return { ...p, nodes: [], segments: [], coverings: [], ties: [], fixings: [], labels: [], dimensions: [] };
}

/** Corners of the bodies on the board, each turned as it stands there. */
function bodies(project: Project): { name: string; corners: Point[] }[] {
  const harness = deriveHarness(project);
  const nodes = byId(project.nodes);
  return harness.connectors.flatMap(({ resolved: { connector: c, part } }) => {
    const at = nodes.get(c.node ?? '')?.position;
    if (!at) return [];
    const { alongMm, acrossMm } = bodyOutline(part);
    const angle = (boardAngleDeg(project, c.id)! * Math.PI) / 180;
    const [u, v] = [
      { x: Math.cos(angle), y: Math.sin(angle) },
      { x: -Math.sin(angle), y: Math.cos(angle) },
    ];
    const corner = (l: number, w: number): Point => ({
      x: at.x + u.x * l + v.x * w,
      y: at.y + u.y * l + v.y * w,
    });
    const half = acrossMm / 2;
    return [
      {
        name: c.designator,
        corners: [corner(0, -half), corner(alongMm, -half), corner(alongMm, half), corner(0, half)],
      },
    ];
  });
}

/** Convex figures lie apart when a line along one of their edges parts them (separating axis theorem). */
function overlap(a: Point[], b: Point[]): boolean {
  return [a, b].every((figure) =>
    figure.every((p, i) => {
      const q = figure[(i + 1) % figure.length]!;
      const axis = { x: q.y - p.y, y: p.x - q.x };
      const on = (list: Point[]) => list.map((c) => c.x * axis.x + c.y * axis.y);
      const [s, t] = [on(a), on(b)];
      return Math.max(...s) > Math.min(...t) + 1e-9 && Math.max(...t) > Math.min(...s) + 1e-9;
    }),
  );
}
const overlaps = (project: Project): string[] => {
  const all = bodies(project);
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b) => (overlap(a.corners, b.corners) ? [`${a.name} ${b.name}`] : [])),
  );
};

/** Connectors anywhere on the diagram, wires that join them as a tree or a mesh, splices and free ends. */
function randomDiagram(seed: number, typed = false): Project {
  const random = createRandom(seed);
  const upTo = (n: number) => Math.floor(random() * n);
  return bare(
    tiny((t) => {
      const place = () => ({ x: upTo(900), y: upTo(700) });
      const base = { ...tiny().connectors[0]!, cavities: [], accessories: [] };
      for (let i = 0; i < 2 + upTo(9); i++)
        t.project.connectors.push({
          ...base,
          id: t.newId(),
          designator: `X${10 + i}`,
          position: place(),
        });
      for (let i = 0; i < upTo(3); i++)
        t.project.splices.push({ id: t.newId(), designator: `XS${i + 1}`, position: place() });
      t.project.contacts = [];
      t.project.wires = Array.from({ length: 3 + upTo(20) }, (_, i) => {
        const end = () => {
          const k = upTo(8);
          if (k === 0) return { at: 'free' as const, position: place() };
          if (k === 1 && t.project.splices.length > 0)
            return { at: 'splice' as const, splice: t.project.splices[upTo(t.project.splices.length)]!.id };
          return {
            at: 'cavity' as const,
            connector: t.project.connectors[upTo(t.project.connectors.length)]!.id,
            cavity: '1',
          };
        };
        return {
          id: t.newId(),
          designator: `W${i + 1}`,
          ends: [end(), end()],
          ...(typed && upTo(2) === 0 ? { lengthMm: 100 + upTo(900) } : {}),
        };
      });
    }),
  );
}

function expectGood(project: Project): void {
  expect(referenceIssues(project)).toEqual([]);
  expect(crossings(project)).toEqual([]);
  expect(overlaps(project)).toEqual([]);
  for (const w of deriveHarness(project).wires) expect(w.route.found, w.wire.designator).toBe(true);
}

describe('a first layout', () => {
  it('of any diagram crosses nothing, overlaps no outline and gives every wire a way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.boolean(), (seed, typed) => {
        expectGood(laidOut(randomDiagram(seed, typed)));
      }),
      { numRuns: 50 },
    );
  }, 60_000);

  it('puts connectors at the ends and splices on the way', () => {
    const p = laidOut(bare(demoFromFile('weather-station')));
    expectGood(p);
    // One tree, though no wire joins some of its parts: they lead to the same equipment.
    expect(p.nodes.length - p.segments.length).toBe(1);
    const meeting = (node: string | undefined) =>
      p.segments.filter((s) => s.from === node || s.to === node).length;
    const wired = new Set(
      p.wires.flatMap((w) => w.ends.flatMap((e) => (e.at === 'cavity' ? [e.connector] : []))),
    );
    for (const c of p.connectors.filter((c) => wired.has(c.id)))
      expect(meeting(c.node), c.designator).toBe(1);
    for (const s of p.splices) expect(meeting(s.node)).toBeGreaterThan(1);
    expect(p.connectors.filter((c) => !wired.has(c.id) && c.node)).toEqual([]);
  });

  it.each(['bench-lamp', 'weather-station', 'workshop-faults'] as const)('of the demo %s is good', (name) => {
    expectGood(laidOut(bare(demoFromFile(name))));
  });

  it('of a big harness is good', () => {
    expectGood(laidOut(bare(generateProject({ wires: 400 }))));
  });

  it('follows the order of the diagram along the trunk', () => {
    const p = laidOut(bare(tiny((t) => {
      t.connector('X1').position = { x: 500, y: 0 };
      t.connector('X2').position = { x: 0, y: 0 };
    }))); // prettier-ignore
    const at = (c: string) =>
      byId(p.nodes).get(p.connectors.find((x) => x.designator === c)!.node!)!.position;
    expect(at('X1').x).toBeGreaterThan(at('X2').x);
    expect(p.nodes).toHaveLength(2);
    expect(distance(at('X1'), at('X2'))).toBe(500);
  });

  it('takes typed lengths where there are: a wire is then as long as it was typed', () => {
    const p = laidOut(bare(tiny((t) => void (t.wire('W1').lengthMm = 408))));
    expect(deriveHarness(p).wires[0]!.length).toMatchObject({ byRouteMm: 408, differenceMm: 0 });
  });
});

describe('a layout of the rest', () => {
  it('keeps what is laid out, byte for byte, and still crosses nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 6 }), (seed, loose) => {
        const whole = laidOut(randomDiagram(seed));
        const random = createRandom(seed);
        const leaves = whole.connectors.filter((c) => c.node && random() * 6 < loose);
        const gone = new Set(leaves.map((c) => c.node));
        const left: Project = {
          ...whole,
          nodes: whole.nodes.filter((n) => !gone.has(n.id)),
          segments: whole.segments.filter((s) => !gone.has(s.from) && !gone.has(s.to)),
          connectors: whole.connectors.map(({ ...c }) => (gone.has(c.node) ? (delete c.node, c) : c)),
        };
        if (left.connectors.every((c, i) => c.node === whole.connectors[i]!.node)) return;
        const again = laidOut(left);
        expect(again.nodes.slice(0, left.nodes.length)).toEqual(left.nodes);
        expect(crossings(again)).toEqual([]);
        expect(referenceIssues(again)).toEqual([]);
        for (const w of deriveHarness(again).wires) expect(w.route.found, w.wire.designator).toBe(true);
      }),
      { numRuns: 50 },
    );
  }, 60_000);

  const third = (change?: (t: TinyDraft) => void): Project =>
    tiny((t) => {
      t.wire('W2').ends[1] = { at: 'free', position: { x: 100, y: 200 } };
      change?.(t);
    });

  it('splits a segment where only connectors stand on nodes', () => {
    const p = laidOut(third());
    expect(p.nodes).toHaveLength(4);
    expect(p.segments).toHaveLength(3);
    expect(p.nodes[2]).toMatchObject({ designator: 'N3', position: { x: 150, y: 0 } });
    expect(deriveHarness(p).wires[0]!.route).toMatchObject({ lengthMm: 300 });
  });

  it('splits two segments at once, with what spans both', () => {
    const p = third((t) => {
      const [n1, n2] = t.project.nodes.map((n) => n.id) as [string, string];
      const [m1, m2, s2] = [t.newId(), t.newId(), t.newId()];
      t.project.nodes.push(
        { id: m1, designator: 'M1', position: { x: 0, y: 500 } },
        { id: m2, designator: 'M2', position: { x: 300, y: 500 } },
      );
      t.project.segments.push({ id: s2, designator: 'S2', from: m1, to: m2 });
      const half = { ...tiny().connectors[0]!, cavities: [], accessories: [] };
      const [y1, y2] = [t.newId(), t.newId()];
      t.project.connectors.push(
        { ...half, id: y1, designator: 'Y1', node: m1 },
        { ...half, id: y2, designator: 'Y2', node: m2 },
      );
      const at = (connector: string) => ({ at: 'cavity' as const, connector, cavity: '1' });
      t.project.wires.push(
        { id: t.newId(), designator: 'W3', ends: [at(y1), at(y2)] },
        { id: t.newId(), designator: 'W4', ends: [at(y1), { at: 'free', position: { x: 100, y: 700 } }] },
      );
      const station = (segment: string) => ({ at: 'station' as const, station: { segment, atMm: 290 } });
      t.project.dimensions.push({
        id: t.newId(),
        form: 'chain',
        offsetMm: 0,
        datums: [
          { at: 'node', node: n1 },
          station(t.project.segments[0]!.id),
          { at: 'node', node: n2 },
          station(s2),
        ],
      });
    });
    const q = laidOut(p);
    expect(q.segments.filter((s) => s.designator.startsWith('S'))).toHaveLength(6);
    const stations = q.dimensions[0]!.datums.flatMap((d) => (d.at === 'station' ? [d.station] : []));
    expect(stations.map((s) => s.atMm)).toEqual([140, 140]);
    expect(new Set([...stations.map((s) => s.segment), ...p.segments.map((s) => s.id)]).size).toBe(4);
    expect(referenceIssues(q)).toEqual([]);
  });

  it('joins what was put on the board without segments', () => {
    const p = laidOut(third((t) => (t.project.segments = [])));
    expect(crossings(p)).toEqual([]);
    for (const w of deriveHarness(p).wires) expect(w.route.found).toBe(true);
  });

  it('is refused in words where there is a loop, nothing to lay out, or no wire', () => {
    const loop = third((t) => {
      const [n1, n2] = t.project.nodes.map((n) => n.id) as [string, string];
      const n3 = t.newId();
      t.project.nodes.push({ id: n3, designator: 'N3', position: { x: 150, y: 90 } });
      t.project.segments.push(
        { id: t.newId(), designator: 'S2', from: n1, to: n3 },
        { id: t.newId(), designator: 'S3', from: n3, to: n2 },
      );
    });
    expect(refusal(loop, LAY_OUT)).toBe(
      'The formboard has a closed loop at S3. A first layout is made for trees: open the loop, or lay out the rest by hand.',
    );
    expect(refusal(tiny(), LAY_OUT)).toBe(
      'All that wires end at is on the formboard, and joined by segments.',
    );
    expect(refusal({ ...tiny(), wires: [] }, LAY_OUT)).toBe(
      'There are no wires yet; a layout is made from what they join.',
    );
  });
});
