import { paintAreas } from './draw/areas';
import { paintBadges } from './draw/badges';
import { paintConnectors } from './draw/connectors';
import { paintGrid } from './draw/grid';
import { paintGroups } from './draw/groups';
import { paintMates } from './draw/mates';
import type { Pen } from './draw/pen';
import { paintFreeEnds, paintSplices } from './draw/splices';
import { paintWires } from './draw/wires';
import type { Badge } from './scene/badges';
import type { DiagramScene } from './scene/diagram-scene';

/** The still picture of the diagram, from the ground up, and what is not in it because it is on the move. */
export interface Still {
  readonly scene: DiagramScene;
  readonly lifted: ReadonlySet<string>;
}

export const paintGround = (pen: Pen, { scene, lifted }: Still): void => {
  paintGrid(pen);
  paintAreas(pen, scene.areas, lifted);
};

export const paintLines = (pen: Pen, { scene, lifted }: Still): void => {
  paintMates(pen, scene.mates, lifted);
  paintWires(pen, scene.wires.list, lifted);
  paintGroups(pen, scene, lifted);
};

export const paintBodies = (pen: Pen, { scene, lifted }: Still): void => {
  paintConnectors(pen, scene.connectors, lifted);
  paintSplices(pen, scene.splices, lifted);
  paintFreeEnds(pen, scene.wires.list, lifted);
};

export const paintFindings = (
  pen: Pen,
  { badges, still }: { readonly badges: readonly Badge[]; readonly still: Still },
): void => {
  const { lifted, scene } = still;
  const there = lifted.size === 0 ? badges : badges.filter((b) => !lifted.has(b.key.split(':')[0] as string));
  paintBadges(pen, there, scene);
};
