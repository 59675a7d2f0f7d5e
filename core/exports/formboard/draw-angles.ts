import type { Point } from '../../base/point';
import { roundTo } from '../../model/length-text';
import type { BoardScene, BoardSegment } from '../../derive/formboard/scene/board-items';
import { textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';
import type { BoardSheet } from './board-sheet';

const LAYER = 'angles';
const TEXT_MM = 2;
const RADIUS_MM = 9;
/** Angles nearer to a straight line than this need no word. */
const STRAIGHT_DEG = 0.5;

/** The angles between neighbouring runs at each node where they branch or bend; the widest of three or more follows from the others. */
export function drawAngles(sheet: BoardSheet, scene: BoardScene): void {
  for (const node of scene.nodes) {
    const runs = scene.segmentsAt.get(node.id) ?? [];
    for (const { fromDeg, spanDeg } of anglesAt(node.id, runs)) {
      const radius = Math.max(RADIUS_MM, ...runs.map((r) => r.outsideMm * 1.2));
      sheet.draw({
        kind: 'arc',
        at: node.at,
        radiusMm: radius,
        fromDeg,
        toDeg: fromDeg + spanDeg,
        line: 'hair',
        layer: LAYER,
      });
      const middle = ((fromDeg + spanDeg / 2) * Math.PI) / 180;
      const words = `${roundTo(spanDeg, 1)}°`;
      const on: Point = {
        x: node.at.x + Math.cos(middle) * radius,
        y: node.at.y + Math.sin(middle) * radius,
      };
      const size = { width: textWidthMm(words, TEXT_MM) + 0.6, height: TEXT_MM * 1.5 };
      sheet.place(size, on, { clearMm: 0.8, liked: middle, layer: LAYER }, (box) => [
        textItem(words, { x: box.minX + 0.3, y: box.maxY - TEXT_MM * 0.25 }, TEXT_MM, { layer: LAYER }),
      ]);
    }
  }
}

interface Angle {
  readonly fromDeg: number;
  readonly spanDeg: number;
}

/** Angles between neighbouring runs, clockwise. */
export function anglesAt(node: string, runs: readonly BoardSegment[]): readonly Angle[] {
  const leaving = runs.flatMap((r) => directionsAt(node, r)).sort((a, b) => a - b);
  if (leaving.length < 2) return [];
  const all = leaving.map((fromDeg, i): Angle => {
    const next = leaving[(i + 1) % leaving.length] as number;
    return { fromDeg, spanDeg: next - fromDeg + (i === leaving.length - 1 ? 360 : 0) };
  });
  const widest = all.reduce((a, b) => (b.spanDeg > a.spanDeg ? b : a));
  return all.filter((a) => a !== widest && Math.abs(a.spanDeg - 180) > STRAIGHT_DEG && a.spanDeg > STRAIGHT_DEG);
} // prettier-ignore

/** Directions in which a run leaves a node, degrees in [0, 360): two for a run that comes back to it. */
function directionsAt(node: string, { segment, path }: BoardSegment): readonly number[] {
  const [first, last] = [path.pieces[0], path.pieces.at(-1)];
  const out: number[] = [];
  if (segment.from === node && first) out.push(degrees(first.from, first.control?.[0] ?? first.to));
  if (segment.to === node && last) out.push(degrees(last.to, last.control?.[1] ?? last.from));
  return out;
}

const degrees = (a: Point, b: Point): number =>
  ((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI + 360) % 360;
