import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import { roundTo } from '../../model/length-text';
import type { Project } from '../../model/project';
import { normalDeg } from './normal-deg';

/** New places on the formboard. An empty list of via points takes them away. */
export interface Relaid {
  readonly nodes: ReadonlyMap<string, Point>;
  readonly vias: ReadonlyMap<string, readonly Point[]>;
  /** Directions of connectors that have one of their own, degrees. */
  readonly angles: ReadonlyMap<string, number>;
}

/** A move of the plane onto itself that keeps lengths. */
export interface Motion {
  point(p: Point): Point;
  angleDeg(angle: number): number;
}

const rounded = (x: number, y: number): Point => ({ x: roundTo(x, 9), y: roundTo(y, 9) });

/** Turns about a point, clockwise as y grows downwards, and then shifts. */
export function turning(about: Point, byDeg: number, shift: Point = { x: 0, y: 0 }): Motion {
  const [cos, sin] = [Math.cos((byDeg * Math.PI) / 180), Math.sin((byDeg * Math.PI) / 180)];
  return {
    point: ({ x, y }) => {
      const [dx, dy] = [x - about.x, y - about.y];
      return rounded(about.x + dx * cos - dy * sin + shift.x, about.y + dx * sin + dy * cos + shift.y);
    },
    angleDeg: (angle) => normalDeg(angle + byDeg),
  };
}

/** Mirrors about the line through a point in a direction. */
export function mirroring(through: Point, axisDeg: number): Motion {
  const twice = (2 * axisDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(twice), Math.sin(twice)];
  return {
    point: ({ x, y }) => {
      const [dx, dy] = [x - through.x, y - through.y];
      return rounded(through.x + dx * cos + dy * sin, through.y + dx * sin - dy * cos);
    },
    angleDeg: (angle) => normalDeg(2 * axisDeg - angle),
  };
}

/** The named nodes and segments after a motion, with the connectors on the nodes. */
export function moved(
  project: Pick<Project, 'nodes' | 'segments' | 'connectors'>,
  nodes: ReadonlySet<string>,
  segments: ReadonlySet<string>,
  motion: Motion,
): Relaid {
  const byNode = byId(project.nodes);
  const bySegment = byId(project.segments);
  return {
    nodes: new Map(
      [...nodes].flatMap((id) => {
        const node = byNode.get(id);
        return node ? [[id, motion.point(node.position)] as const] : [];
      }),
    ),
    vias: new Map(
      [...segments].flatMap((id) => {
        const via = bySegment.get(id)?.via;
        return via ? [[id, via.map((p) => motion.point(p))] as const] : [];
      }),
    ),
    angles: new Map(
      project.connectors.flatMap((c) =>
        c.node !== undefined && nodes.has(c.node) && c.formboardAngleDeg !== undefined
          ? [[c.id, motion.angleDeg(c.formboardAngleDeg)] as const]
          : [],
      ),
    ),
  };
}
