import type { Point } from '../../base/point';
import type { DrawnPath } from '../../calc/curve/drawn-path';
import { placeOfStation } from '../../derive/formboard/segment-path';
import type { BoardCovering, BoardScene, BoardSegment } from '../../derive/formboard/scene/board-items';
import { besides } from '../../derive/formboard/scene/line';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem, textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';
import type { BoardSheet } from './board-sheet';
import { diameterText, lengthWithTolerance, offScaleText } from './board-words';

/** Bundles at their widths with their middle lines, and the coverings that lie on them. */
export function drawRuns(sheet: BoardSheet, scene: BoardScene): void {
  for (const s of scene.segments) {
    sheet.draw(...bundle(s));
    sheet.occupied.addLine(s.points, Math.max(s.outsideMm, 1.5) + 1);
  }
  for (const c of scene.coverings) sheet.draw(...covering(c));
  // The middle lines lie on top: pegs are set by them.
  for (const s of scene.segments) sheet.draw(middleLine(s.path, 'bundles'));
}

function bundle(s: BoardSegment): DrawingItem[] {
  const [left, right] = [besides(s.points, -s.widthMm / 2), besides(s.points, s.widthMm / 2)];
  return [
    { kind: 'polyline', points: [...left, ...[...right].reverse()], closed: true, fill: 'light', layer: 'bundles' },
    { kind: 'polyline', points: [...left], line: 'thin', layer: 'bundles' },
    { kind: 'polyline', points: [...right], line: 'thin', layer: 'bundles' },
  ];
} // prettier-ignore

/** The path as it is: straight runs as lines, curves as curves. */
export function middleLine(path: DrawnPath, layer: string): DrawingItem {
  const style = { line: 'hair', dash: 'chain', layer } as const;
  if (path.pieces.every((p) => !p.control))
    return { kind: 'polyline', points: [path.start, ...path.pieces.map((p) => p.to)], ...style };
  const points = path.pieces.flatMap(({ from, to, control }) => [...(control ?? [from, to]), to]);
  return { kind: 'curve', points: [path.start, ...points], ...style };
}

/** How far apart the hatches of a covering stand, mm. */
const HATCH_MM = 4;

/** A piece of a covering over its run: white, edged, with slanting hatches, closed where it begins and ends. */
function covering(c: BoardCovering): DrawingItem[] {
  const half = c.outsideMm / 2;
  const [left, right] = [besides(c.points, -half), besides(c.points, half)];
  const layer = 'coverings';
  return [
    { kind: 'polyline', points: [...left, ...[...right].reverse()], closed: true, fill: 'paper', layer },
    { kind: 'polyline', points: [...left], line: 'thin', layer },
    { kind: 'polyline', points: [...right], line: 'thin', layer },
    ...hatches(c.points, half).map(([a, b]) => lineItem(a, b, { line: 'hair', layer })),
    ...c.ends.map(({ at, angle }) =>
      lineItem(across(at, angle, -half), across(at, angle, half), { line: 'thick', layer }),
    ),
  ];
}

/** A point beside a place on a run, to the right of its direction where `byMm` is positive. */
export const across = (at: Point, angle: number, byMm: number): Point => ({
  x: at.x - Math.sin(angle) * byMm,
  y: at.y + Math.cos(angle) * byMm,
});

function hatches(points: readonly Point[], half: number): readonly (readonly [Point, Point])[] {
  const out: [Point, Point][] = [];
  let next = HATCH_MM / 2;
  let done = 0;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const angle = Math.atan2(b.y - a.y, b.x - a.x);
    while (next <= done + long) {
      const t = (next - done) / long;
      const at = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
      const [p, q] = [across(at, angle, -half), across(at, angle, half)];
      // Slanting by as much as the run is wide, but no more than the hatches are apart.
      const lean = Math.min(half, HATCH_MM / 2);
      const [dx, dy] = [Math.cos(angle) * lean, Math.sin(angle) * lean];
      out.push([{ x: p.x - dx, y: p.y - dy }, { x: q.x + dx, y: q.y + dy }]); // prettier-ignore
      next += HATCH_MM;
    }
    done += long;
  }
  return out;
}

const LENGTH_MM = 2.5;
const PLACES = [0.5, 0.35, 0.65, 0.22, 0.78, 0.12, 0.88] as const;

/** Designator, length with tolerance and bundle diameter along each run; beside it where it is too short. */
export function nameRuns(sheet: BoardSheet, scene: BoardScene): void {
  for (const s of scene.segments) {
    const words = `${s.segment.designator}  ${lengthWithTolerance(s.lengthMm, s.segment)}  ${diameterText(s)}`;
    const lines = [words, offScaleText(s)].filter(Boolean);
    if (!alongRun(sheet, s, lines)) besideRun(sheet, s, lines);
  }
}

/** Angle at which text on a run is read without turning the sheet over. */
export function upright(angle: number): number {
  const turned = Math.atan2(Math.sin(angle), Math.cos(angle));
  return turned > Math.PI / 2 + 1e-9 || turned <= -Math.PI / 2 - 1e-9 ? turned + Math.PI : turned;
}

function alongRun(sheet: BoardSheet, s: BoardSegment, lines: readonly string[]): boolean {
  const widest = Math.max(...lines.map((l) => textWidthMm(l, LENGTH_MM)));
  if (s.path.pieces.length > 1 ? widest > s.drawnMm * 0.5 : widest > s.drawnMm - 4) return false;
  for (const side of [-1, 1])
    for (const t of PLACES) {
      const { at, angle } = placeOfStation(s.path, s.lengthMm, s.lengthMm * t);
      const turn = upright(angle);
      const items = lines.map((line, i) => {
        // Above the run for the eye, whichever way it runs.
        const rank = side < 0 ? lines.length - 1 - i : i;
        const lift = s.outsideMm / 2 + 1.6 + rank * LENGTH_MM * 1.6 + (side < 0 ? 0 : LENGTH_MM);
        return textItem(line, across(at, turn, side * lift), LENGTH_MM, {
          align: 'middle',
          angleDeg: (turn * 180) / Math.PI,
          layer: 'lengths',
          ...(i === 0 ? {} : { look: 'strong' as const }),
        });
      });
      if (!sheet.isFree(items)) continue;
      sheet.take(...items);
      return true;
    }
  return false;
}

function besideRun(sheet: BoardSheet, s: BoardSegment, lines: readonly string[]): void {
  const { at, angle } = placeOfStation(s.path, s.lengthMm, s.lengthMm / 2);
  const size = {
    width: Math.max(...lines.map((l) => textWidthMm(l, LENGTH_MM))) + 1,
    height: lines.length * LENGTH_MM * 1.6 + 1,
  };
  const options = { clearMm: s.outsideMm / 2 + 2, liked: angle - Math.PI / 2, layer: 'lengths' };
  sheet.place(size, at, options, (box) =>
    lines.map((line, i) =>
      textItem(line, { x: box.minX + 0.5, y: box.minY + LENGTH_MM * 1.3 + i * LENGTH_MM * 1.6 }, LENGTH_MM, {
        layer: 'lengths',
        ...(i === 0 ? {} : { look: 'strong' as const }),
      }),
    ),
  );
}
