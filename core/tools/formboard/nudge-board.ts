import { byId } from '../../base/by-id';
import type { Call } from '../../commands/dispatch';
import { segmentLengthMm } from '../../derive/route';
import type { Project } from '../../model/project';
import type { Station } from '../../model/topology';
import { DIRECTIONS, type Direction } from '../nudge';
import { GRID_MM } from '../snap';
import { ANGLE_STEP_DEG } from './angle-snap';
import { nodesOfKeys } from './move-nodes';

/**
 * An arrow on the formboard: nodes and segments move by a grid step (1 mm when fine), a thing on a run goes along it, a
 * connector turns, a dimension line goes nearer or farther. Null when nothing selected can.
 */
export function nudgeBoard(
  project: Project,
  selection: ReadonlySet<string>,
  direction: Direction,
  fine: boolean,
): Call | null {
  const [dx, dy] = DIRECTIONS[direction];
  const step = fine ? 1 : GRID_MM;
  const nodes = byId(project.nodes);
  const ids = nodesOfKeys(project, selection);
  if (ids.length > 0)
    return {
      id: 'nodes.move',
      args: {
        moves: ids.flatMap((id) => {
          const at = nodes.get(id)?.position;
          return at ? [{ id, to: { x: at.x + dx * step, y: at.y + dy * step } }] : [];
        }),
      },
    };
  const [key] = selection;
  if (key === undefined || selection.size > 1) return null;
  return nudgeThing(project, key, dx || -dy, step) ?? nudgeStanding(project, key, direction, fine);
}

/** Forward is right or up. */
function nudgeThing(project: Project, id: string, way: number, step: number): Call | null {
  const by = way * step;
  const tie = byId(project.ties).get(id);
  if (tie) {
    const station = shifted(project, tie.station, by);
    return station && { id: 'tie.edit', args: { id, change: { station } } };
  }
  const fixing = byId(project.fixings).get(id);
  if (fixing) {
    const station = shifted(project, fixing.station, by);
    return station && { id: 'fixing.edit', args: { id, change: { station } } };
  }
  const label = byId(project.labels).get(id);
  if (label?.on.at === 'station') {
    const station = shifted(project, label.on.station, by);
    return station && { id: 'label.edit', args: { id, change: { on: { at: 'station', station } } } };
  }
  const covering = byId(project.coverings).get(id);
  if (!covering) return null;
  const [from, to] = [shifted(project, covering.from, by), shifted(project, covering.to, by)];
  // It keeps its length: at the end of its run it stays.
  return from && to && { id: 'covering.edit', args: { id, change: { from, to } } };
}

/** A station moved along its segment in the direction that looks forward; null at the end of it. */
function shifted(project: Project, { segment, atMm }: Station, by: number): Station | null {
  const s = byId(project.segments).get(segment);
  if (!s) return null;
  const length = segmentLengthMm(s, byId(project.nodes));
  const next = Math.min(length, Math.max(0, atMm + (runsForward(project, segment) ? by : -by)));
  return next === atMm ? null : { segment, atMm: next };
}

function runsForward(project: Project, segment: string): boolean {
  const s = byId(project.segments).get(segment);
  const nodes = byId(project.nodes);
  const [a, b] = [nodes.get(s?.from ?? '')?.position, nodes.get(s?.to ?? '')?.position];
  return !a || !b || b.x > a.x || (b.x === a.x && b.y <= a.y);
}

function nudgeStanding(project: Project, id: string, direction: Direction, fine: boolean): Call | null {
  const dimension = byId(project.dimensions).get(id);
  if (dimension && (direction === 'up' || direction === 'down')) {
    const offsetMm = dimension.offsetMm + (direction === 'up' ? 1 : -1) * (fine ? 1 : GRID_MM);
    return { id: 'dimension.edit', args: { id, change: { offsetMm } } };
  }
  const connector = byId(project.connectors).get(id);
  if (!connector?.node || (direction !== 'left' && direction !== 'right')) return null;
  const byDeg = (direction === 'right' ? 1 : -1) * (fine ? 1 : ANGLE_STEP_DEG);
  return { id: 'connector.turn', args: { ids: [id], byDeg } };
}
