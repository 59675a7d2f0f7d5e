import type { Point } from '../../base/point';
import type { BoardScene, BoardThing } from '../../derive/formboard/scene/board-items';
import { coveringName } from './covering-name';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem, textItem } from '../drawing/items';
import { type TextLook, textWidthMm } from '../drawing/text-width';
import type { BoardSheet } from './board-sheet';
import { across } from './draw-runs';

const NAME_MM = 2;

/** Ties, clamps, grommets, labels, splices, open ends and nodes. */
export function drawThings(sheet: BoardSheet, scene: BoardScene): void {
  for (const t of scene.things) sheet.take(...thing(t));
  for (const s of scene.splices) sheet.take(splice(s.at, s.angle));
  for (const e of scene.freeEnds) sheet.take(...openEnd(e.at, e.angle));
  for (const n of scene.nodes) sheet.take(...nodeMark(n.at));
}

/** Their names, each beside its object. */
export function nameThings(sheet: BoardSheet, scene: BoardScene): void {
  const name = (text: string, at: Point, clearMm: number, liked: number, layer: string, look?: TextLook): void => {
    if (text === '') return;
    const size = { width: textWidthMm(text, NAME_MM, look) + 0.8, height: NAME_MM * 1.6 };
    sheet.place(size, at, { clearMm, liked, layer }, (box) => [
      textItem(text, { x: box.minX + 0.4, y: box.maxY - NAME_MM * 0.35 }, NAME_MM, {
        layer,
        ...(look === 'strong' || look === 'code' ? { look } : {}),
      }),
    ]);
  };
  for (const n of scene.nodes) name(n.node.designator, n.at, 3.2, n.nameAngle, 'nodes', 'code');
  for (const s of scene.splices) name(s.splice.designator, s.at, 4, Math.PI / 2, 'splices', 'strong');
  for (const e of scene.freeEnds) name(e.text, ahead(e.at, e.angle, OPEN_MM), 1, e.angle, 'ends');
  for (const t of scene.things) name(nameOf(t), t.at, t.aroundMm / 2 + 2, t.angle - Math.PI / 2, layerOf(t));
  for (const c of scene.coverings) {
    const middle = c.points[Math.floor(c.points.length / 2)];
    const [a, b] = [c.points[0], c.points.at(-1)];
    if (!c.named || !middle || !a || !b) continue;
    const at = c.points.length > 2 ? middle : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    const liked = Math.atan2(b.y - a.y, b.x - a.x) + Math.PI / 2;
    name(coveringName(c.use), at, c.outsideMm / 2 + 1, liked, 'coverings');
  }
} // prettier-ignore

const layerOf = (t: BoardThing): string =>
  ({ tie: 'ties', clamp: 'fixings', grommet: 'fixings', label: 'labels' })[t.kind];

/** Ties are told by their sign; what has a name of its own is told by it and by what it is. */
function nameOf(t: BoardThing): string {
  if (t.kind === 'tie') return '';
  if (t.kind === 'label') return `label "${t.name}"`;
  return [t.kind, t.name].filter(Boolean).join(' ');
}

const ahead = (at: Point, angle: number, mm: number): Point => ({
  x: at.x + Math.cos(angle) * mm,
  y: at.y + Math.sin(angle) * mm,
});

/** A corner of a figure in the frame of its run: along it, and across to the right. */
const corner = (at: Point, angle: number, mm: number, asideMm: number): Point =>
  across(ahead(at, angle, mm), angle, asideMm);

const quad = (t: { at: Point; angle: number }, fromMm: number, toMm: number, left: number, right: number) => [
  corner(t.at, t.angle, fromMm, left),
  corner(t.at, t.angle, toMm, left),
  corner(t.at, t.angle, toMm, right),
  corner(t.at, t.angle, fromMm, right),
];

function thing(t: BoardThing): DrawingItem[] {
  const half = t.aroundMm / 2 + 0.6;
  const layer = layerOf(t);
  const filled = (points: Point[]): DrawingItem => ({
    kind: 'polyline',
    points,
    closed: true,
    fill: 'ink',
    layer,
  });
  const open = (points: Point[]): DrawingItem => ({ kind: 'polyline', points, closed: true, fill: 'paper', line: 'thin', layer }); // prettier-ignore
  switch (t.kind) {
    case 'tie':
      // A strap with its head on one side.
      return [filled(quad(t, -0.6, 0.6, -half, half)), filled(quad(t, -1.2, 1.2, -half - 2, -half))];
    case 'clamp':
      return [
        open(quad(t, -2, 2, -half, half)),
        open(quad(t, -2, 2, half, half + 6)),
        { kind: 'circle', at: corner(t.at, t.angle, 0, half + 3.4), radiusMm: 1.4, line: 'thin', layer },
      ];
    case 'grommet':
      return [
        filled(quad(t, -2.2, -0.8, -half - 2, half + 2)),
        filled(quad(t, 0.8, 2.2, -half - 2, half + 2)),
        lineItem(corner(t.at, t.angle, 0, half), corner(t.at, t.angle, 0, half + 6), {
          line: 'thick',
          layer,
        }),
        lineItem(corner(t.at, t.angle, 0, -half), corner(t.at, t.angle, 0, -half - 6), {
          line: 'thick',
          layer,
        }),
      ];
    case 'label': {
      const wide = t.part?.kind === 'label' ? (t.part.heightMm ?? 8) : 8;
      return [open(quad(t, -wide / 2, wide / 2, -half, half))];
    }
  }
}

function splice(at: Point, angle: number): DrawingItem {
  const points = [corner(at, angle, -4, 0), corner(at, angle, -2, -1.8), corner(at, angle, 2, -1.8),
    corner(at, angle, 4, 0), corner(at, angle, 2, 1.8), corner(at, angle, -2, 1.8)]; // prettier-ignore
  return { kind: 'polyline', points, closed: true, fill: 'paper', line: 'thick', layer: 'splices' };
}

const OPEN_MM = 12;

const openEnd = (at: Point, angle: number): DrawingItem[] => [
  lineItem(at, ahead(at, angle, OPEN_MM), { line: 'thick', layer: 'ends' }),
  {
    kind: 'circle',
    at: ahead(at, angle, OPEN_MM),
    radiusMm: 0.9,
    fill: 'paper',
    line: 'thin',
    layer: 'ends',
  },
];

/** Where a peg goes: a cross in a circle, open so that the point itself stays in sight. */
export const nodeMark = (at: Point): DrawingItem[] => [
  { kind: 'circle', at, radiusMm: 1.5, line: 'thin', layer: 'nodes' },
  lineItem({ x: at.x - 2.6, y: at.y }, { x: at.x + 2.6, y: at.y }, { line: 'thin', layer: 'nodes' }),
  lineItem({ x: at.x, y: at.y - 2.6 }, { x: at.x, y: at.y + 2.6 }, { line: 'thin', layer: 'nodes' }),
];
