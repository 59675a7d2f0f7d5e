import { z } from 'zod';
import { Point } from '../../base/point';

/** Thick for outlines, thin for frames and wires, hair for dimensions and hatching (0.5, 0.25 and 0.13 mm on paper). */
const Line = z.enum(['thick', 'thin', 'hair']);

const stroke = {
  /** Absent: thin, or no line where the figure is filled. */
  line: Line.optional(),
  dash: z.enum(['dashed', 'dotted', 'chain']).optional(),
  /** Ink is black, light a grey that survives copying, paper white over what lies below. Absent: not filled. */
  fill: z.enum(['ink', 'light', 'paper']).optional(),
  /** What it belongs to, for formats with layers: "wires", "dimensions". */
  layer: z.string().optional(),
} as const;

/** Figures of a drawing, in millimetres; y runs down; angles in degrees, clockwise from right. */
export const DrawingItem = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('polyline'),
    points: z.array(Point).min(2),
    closed: z.boolean().optional(),
    ...stroke,
  }),
  /** Cubic curves: a start, then two control points and an end for each. */
  z.strictObject({ kind: z.literal('curve'), points: z.array(Point).min(4), ...stroke }),
  z.strictObject({ kind: z.literal('circle'), at: Point, radiusMm: z.number().positive(), ...stroke }),
  /** Clockwise from one angle to the other. */
  z.strictObject({
    kind: z.literal('arc'),
    at: Point,
    radiusMm: z.number().positive(),
    fromDeg: z.number(),
    toDeg: z.number(),
    ...stroke,
  }),
  z.strictObject({
    kind: z.literal('text'),
    /** On the base line, at the edge or middle that `align` names. */
    at: Point,
    text: z.string(),
    /** Height of capital letters. */
    heightMm: z.number().positive(),
    align: z.enum(['left', 'middle', 'right']).optional(),
    angleDeg: z.number().optional(),
    look: z.enum(['strong', 'code']).optional(),
    layer: z.string().optional(),
  }),
  /** A code for readers, quiet zone included, filled into the box. */
  z.strictObject({
    kind: z.literal('code'),
    symbology: z.enum(['code-128', 'qr']),
    text: z.string(),
    at: Point,
    widthMm: z.number().positive(),
    heightMm: z.number().positive(),
    layer: z.string().optional(),
  }),
]);
export type DrawingItem = z.infer<typeof DrawingItem>;
export type LineWeight = z.infer<typeof Line>;

/** A picture at a true size, its origin at the top left. Drawn 1:1 unless who places it says otherwise. */
export const Drawing = z.strictObject({
  widthMm: z.number().positive(),
  heightMm: z.number().positive(),
  items: z.array(DrawingItem),
});
export type Drawing = z.infer<typeof Drawing>;

/** Widths of the lines on paper, mm. */
export const LINE_MM: Readonly<Record<LineWeight, number>> = { thick: 0.5, thin: 0.25, hair: 0.13 };
