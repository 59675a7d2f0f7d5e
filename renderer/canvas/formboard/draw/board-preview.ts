import type { Point } from '@latchwork/core/base/point';
import { distance } from '@latchwork/core/base/point';
import { normalDeg } from '@latchwork/core/derive/formboard/normal-deg';
import { lengthText, roundTo } from '@latchwork/core/model/length-text';
import { boxOf } from '@latchwork/core/tools/box-select';
import type { Guide } from '@latchwork/core/tools/formboard/guides';
import type { Gesture } from '@latchwork/core/tools/step-tool';
import { clamp, text, type Pen } from '../../draw/pen';
import type { BoardDimension, BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';
import { groundOf } from '@latchwork/core/derive/formboard/scene/dimension-ground';
import { dimensionItem } from '@latchwork/core/derive/formboard/scene/dimension-items';
import { NOTHING_LIT } from '../scene/lit';
import { paintDimension } from './dimensions';
import { paintHalo } from './halo';
import type { LengthUnit } from './lengths';

/** What a gesture would do, drawn over the board: guides, rubber lines, and the values it stands at. */
export function paintPreview(pen: Pen, scene: BoardScene, gesture: Gesture, unit: LengthUnit): void {
  switch (gesture.is) {
    case 'box-select':
      return frame(pen, gesture);
    case 'draw-segment': {
      const from = scene.nodeById.get(gesture.from)?.at;
      const { over } = gesture;
      const to = (over.on === 'node' ? scene.nodeById.get(over.id)?.at : undefined) ?? gesture.at;
      if (from) rubber(pen, from, to, over.on === 'node', unit);
      return;
    }
    case 'move-nodes':
      paintGuides(pen, gesture.guides);
      if (gesture.refused !== null) {
        const [first] = gesture.nodes;
        if (first) say(pen, first.at, gesture.refused, pen.look.tokens.major);
      }
      return;
    case 'drag-via':
      if (gesture.moving) paintGuides(pen, gesture.guides);
      return;
    case 'drag-branch':
      if (!gesture.moving) return;
      paintGuides(pen, gesture.guides);
      dot(pen, gesture.root.at);
      dot(pen, gesture.at);
      return rubber(pen, gesture.root.at, gesture.at, false, unit);
    case 'slide':
      if (gesture.moving && gesture.place) say(pen, gesture.place.at, stationWords(scene, gesture, unit));
      return;
    case 'turn-connector':
      if (!gesture.moving) return;
      ray(pen, gesture.centre, gesture.deg);
      return say(pen, gesture.centre, `${angleWords(gesture.deg)}°`);
    case 'turn-branch':
      if (!gesture.moving) return;
      ray(pen, gesture.pivot, gesture.firstDeg + gesture.byDeg);
      return say(pen, gesture.pivot, `${angleWords(gesture.firstDeg + gesture.byDeg)}°`);
    case 'drag-dimension':
      if (gesture.moving) say(pen, gesture.start, `${lengthText(gesture.offsetMm, unit)} away`);
      return;
    case 'draw-dimension': {
      const datums = gesture.over ? [...gesture.datums, gesture.over] : gesture.datums;
      const item = previewDimension(scene, gesture.form, datums);
      if (item) paintDimension(pen, item, unit, pen.look.tokens.copper);
      return say(pen, gesture.at, gesture.datums.length > 1 ? 'Enter ends' : 'Click the next place');
    }
    case 'pin-path': {
      paintHalo(pen, scene, { ...NOTHING_LIT, ways: new Set(gesture.path ?? []) }, false);
      paintHalo(pen, scene, { ...NOTHING_LIT, ways: new Set(gesture.through) }, true);
      return say(
        pen,
        gesture.at,
        gesture.through.length ? 'Enter lays the wire here' : 'Click the runs it takes',
      );
    }
    default:
      return;
  }
}

function previewDimension(
  scene: BoardScene,
  form: 'chain' | 'baseline',
  datums: Extract<Gesture, { is: 'draw-dimension' }>['datums'],
): BoardDimension | null {
  if (datums.length < 2) return null;
  const dimension = { id: '', form, datums: [...datums], offsetMm: 25 };
  return dimensionItem(dimension, groundOf(scene.harness, scene));
}

const X = (pen: Pen, p: Point): number => (p.x - pen.ox) * pen.s;
const Y = (pen: Pen, p: Point): number => (p.y - pen.oy) * pen.s;

function frame(pen: Pen, gesture: { readonly from: Point; readonly to: Point }): void {
  const b = boxOf(gesture);
  const { ctx, look } = pen;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 1;
  ctx.strokeRect(
    pen.x(b.minX) + 0.5,
    pen.y(b.minY) + 0.5,
    pen.x(b.maxX) - pen.x(b.minX),
    pen.y(b.maxY) - pen.y(b.minY),
  );
}

function rubber(pen: Pen, from: Point, to: Point, lands: boolean, unit: LengthUnit): void {
  const { ctx, look } = pen;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 2;
  if (!lands) ctx.setLineDash([6, 4]);
  ctx.beginPath();
  ctx.moveTo(X(pen, from), Y(pen, from));
  ctx.lineTo(X(pen, to), Y(pen, to));
  ctx.stroke();
  ctx.setLineDash([]);
  say(pen, to, lengthText(distance(from, to), unit));
}

function dot(pen: Pen, at: Point): void {
  const { ctx, look } = pen;
  ctx.beginPath();
  ctx.arc(X(pen, at), Y(pen, at), 4, 0, 7);
  ctx.fillStyle = look.tokens.paper;
  ctx.fill();
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 2;
  ctx.stroke();
}

/** Hair lines in copper, a little beyond both ends. */
function paintGuides(pen: Pen, guides: readonly Guide[]): void {
  const { ctx, look } = pen;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 1;
  ctx.setLineDash([2, 3]);
  for (const { from, to } of guides) {
    const d = distance(from, to) || 1;
    const [ux, uy] = [(to.x - from.x) / d, (to.y - from.y) / d];
    ctx.beginPath();
    ctx.moveTo(X(pen, from) - ux * 24, Y(pen, from) - uy * 24);
    ctx.lineTo(X(pen, to) + ux * 40, Y(pen, to) + uy * 40);
    ctx.stroke();
  }
  ctx.setLineDash([]);
}

function ray(pen: Pen, at: Point, deg: number): void {
  const { ctx, look } = pen;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = 1;
  ctx.setLineDash([2, 3]);
  const angle = (deg * Math.PI) / 180;
  ctx.beginPath();
  ctx.moveTo(X(pen, at), Y(pen, at));
  ctx.lineTo(X(pen, at) + Math.cos(angle) * 120, Y(pen, at) + Math.sin(angle) * 120);
  ctx.stroke();
  ctx.setLineDash([]);
}

/** A few words beside a point, on paper of their own, kept within the view. */
function say(pen: Pen, at: Point, words: string, colour = pen.look.tokens.copper): void {
  const { ctx, look, size } = pen;
  ctx.font = text(look, 12, 600);
  const width = ctx.measureText(words).width + 12;
  const x = clamp(X(pen, at) + 12, 4, Math.max(4, size.width - width - 4));
  const y = clamp(Y(pen, at) - 34, 4, size.height - 26);
  ctx.fillStyle = look.tokens.sheet;
  ctx.strokeStyle = look.tokens.line;
  ctx.lineWidth = 1;
  ctx.beginPath();
  ctx.roundRect(x, y, width, 20, 3);
  ctx.fill();
  ctx.stroke();
  ctx.textAlign = 'left';
  ctx.textBaseline = 'middle';
  ctx.fillStyle = colour;
  ctx.fillText(words, x + 6, y + 10.5);
}

/** As it is kept: clockwise from right. */
const angleWords = (deg: number): string => String(roundTo(normalDeg(deg), 1));

function stationWords(
  scene: BoardScene,
  { place }: Extract<Gesture, { is: 'slide' }>,
  unit: LengthUnit,
): string {
  const s = place && scene.segmentById.get(place.segment);
  if (!s) return '';
  const name = (id: string): string => scene.nodeById.get(id)?.node.designator ?? '';
  return (
    `${s.segment.designator}: ${lengthText(place.atMm, unit)} from ${name(s.segment.from)}, ` +
    `${lengthText(s.lengthMm - place.atMm, unit)} to ${name(s.segment.to)}`
  );
}
