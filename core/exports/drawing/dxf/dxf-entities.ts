import type { Point } from '../../../base/point';
import { arcSpanDeg } from '../arc-span';
import { codeRectangles, type ModulesOf, type Rectangle } from '../code-modules';
import type { DrawingItem } from '../drawing';
import { flattenCurve } from '../flatten-curve';
import { lineOf } from '../stroke-of';
import { uncodedText } from '../uncoded-text';
import { dxfName, dxfString, type Tag } from './dxf-tags';

/** How far a straight run may be from the curve that it stands for. */
export const DXF_TOLERANCE_MM = 0.05;

export const DXF_LINE_TYPES = {
  dashed: 'DASHED',
  dotted: 'DOT',
  chain: 'CHAIN',
} as const;

export interface DxfContext {
  /** Of the drawing: DXF counts y upwards. */
  readonly heightMm: number;
  readonly modulesOf: ModulesOf;
}

/** One item as entities of R12. Black fills become solids; grey ones and white ones are left out, their lines stay. */
export function dxfEntities(item: DrawingItem, context: DxfContext): readonly Tag[] {
  const layer: Tag = [8, dxfName(item.layer ?? '0')];
  const up = (y: number): number => context.heightMm - y;
  switch (item.kind) {
    case 'text':
      return textTags(item, layer, up);
    case 'code': {
      const code = context.modulesOf(item.symbology, item.text);
      return code
        ? codeRectangles(item, code).flatMap((r) => solid(cornersOf(r), layer, up))
        : textTags({ ...uncodedText(item) }, layer, up);
    }
    case 'circle':
      return [
        ...(item.fill === 'ink' ? disc(item.at, item.radiusMm, layer, up) : []),
        ...(lineOf(item) === null
          ? []
          : ([[0, 'CIRCLE'], layer, ...lineType(item), [10, item.at.x], [20, up(item.at.y)], [40, item.radiusMm]] as Tag[])),
      ];
    case 'arc': {
      if (lineOf(item) === null) return [];
      const span = arcSpanDeg(item);
      const at: Tag[] = [[10, item.at.x], [20, up(item.at.y)], [40, item.radiusMm]];
      if (span === 360) return [[0, 'CIRCLE'], layer, ...lineType(item), ...at];
      // Clockwise in our frame, with y upwards the other way round.
      return [[0, 'ARC'], layer, ...lineType(item), ...at, [50, turned(-item.fromDeg - span)], [51, turned(-item.fromDeg)]];
    }
    case 'curve':
      return lineOf(item) === null ? [] : polyline(flattenCurve(item.points, DXF_TOLERANCE_MM), false, item, layer, up);
    case 'polyline': {
      const filled = item.fill === 'ink' && item.points.length <= 4 ? solid(item.points, layer, up) : [];
      return lineOf(item) === null ? filled : [...filled, ...polyline(item.points, item.closed === true, item, layer, up)];
    }
  }
} // prettier-ignore

type Dashed = { readonly dash?: keyof typeof DXF_LINE_TYPES | undefined };
type Up = (y: number) => number;

const lineType = ({ dash }: Dashed): readonly Tag[] => (dash ? [[6, DXF_LINE_TYPES[dash]]] : []);

const turned = (deg: number): number => ((deg % 360) + 360) % 360;

function polyline(points: readonly Point[], closed: boolean, item: Dashed, layer: Tag, up: Up): readonly Tag[] {
  const [a, b] = points;
  if (a && b && points.length === 2)
    return [[0, 'LINE'], layer, ...lineType(item), [10, a.x], [20, up(a.y)], [11, b.x], [21, up(b.y)]];
  return [
    [0, 'POLYLINE'], layer, ...lineType(item), [66, 1], [10, 0], [20, 0], [30, 0], [70, closed ? 1 : 0],
    ...points.flatMap((p): Tag[] => [[0, 'VERTEX'], layer, [10, p.x], [20, up(p.y)]]),
    [0, 'SEQEND'], layer,
  ];
} // prettier-ignore

/** A filled triangle or quadrangle; the format wants the last two corners crosswise. */
function solid(points: readonly Point[], layer: Tag, up: Up): readonly Tag[] {
  const [a, b, c, d = c] = points;
  if (!a || !b || !c || !d) return [];
  return [
    [0, 'SOLID'], layer,
    [10, a.x], [20, up(a.y)], [11, b.x], [21, up(b.y)], [12, d.x], [22, up(d.y)], [13, c.x], [23, up(c.y)],
  ];
} // prettier-ignore

/** A filled circle: a closed line of two half circles, as wide as the radius. */
function disc(at: Point, radiusMm: number, layer: Tag, up: Up): readonly Tag[] {
  const vertex = (x: number): Tag[] => [[0, 'VERTEX'], layer, [10, x], [20, up(at.y)], [42, 1]];
  return [
    [0, 'POLYLINE'], layer, [66, 1], [10, 0], [20, 0], [30, 0], [40, radiusMm], [41, radiusMm], [70, 1],
    ...vertex(at.x - radiusMm / 2), ...vertex(at.x + radiusMm / 2),
    [0, 'SEQEND'], layer,
  ];
} // prettier-ignore

const ALIGN = { left: 0, middle: 1, right: 2 } as const;

function textTags(item: Extract<DrawingItem, { kind: 'text' }>, layer: Tag, up: Up): readonly Tag[] {
  const text = dxfString(item.text);
  if (text.trim() === '') return [];
  const align = ALIGN[item.align ?? 'left'];
  const [x, y] = [item.at.x, up(item.at.y)];
  return [
    [0, 'TEXT'], layer, [10, x], [20, y], [40, item.heightMm], [1, text],
    ...(item.angleDeg ? ([[50, turned(-item.angleDeg)]] as Tag[]) : []),
    [7, 'STANDARD'],
    ...(align === 0 ? [] : ([[72, align], [11, x], [21, y]] as Tag[])),
  ];
} // prettier-ignore

const cornersOf = (r: Rectangle): readonly Point[] => [
  { x: r.x, y: r.y },
  { x: r.x + r.width, y: r.y },
  { x: r.x + r.width, y: r.y + r.height },
  { x: r.x, y: r.y + r.height },
];
