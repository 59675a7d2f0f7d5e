import type { Point } from '../../base/point';
import type { BoardDimension, BoardScene } from '../../derive/formboard/scene/board-items';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem, textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';
import type { BoardSheet } from './board-sheet';
import { lengthWithTolerance } from './board-words';
import { across, upright } from './draw-runs';

const LAYER = 'dimensions';
const TEXT_MM = 2.5;
const ARROW_MM = 3;

/** Extension lines, dimension lines with arrows, and the lengths along the harness that they state. */
export function drawDimensions(sheet: BoardSheet, scene: BoardScene): void {
  for (const d of scene.dimensions) {
    for (const { at, foot } of d.datums) extension(sheet, at, foot);
    for (const m of d.measures) {
      const arrows = [arrow(m.from, m.to), arrow(m.to, m.from)].flat();
      sheet.draw(lineItem(m.from, m.to, { line: 'hair', layer: LAYER }), ...arrows);
      sheet.occupied.addLine([m.from, m.to], 1);
    }
  }
  for (const d of scene.dimensions) for (const m of d.measures) value(sheet, d, m);
}

/** From a gap at the object to a little beyond the line (ISO 129-1, from memory). */
function extension(sheet: BoardSheet, at: Point, foot: Point): void {
  const long = Math.hypot(foot.x - at.x, foot.y - at.y);
  if (long < 1) return;
  const [ux, uy] = [(foot.x - at.x) / long, (foot.y - at.y) / long];
  const gap = Math.min(3, long / 3);
  const [from, to] = [
    { x: at.x + ux * gap, y: at.y + uy * gap },
    { x: foot.x + ux * 1.5, y: foot.y + uy * 1.5 },
  ];
  sheet.draw(lineItem(from, to, { line: 'hair', layer: LAYER }));
  sheet.occupied.addLine([from, to], 0.6);
}

function arrow(tip: Point, from: Point): DrawingItem[] {
  const long = Math.hypot(from.x - tip.x, from.y - tip.y);
  if (long < 2.5 * ARROW_MM) return [];
  const angle = Math.atan2(from.y - tip.y, from.x - tip.x);
  const back = { x: tip.x + Math.cos(angle) * ARROW_MM, y: tip.y + Math.sin(angle) * ARROW_MM };
  const points = [tip, across(back, angle, -0.5), across(back, angle, 0.5)];
  return [{ kind: 'polyline', points, closed: true, fill: 'ink', layer: LAYER }];
}

/** A length that is not the straight distance of its line says that it is measured along the harness. */
function value(sheet: BoardSheet, d: BoardDimension, m: BoardDimension['measures'][number]): void {
  const words =
    m.valueMm === null
      ? 'no way between'
      : `${lengthWithTolerance(m.valueMm, d.dimension)}${m.bent ? ' along the run' : ''}`;
  const turn = upright(Math.atan2(m.to.y - m.from.y, m.to.x - m.from.x));
  const room = Math.hypot(m.to.x - m.from.x, m.to.y - m.from.y);
  const angleDeg = (turn * 180) / Math.PI;
  const fits = textWidthMm(words, TEXT_MM) + 2 <= room;
  for (const t of fits ? [0.5, 0.3, 0.7] : []) {
    const at = { x: m.from.x + (m.to.x - m.from.x) * t, y: m.from.y + (m.to.y - m.from.y) * t };
    const item = textItem(words, across(at, turn, -1), TEXT_MM, { align: 'middle', angleDeg, layer: LAYER });
    if (!sheet.isFree([item], 0)) continue;
    sheet.take(item);
    return;
  }
  const middle = { x: (m.from.x + m.to.x) / 2, y: (m.from.y + m.to.y) / 2 };
  const size = { width: textWidthMm(words, TEXT_MM) + 1, height: TEXT_MM * 1.7 };
  const liked = Math.atan2(d.away.y, d.away.x);
  sheet.place(size, middle, { clearMm: 1, liked, layer: LAYER }, (box) => [
    textItem(words, { x: box.minX + 0.5, y: box.maxY - TEXT_MM * 0.4 }, TEXT_MM, { layer: LAYER }),
  ]);
}
