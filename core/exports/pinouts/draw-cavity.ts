import type { Point } from '../../base/point';
import { contactMarkOf, type ContactMark } from '../../derive/contact-mark';
import type { CavityUse } from '../../derive/harness';
import { colourText } from '../../model/colour';
import type { DrawingItem } from '../drawing/drawing';
import { boxItem } from '../drawing/items';

export interface DrawnCavity {
  readonly use: CavityUse | undefined;
  readonly cavity: string;
  readonly at: Point;
  /** Side of the square, mm on paper. */
  readonly sideMm: number;
  readonly isFirst: boolean;
  /** Where the colour of the wire is written: one sees it from the wire side. */
  readonly showColour: boolean;
}

/** Smallest square in which a number and a mark can both be read. */
export const READABLE_MM = 5.5;

/** One cavity: chamber, number, the mark of what is in it, and on cavity 1 a filled corner. */
export function drawCavity({ use, cavity, at, sideMm, isFirst, showColour }: DrawnCavity): DrawingItem[] {
  const half = sideMm / 2;
  const small = sideMm < READABLE_MM;
  const numberMm = Math.min(2.8, Math.max(0.9, sideMm * 0.22));
  const markAt = { x: at.x, y: at.y + (small ? 0 : sideMm * 0.05) };
  const colour = showColour && sideMm >= 7 ? colourOf(use) : undefined;
  return [
    square(at, half, { line: isFirst ? 'thick' : 'thin', fill: 'paper' }),
    ...(isFirst ? [firstCorner(at, half)] : []),
    ...(small
      ? []
      : [
          {
            kind: 'text' as const,
            at: { x: at.x, y: at.y - half + numberMm + sideMm * 0.06 },
            text: cavity,
            heightMm: numberMm,
            align: 'middle' as const,
            look: 'code' as const,
          },
        ]),
    ...drawMark(use ? contactMarkOf(use) : 'unloaded', markAt, sideMm * (small ? 0.3 : 0.18)),
    ...(colour
      ? [
          {
            kind: 'text' as const,
            at: { x: at.x, y: at.y + half - sideMm * 0.06 },
            text: colour,
            heightMm: Math.min(1.9, sideMm * 0.15),
            align: 'middle' as const,
          },
        ]
      : []),
  ];
}

function colourOf(use: CavityUse | undefined): string | undefined {
  const texts = (use?.ends ?? []).flatMap((e) =>
    e.wire.wire.colour ? [colourText(e.wire.wire.colour)] : [],
  );
  return texts.length > 0 ? texts.join('+') : undefined;
}

const square = (
  { x, y }: Point,
  half: number,
  style: { line?: 'thick' | 'thin' | 'hair'; fill?: 'ink' | 'paper' },
): DrawingItem => boxItem({ minX: x - half, minY: y - half, maxX: x + half, maxY: y + half }, style);

const firstCorner = ({ x, y }: Point, half: number): DrawingItem => ({
  kind: 'polyline',
  points: [
    { x: x - half, y: y - half },
    { x: x - half + half * 0.62, y: y - half },
    { x: x - half, y: y - half + half * 0.62 },
  ],
  closed: true,
  line: 'hair',
  fill: 'ink',
});

/** The same marks as on the sheet: pin a dot, socket a ring, plug a cross, blocked a square, empty a dash. */
export function drawMark(mark: ContactMark, at: Point, r: number): DrawingItem[] {
  const line = (a: Point, b: Point): DrawingItem => ({ kind: 'polyline', points: [a, b], line: 'thick' });
  const to = (dx: number, dy: number): Point => ({ x: at.x + dx * r, y: at.y + dy * r });
  switch (mark) {
    case 'pin':
      return [{ kind: 'circle', at, radiusMm: r * 0.85, line: 'thin', fill: 'ink' }];
    case 'socket':
      return [{ kind: 'circle', at, radiusMm: r, line: 'thick' }];
    case 'plugged':
      return [line(to(-1, -1), to(1, 1)), line(to(1, -1), to(-1, 1))];
    case 'blocked':
      return [square(at, r * 1.2, { line: 'thin', fill: 'ink' })];
    case 'empty':
      return [line(to(-0.8, 0), to(0.8, 0))];
    case 'unloaded':
      return [square(at, r * 0.8, { line: 'hair' })];
  }
}
