import { XmlDocument, type XmlElement } from 'libxml2-wasm';
import DxfParser from 'dxf-parser';
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { byId } from '@latchwork/core/base/by-id';
import { boxesMeet } from '@latchwork/core/base/point';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { segmentLengths } from '@latchwork/core/derive/formboard/segment-path';
import type { Harness } from '@latchwork/core/derive/harness';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { drawingBounds, itemBounds } from '@latchwork/core/exports/drawing/drawing-bounds';
import type { Drawing, DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { drawingSvg } from '@latchwork/core/exports/drawing/drawing-svg';
import { drawingDxf } from '@latchwork/core/exports/drawing/dxf/drawing-dxf';
import { flattenCurve } from '@latchwork/core/exports/drawing/flatten-curve';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { formboard } from '@latchwork/core/exports/formboard';
import { lengthTable } from '@latchwork/core/exports/length-table';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { fakeModules } from '../drawing/sample-drawing';

const inputOf = (project: Project): DocumentInput => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};
const drawn = (change?: (t: TinyDraft) => void): Drawing => formboard.drawing!(inputOf(tiny(change)));

type Text = Extract<DrawingItem, { kind: 'text' }>;
const texts = ({ items }: Drawing, layer?: string): Text[] =>
  items.filter((i): i is Text => i.kind === 'text' && (layer === undefined || i.layer === layer));
const words = (drawing: Drawing, layer?: string): string[] => texts(drawing, layer).map((t) => t.text);

/** Pegs are crosses of 5.2 mm: their middles, from left to right. */
const CROSS_MM = 5.2;
type Run = readonly [number, number, number, number];
const middles = (runs: readonly Run[]) =>
  runs
    .filter(([x1, y1, x2, y2]) => y1 === y2 && Math.abs(x2 - x1 - CROSS_MM) < 1e-3)
    .map(([x1, y1, x2]) => ({ x: (x1 + x2) / 2, y: y1 }));

describe('the formboard of a small harness', () => {
  it('states each length with its tolerance and the diameter of its bundle', () => {
    const drawing = drawn((t) => {
      t.project.segments[0]!.lengthMm = 300;
      t.project.segments[0]!.plusMm = 5;
      t.project.segments[0]!.minusMm = 0;
    });
    expect(words(drawing, 'lengths')).toEqual([expect.stringMatching(/^S1 {2}300 \+5\/-0 {2}Ø2\.\d$/)]);
  });

  it('says of a length that is typed otherwise than drawn that it is not to scale', () => {
    const drawing = drawn((t) => void (t.project.segments[0]!.lengthMm = 420));
    expect(words(drawing, 'lengths')).toEqual([
      expect.stringContaining('S1  420'),
      'not to scale: drawn 300',
    ]);
  });

  it('does not invent a diameter', () => {
    const drawing = drawn((t) => void delete t.part('wire', 'WIRE-22').odMm);
    expect(words(drawing, 'lengths')[0]).toContain('Ø not known');
  });

  it('puts beside each connector its table in a named view', () => {
    const table = words(drawn(), 'tables');
    expect(table).toContain('X1  H-SOCKET');
    expect(table.filter((w) => w.startsWith('view: wire-entry face'))).toHaveLength(2);
    // Cavities with wire, colour, size and other end; one that is empty by intent says so.
    for (const text of ['W1', 'RD', '22 AWG', 'X2:1', 'empty by intent']) expect(table).toContain(text);
  });

  it('bears title, revision, baseline, notes, cautions and bars', () => {
    const drawing = drawn((t) => void t.project.notes.push('Lace before taping.'));
    const said = words(drawing);
    expect(said).toContain('Tiny example');
    expect(said).toContain('A (draft)');
    expect(said.join(' ')).toMatch(/[0-9a-f]{64}/);
    expect(said).toContain('Note 1: Lace before taping.');
    expect(said.join(' ')).toContain('An aid, not an authority');
    const bars = drawing.items.flatMap((i) => (i.kind === 'polyline' && i.layer === 'scale' && i.line === 'thick' ? [itemBounds(i)] : [])); // prettier-ignore
    expect(bars.map((b) => Math.max(b.maxX - b.minX, b.maxY - b.minY))).toEqual([100.5, 100.5].map((n) => expect.closeTo(n, 6))); // prettier-ignore
  });

  it('draws an assumed outline dashed, a stated one whole', () => {
    const outlines = (d: Drawing) => d.items.filter((i) => i.kind === 'polyline' && i.layer === 'connectors' && i.fill === 'paper' && i.line === 'thick').map((i) => i.kind === 'polyline' && i.dash); // prettier-ignore
    expect(outlines(drawn())).toEqual(['dashed', 'dashed']);
    const body = { widthMm: 13, heightMm: 6, lengthMm: 18 };
    expect(outlines(drawn((t) => void (t.part('housing', 'H-SOCKET').body = body)))).toEqual([undefined, 'dashed']); // prettier-ignore
  });

  it('tells plugs, receptacles, latches and cavity 1 apart by their signs', () => {
    const signs = (d: Drawing) => d.items.filter((i) => i.kind === 'polyline' && i.layer === 'connectors').length; // prettier-ignore
    const bare = signs(drawn());
    const without = (change: (t: TinyDraft) => void): number => bare - signs(drawn(change));
    expect(without((t) => void delete t.part('housing', 'H-SOCKET').bodyForm)).toBe(1);
    expect(without((t) => void delete t.part('housing', 'H-PIN').bodyForm)).toBe(1);
    expect(without((t) => void delete t.part('housing', 'H-PIN').latchSide)).toBe(1);
    expect(without((t) => void delete t.part('housing', 'H-PIN').cavityOneCorner)).toBe(1);
  });

  it('lists runs, nodes and connectors in its table', () => {
    const { rows } = formboard.table(inputOf(tiny()));
    expect(rows.map((r) => [r['kind'], r['name'], r['length'] ?? r['x']])).toEqual([
      ['segment', 'S1', 300],
      ['node', 'N1', 0],
      ['node', 'N2', 300],
      ['connector', 'X1', 0],
      ['connector', 'X2', 300],
    ]);
  });

  it('says so when nothing is placed', () => {
    const bare = tiny((t) => {
      for (const c of t.project.connectors) delete c.node;
      t.project.nodes = [];
      t.project.segments = [];
    });
    const paper = formboard.paper!(inputOf(bare));
    expect(JSON.stringify(paper.blocks)).toContain('The formboard is empty');
    expect(JSON.stringify(paper.blocks)).toContain('X1, X2');
    expect(formboard.drawing!(inputOf(bare)).widthMm).toBeGreaterThan(0);
  });
});

describe('the angles of a node', () => {
  /** A node with a run to the right and one at `deg`, counted clockwise. */
  const angles = (...degs: number[]) =>
    words(
      drawn((t) => {
        const [n1] = t.project.nodes;
        degs.forEach((deg, i) => {
          const [x, y] = [200 * Math.cos((deg * Math.PI) / 180), 200 * Math.sin((deg * Math.PI) / 180)];
          const node = t.newId();
          t.project.nodes.push({ id: node, designator: `N${i + 7}`, position: { x, y } });
          t.project.segments.push({ id: t.newId(), designator: `S${i + 7}`, from: node, to: n1!.id });
        });
      }),
      'angles',
    ).sort();

  it('are told between neighbouring runs, a straight one not', () => {
    expect(angles(60)).toEqual(['60°']);
    expect(angles(180)).toEqual([]);
    // Of 60, 90 and 210 the widest follows from the others.
    expect(angles(60, 150)).toEqual(['60°', '90°']);
  });
});

describe('the formboard of the medium demo', () => {
  let harness: Harness;
  let drawing: Drawing;
  beforeAll(() => {
    const parsed = parseProject(readFileSync('demo-projects/weather-station.latchwork', 'utf8'));
    if (!parsed.ok) throw new Error('the demo does not open');
    const input = inputOf(parsed.value);
    harness = input.harness;
    drawing = formboard.drawing!(input);
  });
  /** The pegs as the project has them, moved so that the leftmost lies at the origin. */
  const pegs = () => relative(harness.project.nodes.map((n) => n.position));
  const relative = (points: readonly { x: number; y: number }[]) => {
    const sorted = [...points].sort((a, b) => Math.round(a.x - b.x) || a.y - b.y);
    const [first] = sorted as [{ x: number; y: number }];
    return sorted.map((p) => ({ x: expect.closeTo(p.x - first.x, 2), y: expect.closeTo(p.y - first.y, 2), at: p, d: { x: p.x - first.x, y: p.y - first.y } })); // prettier-ignore
  };
  const samePlaces = (found: readonly { x: number; y: number }[]): void => {
    const expected = pegs();
    const got = relative(found);
    expect(got).toHaveLength(expected.length);
    got.forEach((g, i) => {
      expect(Math.abs(g.d.x - expected[i]!.d.x)).toBeLessThan(0.01);
      expect(Math.abs(g.d.y - expected[i]!.d.y)).toBeLessThan(0.01);
    });
  };

  it('has its pegs where the project has its nodes, in SVG', () => {
    const svg = XmlDocument.fromString(drawingSvg(drawing, 'Formboard', fakeModules));
    const paths = svg.find('//s:g[@data-layer="nodes"]/s:path', { s: 'http://www.w3.org/2000/svg' });
    const runs = paths.flatMap((p) => {
      const m = /^M(\S+) (\S+)L(\S+) (\S+)$/.exec((p as XmlElement).attr('d')!.value);
      return m ? [m.slice(1).map(Number) as unknown as Run] : [];
    });
    samePlaces(middles(runs));
  });

  it('has them there in DXF, y upwards, as another program reads it', () => {
    const dxf = new DxfParser().parseSync(drawingDxf(drawing, 'Formboard', fakeModules))!;
    const lines = dxf.entities.filter((e) => e.type === 'LINE' && e.layer === 'NODES');
    const runs = lines.map((e): Run => {
      const [a, b] = (e as unknown as { vertices: { x: number; y: number }[] }).vertices;
      return [a!.x, -a!.y, b!.x, -b!.y];
    });
    samePlaces(middles(runs));
    expect(Object.keys(dxf.tables.layer.layers)).toEqual(expect.arrayContaining(['BUNDLES', 'CONNECTORS', 'COVERINGS', 'LENGTHS', 'NODES', 'SCALE', 'TABLES'])); // prettier-ignore
  });

  it('shows lengths whose sums are the lengths in the connection table', () => {
    const input = { harness, check: checkHarness(harness, []), date: '2026-03-01' };
    // What is written along the runs: "S1  110 +5/-0  Ø6.9".
    const shown = new Map(
      words(drawing, 'lengths').flatMap((text) => {
        const m = /^(S\d+) {2}([\d.]+)/.exec(text);
        return m ? [[m[1]!, Number(m[2])] as const] : [];
      }),
    );
    expect(shown.size).toBe(harness.project.segments.length);
    const measured = new Map(lengthTable.table(input).rows.map((r) => [r['wire'], r]));
    const routed = connectionTable.table(input).rows.filter((r) => r['lengthKind'] === 'routed' && r['path']);
    expect(routed.length).toBeGreaterThan(10);
    for (const row of routed) {
      const runs = String(row['path']).split(' ');
      const path = runs.reduce((mm, name) => mm + (shown.get(name) as number), 0);
      const { fromAllowanceMm, toAllowanceMm, takeUpMm, extraMm } = measured.get(row['wire'] as string)!;
      const ends = [fromAllowanceMm, toAllowanceMm, takeUpMm, extraMm].reduce<number>((a, b) => a + Number(b ?? 0), 0); // prettier-ignore
      // Lengths on the board are rounded to 0.1 mm each, a cut length up to the millimetre.
      const cut = Number(row['lengthMm']);
      expect(cut).toBeGreaterThanOrEqual(path + ends - 0.05 * runs.length - 1e-9);
      expect(cut).toBeLessThan(path + ends + 1 + 0.05 * runs.length);
    }
  });

  it('sets no name, length or table on another one', () => {
    const named = texts(drawing).filter((t) => t.layer !== 'connectors' && t.layer !== 'sheet' && t.layer !== 'scale' && t.layer !== 'tables'); // prettier-ignore
    const boxes = named.map((t) => ({ t, box: itemBounds(t) }));
    const clashes = boxes.flatMap(
      (a, i) =>
      boxes.slice(i + 1).flatMap((b) => (boxesMeet(shrunk(a.box), shrunk(b.box)) ? [`${a.t.text} / ${b.t.text}`] : [])), // prettier-ignore
    );
    expect(clashes).toEqual([]);
    const frames = drawing.items.filter((i) => i.kind === 'polyline' && i.layer === 'tables' && i.fill === 'paper' && i.line === 'thin' && i.points.length === 4).map(itemBounds).filter((b) => b.maxX - b.minX > 15); // prettier-ignore
    expect(frames).toHaveLength(
      harness.connectors.filter((c) => c.resolved.connector.node !== undefined).length,
    );
    for (const { t, box } of boxes)
      expect(
        frames.some((f) => boxesMeet(f, shrunk(box))),
        t.text,
      ).toBe(false);
  });
  const shrunk = (b: ReturnType<typeof itemBounds>) => ({ minX: b.minX + 0.7, minY: b.minY + 0.7, maxX: b.maxX - 0.7, maxY: b.maxY - 0.7 }); // prettier-ignore

  it('draws curved runs as curves of their length', () => {
    const curves = drawing.items.flatMap((i) => (i.kind === 'curve' && i.layer === 'bundles' ? [flattenCurve(i.points, 0.001)] : [])); // prettier-ignore
    const lengths = curves.map((points) => points.slice(1).reduce((mm, p, i) => mm + Math.hypot(p.x - points[i]!.x, p.y - points[i]!.y), 0)); // prettier-ignore
    const curved = harness.segments.filter((s) => s.segment.shape === 'curve' && s.segment.via?.length);
    expect(curved.length).toBeGreaterThan(0);
    const nodes = byId(harness.project.nodes);
    const drawn = curved.map((s) => segmentLengths(s.segment, nodes).drawnMm);
    expect(lengths.sort()).toEqual(drawn.sort().map((mm) => expect.closeTo(mm, 1)));
  });

  it('lies in its sheet with room on all sides', () => {
    const bounds = drawingBounds(drawing)!;
    expect(bounds.minX).toBeCloseTo(10, 6);
    expect(bounds.minY).toBeCloseTo(10, 6);
    expect(drawing.widthMm - bounds.maxX).toBeCloseTo(10, 6);
    expect(drawing.heightMm - bounds.maxY).toBeCloseTo(10, 6);
  });

  it('is the same for the same project', () => {
    const again = deriveHarness(structuredClone(harness.project));
    const input = { harness: again, check: checkHarness(again, []), date: '2026-03-01' };
    expect(formboard.drawing!(input)).toEqual(drawing);
  });
});
