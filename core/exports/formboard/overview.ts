import type { Box, Point } from '../../base/point';
import type { BoardScene } from '../../derive/formboard/scene/board-items';
import type { Drawing } from '../drawing/drawing';
import { boxItem, textItem } from '../drawing/items';
import { scaledDrawing } from '../drawing/scaled';
import { type TextLook, textWidthMm } from '../drawing/text-width';
import { BoardSheet } from './board-sheet';
import { along } from './draw-body';
import { OVERLAP_MM, type Size, type Tiling } from './tiles';

/** All on paper, mm. */
const NAME_MM = 1.8;
/** Wider bundles are drawn with a thick line. */
const THICK_MM = 0.5;

/** The board made small: runs, points and connectors by their names, and the sheets that it is cut into. */
export function overview(
  scene: BoardScene,
  whole: Size,
  onDrawing: (p: Point) => Point,
  tiling: Tiling,
  room: Size,
): { readonly drawing: Drawing; readonly scale: number } {
  const areas = tiling.tiles.map((t) => t.area);
  const [minX, minY] = [Math.min(0, ...areas.map((a) => a.minX)), Math.min(0, ...areas.map((a) => a.minY))];
  const [widthMm, heightMm] = [
    Math.max(whole.widthMm, ...areas.map((a) => a.maxX)) - minX,
    Math.max(whole.heightMm, ...areas.map((a) => a.maxY)) - minY,
  ];
  // Nothing is measured here: any whole number will do.
  const scale = 1 / Math.max(1, Math.ceil(Math.max(widthMm / room.widthMm, heightMm / room.heightMm)));
  const shrunk = ({ x, y }: Point): Point => ({ x: (x - minX) * scale, y: (y - minY) * scale });
  const to = (p: Point): Point => shrunk(onDrawing(p));

  const sheet = new BoardSheet();
  // Clear of the strips that sheets share.
  const shared = OVERLAP_MM * scale + 0.8;
  for (const { name, area } of tiling.tiles) {
    const [a, b] = [shrunk({ x: area.minX, y: area.minY }), shrunk({ x: area.maxX, y: area.maxY })];
    const box: Box = { minX: a.x, minY: a.y, maxX: b.x, maxY: b.y };
    const edges = boxItem(box, { line: 'hair', dash: 'dashed' });
    sheet.draw(edges);
    if (edges.kind === 'polyline') sheet.occupied.addLine([...edges.points, a], 0.4);
    sheet.take(textItem(name, { x: a.x + shared, y: a.y + shared + NAME_MM }, NAME_MM));
  }
  for (const s of scene.segments) {
    const points = s.points.map(to);
    sheet.draw({ kind: 'polyline', points, line: s.widthMm * scale > THICK_MM ? 'thick' : 'thin' });
    sheet.occupied.addLine(points, 0.8);
  }
  for (const c of scene.connectors) {
    const half = c.acrossMm / 2;
    const corners = [along(c, 0, -half), along(c, c.alongMm, -half), along(c, c.alongMm, half), along(c, 0, half)]; // prettier-ignore
    sheet.take({ kind: 'polyline', points: corners.map(to), closed: true, fill: 'light', line: 'thin' });
  }
  for (const n of scene.nodes) sheet.draw({ kind: 'circle', at: to(n.at), radiusMm: 0.5, fill: 'ink' });

  const name = (text: string, at: Point, clearMm: number, liked: number, look: TextLook): void => {
    const size = { width: textWidthMm(text, NAME_MM, look) + 0.4, height: NAME_MM * 1.3 };
    sheet.place(size, at, { clearMm, liked, layer: 'names' }, (box) => [
      textItem(text, { x: box.minX + 0.2, y: box.maxY - NAME_MM * 0.15 }, NAME_MM, look === 'text' ? {} : { look }), // prettier-ignore
    ]);
  };
  for (const c of scene.connectors) {
    const clearMm = (Math.max(c.alongMm, c.acrossMm) / 2) * scale + 0.5;
    name(c.use.resolved.connector.designator, to(along(c, c.alongMm / 2)), clearMm, c.angle, 'strong');
  }
  // A node with a connector is found by that.
  const ends = new Set(scene.connectors.map((c) => c.node));
  for (const n of scene.nodes)
    if (!ends.has(n.id)) name(n.node.designator, to(n.at), 0.9, n.nameAngle, 'text');
  const onPaper = { widthMm: widthMm * scale, heightMm: heightMm * scale, items: sheet.items };
  return { drawing: scaledDrawing(onPaper, 1 / scale), scale };
}
