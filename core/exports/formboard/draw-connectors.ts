import type { Point } from '../../base/point';
import type { BoardConnector, BoardScene } from '../../derive/formboard/scene/board-items';
import type { DrawingItem } from '../drawing/drawing';
import { textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';
import type { BoardSheet } from './board-sheet';
import { across, upright } from './draw-runs';

const LAYER = 'connectors';
const NAME_MM = 3.5;
/** What the mark of a node takes of a body. */
const NODE_MM = 3;

/** Bodies at their true size and direction, each with an arrow at its mating face and its designator. */
export function drawConnectors(sheet: BoardSheet, scene: BoardScene): void {
  for (const c of scene.connectors) {
    const outline = bodyOf(c);
    sheet.draw(outline, matingArrow(c));
    // A turned body takes the room of its lines, not of the box around it.
    const half = c.acrossMm / 2;
    for (const off of [-0.5, 0, 0.5])
      sheet.occupied.addLine([along(c, 0, off * c.acrossMm), along(c, c.alongMm + ARROW_MM, off * c.acrossMm)], half);
  }
  for (const c of scene.connectors) nameOf(sheet, c);
} // prettier-ignore

/** A point so far along the mating axis from the rear face, and so far beside it. */
export const along = ({ at, angle }: Pick<BoardConnector, 'at' | 'angle'>, mm: number, asideMm = 0): Point =>
  across({ x: at.x + Math.cos(angle) * mm, y: at.y + Math.sin(angle) * mm }, angle, asideMm);

function bodyOf(c: BoardConnector): DrawingItem {
  const half = c.acrossMm / 2;
  const points = [along(c, 0, -half), along(c, c.alongMm, -half), along(c, c.alongMm, half), along(c, 0, half)]; // prettier-ignore
  return {
    kind: 'polyline',
    points,
    closed: true,
    fill: 'paper',
    line: 'thick',
    layer: LAYER,
    ...(c.sizeKnown ? {} : { dash: 'dashed' as const }),
  };
}

const ARROW_MM = 3;

/** Points into the direction of mating. */
const matingArrow = (c: BoardConnector): DrawingItem => ({
  kind: 'polyline',
  points: [along(c, c.alongMm + ARROW_MM), along(c, c.alongMm + 0.4, -1.6), along(c, c.alongMm + 0.4, 1.6)],
  closed: true,
  fill: 'ink',
  layer: LAYER,
});

/** The designator in the body where it fits, else beside it. */
function nameOf(sheet: BoardSheet, c: BoardConnector): void {
  const { designator } = c.use.resolved.connector;
  // Clear of the mark of the node, which lies on the rear face.
  const middle = along(c, c.alongMm / 2 + NODE_MM / 2);
  const ways = [
    [upright(c.angle + Math.PI / 2), c.acrossMm, c.alongMm - NODE_MM],
    [upright(c.angle), c.alongMm - NODE_MM, c.acrossMm],
  ] as const;
  for (const [turn, room, height] of ways) {
    if (textWidthMm(designator, NAME_MM, 'strong') + 1 > room || NAME_MM + 1 > height) continue;
    sheet.draw(
      textItem(designator, across(middle, turn, NAME_MM / 2), NAME_MM, {
        align: 'middle',
        angleDeg: (turn * 180) / Math.PI,
        look: 'strong',
        layer: LAYER,
      }),
    );
    return;
  }
  const size = { width: textWidthMm(designator, NAME_MM, 'strong') + 1, height: NAME_MM + 1 };
  const clearMm = Math.max(c.alongMm, c.acrossMm) / 2 + 1;
  sheet.place(size, middle, { clearMm, liked: -Math.PI / 2, layer: LAYER }, (box) => [
    textItem(designator, { x: box.minX + 0.5, y: box.maxY - 0.5 }, NAME_MM, { look: 'strong', layer: LAYER }),
  ]);
}
