import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { drawingDxf } from '@latchwork/core/exports/drawing/dxf/drawing-dxf';
import { flattenCurve } from '@latchwork/core/exports/drawing/flatten-curve';
import { fakeModules, SAMPLE } from './sample-drawing';

/** An entity as the reader gives it: its fields depend on its kind. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Entity = Record<string, any>;

/** What another program reads in the file, by kind of entity. */
function read(text: string) {
  const dxf = new DxfParser().parseSync(text)!;
  const of = (type: string) => dxf.entities.filter((e) => e.type === type) as unknown as Entity[];
  return { dxf, of };
} // prettier-ignore

const one = (item: DrawingItem): Drawing => ({ widthMm: 200, heightMm: 100, items: [item] });

describe('a drawing as DXF R12', () => {
  const text = drawingDxf(SAMPLE, 'Sample', fakeModules);
  const { dxf, of } = read(text);

  it('says its release, its size and its units', () => {
    expect(dxf.header['$ACADVER']).toBe('AC1009');
    expect(dxf.header['$EXTMAX']).toMatchObject({ x: 200, y: 100 });
    expect(text).toMatch(/^999\nSample\n999\nUnits: millimetres/);
    // Entities of later releases would not be read.
    expect(text).not.toMatch(/LWPOLYLINE|MTEXT|HATCH|SPLINE/);
  });

  it('puts items on their layers, with names that the release allows', () => {
    expect(Object.keys(dxf.tables.layer.layers).sort()).toEqual(['0', 'NAMES____NOTES_', 'WIRES']);
    expect(of('LINE')[0]).toMatchObject({ layer: 'WIRES' });
  });

  it('keeps places, y upwards', () => {
    expect(of('LINE')[0]!['vertices']).toMatchObject([{ x: 10, y: 80 }, { x: 110, y: 80 }]); // prettier-ignore
    expect(of('CIRCLE')[0]).toMatchObject({ center: { x: 130, y: 70 }, radius: 5 });
    const [triangle] = of('POLYLINE');
    expect(triangle).toMatchObject({ shape: true, lineType: 'DASHED', vertices: [{ x: 10, y: 70 }, { x: 30, y: 70 }, { x: 30, y: 50 }] }); // prettier-ignore
  });

  it('turns clockwise arcs into anticlockwise ones over the same points', () => {
    const points = of('ARC').map((a) =>
      [a['startAngle'], a['endAngle']].map((angle) => ({
        x: a['center'].x + a['radius'] * Math.cos(angle),
        y: a['center'].y + a['radius'] * Math.sin(angle),
      })),
    );
    // In our frame from right (160, 30) over to below (150, 40), and the other three quarters.
    expect(points[0]![0]).toMatchObject({ x: expect.closeTo(150, 3), y: expect.closeTo(60, 3) });
    expect(points[0]![1]).toMatchObject({ x: expect.closeTo(160, 3), y: expect.closeTo(70, 3) });
    const spans = of('ARC').map((a) => (a['endAngle'] - a['startAngle'] + 4 * Math.PI) % (2 * Math.PI));
    expect(spans).toEqual([expect.closeTo(Math.PI / 2, 5), expect.closeTo(1.5 * Math.PI, 5)]);
  });

  it('writes texts with their height, angle and alignment, in ASCII', () => {
    const [left, turned] = of('TEXT');
    expect(left).toMatchObject({ text: 'a < b & "c" 100 %%%%%% \\U+00B5', textHeight: 3, startPoint: { x: 10, y: 5 } }); // prettier-ignore
    expect(turned).toMatchObject({ textHeight: 2.5, halign: 2, rotation: 90, endPoint: { x: 180, y: 20 } });
    expect(text).toMatch(/^[\x0a\x20-\x7e]*$/);
  });

  it('fills black figures and bars of codes as solids', () => {
    expect(of('SOLID')).toHaveLength(1 + 2);
    const xs = of('SOLID')[0]!['points'].map((p: { x: number }) => p.x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([60, 70]);
  });

  it('keeps curves within 0.05 mm', () => {
    const place = fc.record({ x: fc.integer({ min: 0, max: 200 }), y: fc.integer({ min: 0, max: 100 }) });
    fc.assert(
      fc.property(fc.array(place, { minLength: 4, maxLength: 4 }), (points) => {
        const runs = flattenCurve(points, 0.05);
        const [a, b, c, d] = points as [P, P, P, P];
        for (let i = 0; i <= 200; i++) {
          const p = deCasteljau(a, b, c, d, i / 200);
          expect(Math.min(...runs.slice(1).map((to, k) => toRun(p, runs[k]!, to)))).toBeLessThan(0.0501);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('reads as lines from first to last point of a curve', () => {
    const curve: DrawingItem = { kind: 'curve', points: [{ x: 10, y: 60 }, { x: 60, y: 60 }, { x: 60, y: 90 }, { x: 110, y: 90 }] }; // prettier-ignore
    const vertices = read(drawingDxf(one(curve), 'x', fakeModules)).of('POLYLINE')[0]!['vertices'];
    expect(vertices[0]).toMatchObject({ x: 10, y: 40 });
    expect(vertices.at(-1)).toMatchObject({ x: 110, y: 10 });
    expect(vertices.length).toBeGreaterThan(10);
  });
});

type P = { readonly x: number; readonly y: number };
const mix = (a: P, b: P, t: number): P => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });

/** De Casteljau's construction, another way to the points of the curve. */
function deCasteljau(a: P, b: P, c: P, d: P, t: number): P {
  const [ab, bc, cd] = [mix(a, b, t), mix(b, c, t), mix(c, d, t)];
  return mix(mix(ab, bc, t), mix(bc, cd, t), t);
}

function toRun(p: P, a: P, b: P): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}
