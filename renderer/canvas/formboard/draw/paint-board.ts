import { boxesMeet, grownBox, inBox } from '@latchwork/core/base/point';
import type { Pen } from '../../draw/pen';
import type { BoardScene, BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';
import { paintConnector, paintConnectorName } from './connectors';
import { paintCovering, paintCoveringName } from './coverings';
import { paintDimensionLines, paintDimensionValues } from './dimensions';
import { paintLength, type LengthUnit } from './lengths';
import { paintNode, paintNodeName } from './nodes';
import { paintFreeEnd, paintSplice, paintSpliceName, paintThing } from './things';
import { paintTrunk } from './trunk';

export interface BoardPaint {
  readonly scene: BoardScene;
  readonly unit: LengthUnit;
  /** Ids that are drawn elsewhere. */
  readonly skip: ReadonlySet<string>;
  /** Lengths that follow a drag stand out. */
  readonly live?: boolean;
}

/** So many runs that follow a drag are drawn with all their detail. */
const DETAILED_RUNS = 8;
/** From this zoom on coverings, ties and other small things are drawn. */
const THINGS_PX_PER_MM = 0.3;

/** The board from bottom to top: runs, what lies on them, connectors, nodes, and last all names, so that none is hidden. */
export function paintBoard(pen: Pen, { scene, unit, skip, live = false }: BoardPaint): void {
  const shown = <T extends { readonly id: string }>(
    list: readonly T[],
    seen: (o: T) => boolean,
  ): readonly T[] => list.filter((o) => seen(o) && !skip.has(o.id));
  const view = grownBox(pen.view, 45);
  const near = (o: { readonly at: { readonly x: number; readonly y: number } }): boolean => inBox(o.at, view);
  const segments = shown(scene.segments, (s) => boxesMeet(s, pen.view));
  const inView = new Set(segments.map((s) => s.id));
  const small = pen.s >= THINGS_PX_PER_MM;
  // A covering that is slid lies on runs that stay.
  const coverings = small
    ? scene.coverings.filter((c) => (inView.has(c.segment) || segments.length === 0) && !skip.has(c.id))
    : [];
  const things = small ? shown(scene.things, near) : [];
  const connectors = shown(scene.connectors, near);
  const nodes = shown(scene.nodes, near);
  const splices = shown(scene.splices, near);
  const dimensions = shown(scene.dimensions, (d) => boxesMeet(d, pen.view));

  for (const d of dimensions) paintDimensionLines(pen, d);
  // Many runs that follow a drag are drawn without inner lines and rims, so that each step keeps to its frame.
  const quick = live && segments.length > DETAILED_RUNS ? { ...pen, hasty: true } : pen;
  for (const s of segments) paintTrunk(quick, s);
  for (const c of coverings) paintCovering(quick, c);
  for (const t of things) paintThing(quick, t);
  const ends = scene.freeEnds.filter((e) => near(e) && !skip.has(e.wire.wire.id));
  for (const e of ends) paintFreeEnd(pen, e);
  for (const c of connectors) paintConnector(pen, c);
  if (small) for (const n of nodes) paintNode(pen, n);
  for (const s of splices) paintSplice(pen, s);
  for (const d of dimensions) paintDimensionValues(pen, d, unit);
  if (pen.hasty) return;
  for (const s of segments) paintLength(quick, s, unit, live);
  const rows = new Map<string, number>();
  for (const c of coverings) {
    const s = scene.segmentById.get(c.segment);
    if (!s || !c.named) continue;
    const row = rows.get(s.id) ?? 0;
    rows.set(s.id, row + 1);
    paintCoveringName(quick, c, s, row);
  }
  for (const c of connectors) paintConnectorName(quick, c);
  for (const n of nodes) paintNodeName(quick, n, thickestAt(scene.segmentsAt.get(n.id)));
  for (const s of splices) paintSpliceName(quick, s);
}

const thickestAt = (segments: readonly BoardSegment[] = []): number =>
  segments.reduce((most, s) => Math.max(most, s.outsideMm), 0);
