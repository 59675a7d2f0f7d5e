import { FACE_VIEWS, facePlaces, type FaceView } from '../../derive/face-places';
import type { ConnectorUse } from '../../derive/harness';
import type { MatingHalf } from '../../model/parts/part';
import type { Drawing, DrawingItem } from '../drawing/drawing';
import { scaledDrawing } from '../drawing/scaled';
import { bodySizeOf, drawFace, FACE_MARGIN_MM } from './draw-face';

export interface DrawnPinout {
  /** At true size. */
  readonly drawing: Drawing;
  /** Paper size over true size. */
  readonly scale: number;
  /** "pitch 3 mm", and what is not to scale. */
  readonly caption: string;
}

/** Enlargements from which the largest that fits is taken (those of ISO 5455 and steps between). */
const SCALES = [10, 8, 5, 4, 3, 2.5, 2, 1.5, 1] as const;
/** What an A4 page lying across has room for. */
const WIDTH_MM = 250;
const GAP_MM = 4;
const FACE_HEIGHT_MM = 46;
const NAME_MM = 7;
/** Below this a cavity is too small to be read, and the faces go one above the other. */
const READABLE_PITCH_MM = 5;

const VIEW_WORDS: Readonly<Record<FaceView, readonly [title: string, from: string]>> = {
  'mating-face': ['view: mating face', 'seen from the other half'],
  'wire-entry-face': ['view: wire-entry face', 'seen from where the wires go in'],
};

/** Both faces of a connector to one scale, named; side by side where that can be read, else one above the other. */
export function drawPinout(use: ConnectorUse, half: MatingHalf): DrawnPinout {
  const body = bodySizeOf(half);
  const faces = facePlaces(half, 'mating-face');
  const scaleIn = (room: number): number =>
    SCALES.find((s) => body.widthMm * s <= room && body.heightMm * s <= FACE_HEIGHT_MM) ?? 1;
  const beside = scaleIn(WIDTH_MM / 2 - GAP_MM - FACE_MARGIN_MM);
  const stacked = beside * faces.pitchMm < READABLE_PITCH_MM;
  const scale = stacked ? scaleIn(WIDTH_MM - 2 * FACE_MARGIN_MM) : beside;
  const heightMm = body.heightMm * scale + 2 * FACE_MARGIN_MM + NAME_MM;
  const items = FACE_VIEWS.flatMap((view, i) => {
    const x = stacked ? WIDTH_MM / 2 : WIDTH_MM * (i === 0 ? 0.25 : 0.75);
    const top = stacked ? i * heightMm : 0;
    const middle = { x, y: top + FACE_MARGIN_MM + (body.heightMm * scale) / 2 };
    return [
      ...drawFace(use, half, view, middle, scale),
      ...nameOf(half, view, x, top + heightMm - NAME_MM + 3.4),
    ];
  });
  const onPaper = { widthMm: WIDTH_MM, heightMm: stacked ? 2 * heightMm : heightMm, items };
  return { drawing: scaledDrawing(onPaper, 1 / scale), scale, caption: captionOf(half, faces) };
}

function nameOf(half: MatingHalf, view: FaceView, x: number, y: number): DrawingItem[] {
  const [title, from] = VIEW_WORDS[view];
  const seen = half.kind === 'header' && view === 'wire-entry-face' ? 'the tails, seen from the rear' : from;
  return [
    { kind: 'text', at: { x, y }, text: title, heightMm: 2.4, align: 'middle', look: 'strong' },
    { kind: 'text', at: { x, y: y + 3.1 }, text: seen, heightMm: 1.7, align: 'middle' },
  ];
}

function captionOf(half: MatingHalf, faces: ReturnType<typeof facePlaces>): string {
  const rows = half.rows !== undefined && half.rows > 1 ? `, rows ${faces.rowPitchMm} mm apart` : '';
  return [
    half.pitchMm === undefined
      ? `not to scale: the record states no pitch, drawn with ${faces.pitchMm} mm`
      : `pitch ${faces.pitchMm} mm${rows}`,
    ...(bodySizeOf(half).stated ? [] : ['outline of the body assumed']),
    ...(faces.assumed.length > 0 ? [`assumed: ${faces.assumed.join(', ')}`] : []),
  ].join('; ');
}
