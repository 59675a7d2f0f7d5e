import type { BoardConnector, BoardScene } from '../../derive/formboard/scene/board-items';
import { textItem } from '../drawing/items';
import { textWidthMm } from '../drawing/text-width';
import type { BoardSheet } from './board-sheet';
import { along, drawBody, LATCH_FROM, reachMm } from './draw-body';
import { across, upright } from './draw-runs';

const LAYER = 'connectors';
const NAME_MM = 3.5;
/** What the mark of a node takes of a body. */
const NODE_MM = 3;

/** Bodies at their true size and direction, each with an arrow at its mating face and its designator. */
export function drawConnectors(sheet: BoardSheet, scene: BoardScene): void {
  for (const c of scene.connectors) {
    sheet.draw(...drawBody(c));
    // A turned body takes the room of its lines, not of the box around it.
    const half = c.acrossMm / 2;
    for (const off of [-0.5, 0, 0.5])
      sheet.occupied.addLine([along(c, 0, off * c.acrossMm), along(c, reachMm(c), off * c.acrossMm)], half);
  }
  for (const c of scene.connectors) nameOf(sheet, c);
} // prettier-ignore

/** The designator in the body where it fits, else beside it. */
function nameOf(sheet: BoardSheet, c: BoardConnector): void {
  const { designator } = c.use.resolved.connector;
  // Between the mark of the node, which lies on the rear face, and the latch.
  const free = c.alongMm * LATCH_FROM - NODE_MM;
  const middle = along(c, NODE_MM + free / 2);
  const ways = [
    [upright(c.angle + Math.PI / 2), c.acrossMm, free + 0.6],
    [upright(c.angle), free, c.acrossMm],
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
  sheet.place(size, along(c, c.alongMm / 2), { clearMm, liked: -Math.PI / 2, layer: LAYER }, (box) => [
    textItem(designator, { x: box.minX + 0.5, y: box.maxY - 0.5 }, NAME_MM, { look: 'strong', layer: LAYER }),
  ]);
}
