import type { Pen } from '../../draw/pen';
import type { BoardScene, BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';
import type { Lit } from '../scene/lit';
import { around, trace } from './along';
import { coveringPx } from './coverings';
import { paintDimension } from './dimensions';
import { lanesShow, paintLane } from './lanes';
import type { LengthUnit } from './lengths';
import { nodeRadiusPx } from './nodes';
import { trunkPx } from './trunk';

/**
 * Copper edges around what is lit, on a canvas of their own: the broad line is cut out again in the middle, so that what lies
 * under it stays as it is and neighbouring runs share one edge.
 */
export function paintHalo(pen: Pen, scene: BoardScene, lit: Lit, strong: boolean): void {
  const { ctx, look } = pen;
  const runs = [...lit.ways, ...lit.ids].flatMap((id) => scene.segmentById.get(id) ?? []);
  const width = (s: BoardSegment): number => Math.max(trunkPx(s, pen), s.outsideMm * pen.s);
  ctx.lineJoin = 'round';
  // Neighbouring runs share one edge; a run alone ends at its nodes.
  ctx.lineCap = runs.length > 1 ? 'round' : 'butt';
  const edge = strong ? 2.6 : 1.6;
  stroke(pen, look.tokens.copper, runs, (s) => width(s) + 2 * edge + 2);
  ctx.globalCompositeOperation = 'destination-out';
  stroke(pen, '#000', runs, (s) => width(s) + 2);
  ctx.globalCompositeOperation = 'source-over';
  ctx.lineCap = 'butt';
  if (pen.hasty) return;
  for (const s of runs)
    if (lanesShow(pen, s) && !s.use?.coverings.length)
      s.use?.wires.forEach((w, i) => {
        if (lit.wires.has(w.wire.id)) lane(pen, s, i);
      });
  objects(pen, scene, lit, edge);
}

function stroke(
  pen: Pen,
  colour: string,
  runs: readonly BoardSegment[],
  width: (s: BoardSegment) => number,
): void {
  pen.ctx.strokeStyle = colour;
  for (const s of runs) {
    trace(pen, s.points);
    pen.ctx.lineWidth = width(s);
    pen.ctx.stroke();
  }
}

function lane(pen: Pen, s: BoardSegment, i: number): void {
  const wire = s.use?.wires[i];
  if (wire) paintLane(pen, s, wire, i, true);
}

/** Everything that is no run: outlined in copper where it stands. */
function objects(pen: Pen, scene: BoardScene, { ids }: Lit, edge: number): void {
  const { ctx, s, look } = pen;
  ctx.strokeStyle = look.tokens.copper;
  ctx.lineWidth = edge;
  for (const n of scene.nodes)
    if (ids.has(n.id)) {
      ctx.beginPath();
      ctx.arc((n.at.x - pen.ox) * s, (n.at.y - pen.oy) * s, nodeRadiusPx(s) + edge, 0, 7);
      ctx.stroke();
    }
  for (const c of scene.connectors)
    if (ids.has(c.id))
      around(pen, c.at, c.angle, () => {
        const half = (c.acrossMm * s) / 2;
        ctx.beginPath();
        ctx.roundRect(-2, -half - 2, c.alongMm * s + 4, 2 * half + 4, 4);
        ctx.stroke();
      });
  for (const t of scene.things)
    if (ids.has(t.id))
      around(pen, t.at, t.angle, () => {
        const half = Math.max(3.2, (t.aroundMm * s) / 2 + 1) + 4;
        ctx.beginPath();
        ctx.roundRect(-7, -half, 14, 2 * half, 4);
        ctx.stroke();
      });
  for (const b of scene.splices)
    if (ids.has(b.id))
      around(pen, b.at, b.angle, () => {
        const long = Math.min(18, Math.max(5, 3.6 * s)) + 3;
        ctx.beginPath();
        ctx.roundRect(-long, -long / 2 - 2, 2 * long, long + 4, long / 2);
        ctx.stroke();
      });
  for (const c of scene.coverings)
    if (ids.has(c.id)) {
      const wide = coveringPx(c, pen);
      trace(pen, c.points);
      ctx.strokeStyle = look.tokens.copper;
      ctx.lineWidth = wide + 6;
      ctx.stroke();
      ctx.globalCompositeOperation = 'destination-out';
      ctx.lineWidth = wide + 1;
      ctx.stroke();
      ctx.globalCompositeOperation = 'source-over';
      for (const e of c.ends)
        around(pen, e.at, e.angle, () => {
          ctx.fillStyle = look.tokens.copper;
          ctx.fillRect(-3, -wide / 2 - 5, 6, wide + 10);
        });
    }
}

export function paintLitDimensions(pen: Pen, scene: BoardScene, { ids }: Lit, unit: LengthUnit): void {
  for (const d of scene.dimensions) if (ids.has(d.id)) paintDimension(pen, d, unit, pen.look.tokens.copper);
}

/** Bends of selected segments, as squares that can be held. */
export function paintVias(pen: Pen, scene: BoardScene, ids: ReadonlySet<string>): void {
  const { ctx, look } = pen;
  for (const id of ids)
    for (const p of scene.segmentById.get(id)?.segment.via ?? []) {
      ctx.fillStyle = look.tokens.paper;
      ctx.strokeStyle = look.tokens.copper;
      ctx.lineWidth = 1.6;
      ctx.beginPath();
      ctx.rect((p.x - pen.ox) * pen.s - 4, (p.y - pen.oy) * pen.s - 4, 8, 8);
      ctx.fill();
      ctx.stroke();
    }
}
