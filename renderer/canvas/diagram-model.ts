import type { AppStore } from '../app/store';
import { DIAGRAM_TOOLS } from './sheet-tool-ids';
import { createInteraction, type Interaction, type SheetAccess } from './interaction';
import type { Badge } from './scene/badges';
import { buildDiagramScene, type DiagramScene } from './scene/diagram-scene';
import { hitAt, keysInBox } from './scene/hit';
import { indexScene, type HitIndex } from './scene/hit-index';
import { liftedBy } from './scene/lifted';

/** A diagram without its canvas: what is where, and what the pointer does to it. */
export interface DiagramModel {
  readonly interaction: Interaction;
  /** Tells what is now on the sheet. */
  show(scene: DiagramScene, badges: readonly Badge[]): void;
}

export function createDiagramModel(
  store: AppStore,
  camera: Pick<SheetAccess, 'camera' | 'panBy'>,
): DiagramModel {
  let scene = buildDiagramScene(store.getState().harness);
  let badges: readonly Badge[] = [];
  let made: HitIndex | null = null;
  // The index is made when first asked after a change: an edit from elsewhere costs nothing here.
  const index = (): HitIndex => (made = indexScene(scene, made));
  const interaction = createInteraction(store, {
    tools: DIAGRAM_TOOLS,
    ...camera,
    hit: (at) =>
      hitAt(at, {
        index: index(),
        badges,
        selection: store.getState().view.selection,
        pxPerMm: camera.camera().pxPerMm,
      }),
    keysInBox: (box) => keysInBox(index(), box),
    liftedBy: (gesture) =>
      gesture.is === 'move' ? liftedBy(scene, new Set(gesture.objects.map((o) => o.id))) : new Set(),
  });
  return {
    interaction,
    show(nextScene, nextBadges) {
      scene = nextScene;
      badges = nextBadges;
    },
  };
}
