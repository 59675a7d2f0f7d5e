import { byId } from '../base/by-id';
import { boxesMeet, grownBox, type Box, type Point } from '../base/point';
import { matingObstacles } from '../derive/mating';
import { symbolBox } from '../derive/symbol';
import type { Connector } from '../model/connector';
import { isMatingHalf, type MatingHalf } from '../model/parts/part';
import type { Project } from '../model/project';

/** Room between two mated symbols, in which the double line of the mate is drawn (mm). */
export const MATE_GAP_MM = 4;
/** How near the halves must come before a mate is offered, mm. */
const REACH_MM = 7;

/** A half that the dragged one could be plugged into, where it would come to lie, and what speaks against it. */
export interface MateOffer {
  readonly partner: string;
  readonly to: Point;
  readonly reason: string | null;
}

/** The nearest free half beside the dragged connector at its new place; null when none is near. */
export function mateOffer(project: Project, moved: Connector, at: Point): MateOffer | null {
  const half = halfOf(project, moved);
  if (!half || isMated(project, moved.id)) return null;
  const box = symbolBox({ ...moved, position: at }, half);
  const reach = grownBox(box, REACH_MM);
  let best: { other: Connector; otherHalf: MatingHalf; otherBox: Box; gap: number } | null = null;
  for (const other of project.connectors) {
    const otherHalf = halfOf(project, other);
    if (other.id === moved.id || !otherHalf || isMated(project, other.id)) continue;
    const otherBox = symbolBox(other, otherHalf);
    if (!boxesMeet(reach, otherBox) || overlap(box, otherBox) < 0.5) continue;
    const gap = Math.max(otherBox.minX - box.maxX, box.minX - otherBox.maxX);
    if (Math.abs(gap) <= 2 * REACH_MM && (!best || Math.abs(gap) < Math.abs(best.gap)))
      best = { other, otherHalf, otherBox, gap };
  }
  if (!best) return null;
  const { obstacles } = matingObstacles(half, best.otherHalf);
  const toTheLeft = box.minX + box.maxX < best.otherBox.minX + best.otherBox.maxX;
  return {
    partner: best.other.id,
    to: {
      x: toTheLeft
        ? best.otherBox.minX - MATE_GAP_MM - (box.maxX - box.minX)
        : best.otherBox.maxX + MATE_GAP_MM,
      y: best.other.position.y,
    },
    reason: obstacles.length ? `They cannot mate: ${obstacles.map((o) => o.text).join('; ')}.` : null,
  };
}

const halfOf = (project: Project, connector: Connector): MatingHalf | undefined => {
  const part = byId(project.parts).get(connector.part);
  return isMatingHalf(part) ? part : undefined;
};

const isMated = (project: Project, id: string): boolean =>
  project.mates.some((m) => m.a === id || m.b === id);

/** Share of the lower of two boxes that stands beside the other. */
const overlap = (a: Box, b: Box): number =>
  (Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY)) / Math.min(a.maxY - a.minY, b.maxY - b.minY);
