import type { BoardFacts, Target } from '@latchwork/core/tools/tool';
import { distance, type Point } from '@latchwork/core/base/point';
import type { AppStore } from '../../app/store';
import { createInteraction, type Interaction, type SheetAccess } from '../interaction';
import type { Badge } from '../scene/badges';
import { FORMBOARD_TOOLS } from '../sheet-tool-ids';
import { BOARD_KINDS } from './board-kinds';
import { boardHit, boardKeysInBox, placeNear } from './board-hit';
import { handlePoint } from './draw/branch-handle';
import { followersOf } from './scene/board-edits';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';
import { buildBoardScene } from '@latchwork/core/derive/formboard/scene/build-board-scene';

const BADGE_REACH_PX = 9;
const HANDLE_REACH_PX = 10;

/** A formboard without its canvas: what is where, and what the pointer does to it. */
export interface BoardModel {
  readonly interaction: Interaction;
  hit(at: Point): Target;
  /** Tells what is now on the board. */
  show(scene: BoardScene, badges: readonly Badge[]): void;
}

export function createBoardModel(store: AppStore, camera: Pick<SheetAccess, 'camera' | 'panBy'>): BoardModel {
  let scene = buildBoardScene(store.getState().harness);
  let badges: readonly Badge[] = [];

  const hit = (at: Point): Target => {
    const { pxPerMm } = camera.camera();
    const { selection } = store.getState().view;
    const [only] = selection;
    if (selection.size === 1 && only !== undefined && scene.segmentById.has(only)) {
      const handle = handlePoint(scene, only, pxPerMm);
      if (handle && distance(handle, at) <= HANDLE_REACH_PX / pxPerMm)
        return { on: 'branch-handle', id: only };
    }
    const badge = badges.find((b) => distance(b.at, at) <= BADGE_REACH_PX / pxPerMm);
    if (badge) return { on: 'badge', findings: badge.findings.map((f) => f.key), key: badge.key };
    return boardHit(scene, at, pxPerMm, selection);
  };

  const board: BoardFacts = {
    placeNear: (at, reachMm) => placeNear(scene, at, reachMm),
    lengthMmOf: (segment) => scene.segmentById.get(segment)?.lengthMm ?? 0,
    awayOf: (dimension) => scene.dimensions.find((d) => d.id === dimension)?.away,
    placeOf: (id) => scene.connectorById.get(id)?.at ?? scene.nodeById.get(id)?.at,
    get router() {
      return scene.harness.router;
    },
  };

  const interaction = createInteraction(store, {
    tools: FORMBOARD_TOOLS,
    ...camera,
    hit,
    board,
    keysInBox: (box) => boardKeysInBox(scene, box),
    liftedBy: (gesture) => followersOf(gesture, scene),
    unsuited: (p) =>
      BOARD_KINDS.has(p.kind)
        ? null
        : 'Only what is put on a run has its place here. Connectors are placed on the diagram.',
  });
  return {
    interaction,
    hit,
    show(nextScene, nextBadges) {
      scene = nextScene;
      badges = nextBadges;
    },
  };
}
