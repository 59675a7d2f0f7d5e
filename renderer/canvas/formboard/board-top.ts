import type { Pen } from '../draw/pen';
import type { InteractionState } from '../interaction';
import { isMoving } from '@latchwork/core/tools/step-tool';
import { paintPreview } from './draw/board-preview';
import { handlePoint, paintBranchHandle } from './draw/branch-handle';
import { paintHalo, paintLitDimensions, paintVias } from './draw/halo';
import type { LengthUnit } from './draw/lengths';
import { paintBoard } from './draw/paint-board';
import { editsOf } from './scene/board-edits';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';
import { followScene } from './scene/follow';
import { isLit, litBy, NOTHING_LIT, type Lit } from './scene/lit';

/** What lies over the still board. */
export interface BoardOver {
  readonly scene: BoardScene;
  readonly unit: LengthUnit;
  readonly selected: Lit;
  /** Lit because a list points at it. */
  readonly pointed: Lit;
}

const NONE: ReadonlySet<string> = new Set();

export const topIsEmpty = (o: BoardOver, { gesture, hover }: InteractionState): boolean =>
  !isLit(o.selected) &&
  !isLit(o.pointed) &&
  (gesture === null || gesture.is === 'pan') &&
  (hover === null || hover.target.on === 'sheet' || hover.target.on === 'badge');

/** Selection, what is pointed at, and the gesture under way: only what follows it is drawn anew. */
export function paintBoardTop(pen: Pen, o: BoardOver, { gesture, hover, lifted }: InteractionState): void {
  const moving = gesture && isMoving(gesture) && lifted.size > 0;
  const follow = moving ? followScene(o.scene, editsOf(gesture, o.scene), lifted) : null;
  // Halos of what does not move are taken from the scene, of what does from where it is now.
  const shown = follow ? merged(o.scene, follow, lifted) : o.scene;
  paintHalo(pen, shown, o.selected, true);
  paintHalo(pen, shown, o.pointed, false);
  if (!gesture) paintHalo(pen, shown, hoverLit(o.scene, hover), false);
  if (follow) paintBoard(pen, { scene: follow, unit: o.unit, skip: NONE, live: true });
  paintLitDimensions(pen, shown, o.selected, o.unit);
  paintVias(pen, shown, o.selected.ids);
  const [only] = o.selected.ids;
  if (!gesture && only !== undefined && o.selected.ids.size === 1) {
    const handle = handlePoint(o.scene, only, pen.s);
    if (handle) paintBranchHandle(pen, handle);
  }
  if (gesture) paintPreview(pen, shown, gesture, o.unit);
}

function hoverLit(scene: BoardScene, hover: InteractionState['hover']): Lit {
  const target = hover?.target;
  if (!target || target.on === 'sheet' || target.on === 'badge') return NOTHING_LIT;
  if (target.on === 'segment' && target.wire) return litBy(scene, [target.wire]);
  return 'id' in target ? litBy(scene, [target.id]) : NOTHING_LIT;
}

/** The scene with what follows a gesture in its new place. */
function merged(scene: BoardScene, follow: BoardScene, lifted: ReadonlySet<string>): BoardScene {
  const both = <T extends { readonly id: string }>(
    still: readonly T[],
    moved: readonly T[],
  ): readonly T[] => [...still.filter((o) => !lifted.has(o.id)), ...moved];
  return {
    ...scene,
    nodes: both(scene.nodes, follow.nodes),
    nodeById: follow.nodeById,
    segmentById: follow.segmentById,
    connectors: both(scene.connectors, follow.connectors),
    things: both(scene.things, follow.things),
    splices: both(scene.splices, follow.splices),
    coverings: [
      ...scene.coverings.filter((c) => !lifted.has(c.segment) && !lifted.has(c.id)),
      ...follow.coverings,
    ],
    dimensions: both(scene.dimensions, follow.dimensions),
  };
}
