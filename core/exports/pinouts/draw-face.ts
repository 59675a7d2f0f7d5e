import type { Point } from '../../base/point';
import { facePlaces, type FaceView } from '../../derive/face-places';
import type { ConnectorUse } from '../../derive/harness';
import type { MatingHalf } from '../../model/parts/part';
import type { DrawingItem } from '../drawing/drawing';
import { boxItem } from '../drawing/items';
import { drawCavity, READABLE_MM } from './draw-cavity';

/** Size of a body on its face, mm; assumed around the cavities where the record does not state it. */
export function bodySizeOf(half: MatingHalf): { widthMm: number; heightMm: number; stated: boolean } {
  const { spanXMm, spanYMm, pitchMm, rowPitchMm } = facePlaces(half, 'mating-face');
  const { widthMm, heightMm } = half.body ?? {};
  return {
    widthMm: Math.max(widthMm ?? 0, spanXMm + 1.3 * pitchMm),
    heightMm: Math.max(heightMm ?? 0, spanYMm + 1.3 * rowPitchMm),
    stated: widthMm !== undefined && heightMm !== undefined,
  };
}

/** Room that latches and the key take outside the body, mm on paper. */
export const FACE_MARGIN_MM = 6;

/** One face of a connector around a point, in millimetres on paper. Rear views are drawn with hidden lines dashed. */
export function drawFace(
  use: ConnectorUse,
  half: MatingHalf,
  view: FaceView,
  middle: Point,
  scale: number,
): DrawingItem[] {
  const { places, pitchMm, rowPitchMm } = facePlaces(half, view);
  const body = bodySizeOf(half);
  const [w, h] = [(body.widthMm * scale) / 2, (body.heightMm * scale) / 2];
  const rows = half.rows ?? 1;
  const sideMm = 0.86 * scale * (rows > 1 ? Math.min(pitchMm, rowPitchMm) : pitchMm);
  const fits = Math.min(sideMm, 2 * h - 1);
  const uses = new Map(use.cavities.map((c) => [c.cavity, c]));
  const field = fieldHalf(places, scale, fits);
  const isFront = view === 'mating-face';
  return [
    ...mountingLines(half, middle, w, h),
    ...latches(half, isFront, middle, w, h),
    box(middle, w, h, { line: 'thick', fill: 'paper', ...(body.stated ? {} : { dash: 'dashed' as const }) }),
    ...matingContour(half, isFront, middle, field, w, h),
    ...keyMark(half, isFront, middle, w, h),
    ...places.flatMap((p, i) =>
      drawCavity({
        use: uses.get(p.cavity),
        cavity: p.cavity,
        at: { x: middle.x + p.xMm * scale, y: middle.y + p.yMm * scale },
        sideMm: fits,
        isFirst: i === 0,
        showColour: !isFront,
      }),
    ),
    ...(fits < READABLE_MM ? numbersBeside(places, middle, scale, fits / 2) : []),
  ];
}

/** Where squares are too small for numbers: the first, the last and every fifth one beside the outer rows. */
function numbersBeside(
  places: readonly { cavity: string; xMm: number; yMm: number }[],
  middle: Point,
  scale: number,
  half: number,
): DrawingItem[] {
  const rows = places.map((p) => p.yMm);
  const [top, bottom] = [Math.min(...rows), Math.max(...rows)];
  return places.flatMap((p) => {
    const n = Number(p.cavity);
    const row = places.filter((q) => q.yMm === p.yMm);
    const isEnd = p === row[0] || p === row.at(-1);
    if ((p.yMm !== top && p.yMm !== bottom) || (!isEnd && n % 5 !== 0)) return [];
    const y = middle.y + p.yMm * scale + (p.yMm === top ? -half - 0.6 : half + 2.2);
    return [label(p.cavity, middle.x + p.xMm * scale, y)];
  });
}

type Style = Pick<Extract<DrawingItem, { kind: 'polyline' }>, 'line' | 'dash' | 'fill'>;

const box = ({ x, y }: Point, w: number, h: number, style: Style): DrawingItem =>
  boxItem({ minX: x - w, minY: y - h, maxX: x + w, maxY: y + h }, style);

/** Half width and height of the field of cavities. */
function fieldHalf(places: readonly { xMm: number; yMm: number }[], scale: number, side: number) {
  return {
    w: Math.max(...places.map((p) => Math.abs(p.xMm))) * scale + side / 2,
    h: Math.max(...places.map((p) => Math.abs(p.yMm))) * scale + side / 2,
  };
}

/**
 * Body form: a receptacle has an inner line around its cavities, a plug a tongue with chamfered corners. From the wire side
 * both are hidden edges.
 */
function matingContour(
  half: MatingHalf,
  isFront: boolean,
  { x, y }: Point,
  field: { w: number; h: number },
  w: number,
  h: number,
): DrawingItem[] {
  if (half.bodyForm === undefined) return [];
  const dw = Math.max(0.4, (w - field.w) * 0.45);
  const dh = Math.max(0.4, (h - field.h) * 0.45);
  const [iw, ih] = [w - dw, h - dh];
  const style: Style = isFront ? { line: 'thin' } : { line: 'hair', dash: 'dashed' };
  if (half.bodyForm === 'receptacle') return [box({ x, y }, iw, ih, style)];
  const c = Math.min(2.4, ih * 0.4, iw * 0.4);
  const points = [
    [-iw + c, -ih],
    [iw - c, -ih],
    [iw, -ih + c],
    [iw, ih - c],
    [iw - c, ih],
    [-iw + c, ih],
    [-iw, ih - c],
    [-iw, -ih + c],
  ].map(([dx, dy]) => ({ x: x + (dx ?? 0), y: y + (dy ?? 0) }));
  return [
    { kind: 'polyline', points, closed: true, ...style, ...(isFront ? { line: 'thick' as const } : {}) },
  ];
}

/** Latches stand out of the body at the side that the record names; left and right change with the view. */
function latches(half: MatingHalf, isFront: boolean, { x, y }: Point, w: number, h: number): DrawingItem[] {
  const side = half.latchSide;
  if (side === undefined || side === 'none') return [];
  const out = 1.5;
  const flat = Math.min(w * 0.3, 9);
  const upright = Math.min(h * 0.4, 5);
  const at = {
    top: [box({ x, y: y - h - out }, flat, out, { line: 'thick' }), label('latch', x, y - h - 2 * out - 0.8)],
    bottom: [
      box({ x, y: y + h + out }, flat, out, { line: 'thick' }),
      label('latch', x, y + h + 2 * out + 2.6),
    ],
    left: [
      box({ x: x - w - out, y }, out, upright, { line: 'thick' }),
      label('latch', x - w - 0.4, y - upright - 0.8, 'right'),
    ],
    right: [
      box({ x: x + w + out, y }, out, upright, { line: 'thick' }),
      label('latch', x + w + 0.4, y - upright - 0.8, 'left'),
    ],
  };
  if (side === 'both') return [...at.left, ...at.right];
  if (side === 'top' || side === 'bottom') return at[side];
  return at[(side === 'left') === isFront ? 'left' : 'right'];
}

const label = (
  text: string,
  x: number,
  y: number,
  align: 'left' | 'middle' | 'right' = 'middle',
): DrawingItem => ({ kind: 'text', at: { x, y }, text, heightMm: 1.7, align });

/** The keying code beside a sign at the foot of the body: a sign, since records do not say where a key lies. */
function keyMark(half: MatingHalf, isFront: boolean, { x, y }: Point, w: number, h: number): DrawingItem[] {
  if (half.keying === undefined || half.keying === 'none') return [];
  const side = isFront ? -1 : 1;
  const at = x + side * (w - 3);
  const foot = y + h;
  return [
    {
      kind: 'polyline',
      points: [
        { x: at - 1.4, y: foot },
        { x: at - 0.8, y: foot + 1.3 },
        { x: at + 0.8, y: foot + 1.3 },
        { x: at + 1.4, y: foot },
      ],
      line: 'thin',
      fill: 'ink',
    },
    label(`key ${half.keying}`, at - side * 2.4, foot + 2.6, side < 0 ? 'left' : 'right'),
  ];
}

/** A panel is cut on both sides of the body; a board lies under a right-angle header. */
function mountingLines(half: MatingHalf, { x, y }: Point, w: number, h: number): DrawingItem[] {
  const strip = (from: number, to: number, top: number): DrawingItem[] => [
    {
      kind: 'polyline',
      points: [
        { x: from, y: top },
        { x: to, y: top },
        { x: to, y: top + 1.6 },
        { x: from, y: top + 1.6 },
      ],
      closed: true,
      line: 'thin',
      fill: 'light',
    },
  ];
  if (half.kind === 'header' && half.orientation === 'right-angle') return strip(x - w - 3, x + w + 3, y + h);
  if (half.mounting === 'panel') {
    const clear =
      half.latchSide === 'both' || half.latchSide === 'left' || half.latchSide === 'right' ? 3.2 : 0.4;
    return [
      ...strip(x - w - clear - 2.4, x - w - clear, y - 0.8),
      ...strip(x + w + clear, x + w + clear + 2.4, y - 0.8),
    ];
  }
  return [];
}
