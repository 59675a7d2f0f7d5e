import RBush from 'rbush';
import type { Box } from '@latchwork/core/base/point';
import type { DiagramScene } from './diagram-scene';
import type { ConnectorItem, SpliceItem, WireItem } from './items';

type Indexed = ConnectorItem | WireItem | SpliceItem;

/** Finds the items that meet a box. */
export interface HitIndex {
  readonly scene: DiagramScene;
  search(box: Box): Indexed[];
}

const trees = new WeakMap<HitIndex, RBush<Indexed>>();

/** More changes than this and the tree is made anew. */
const PATCH_SHARE = 0.25;

/**
 * An index over a scene. Made when first asked for after a change; from the tree of the scene before, it takes out
 * and puts in only what changed. The index given is used up.
 */
export function indexScene(scene: DiagramScene, previous: HitIndex | null): HitIndex {
  if (previous?.scene === scene) return previous;
  const now = itemsOf(scene);
  let tree = previous ? trees.get(previous) : undefined;
  if (tree && previous) {
    const before = itemsOf(previous.scene);
    const gone = difference(before, now);
    const fresh = difference(now, before);
    if (gone.length + fresh.length > now.length * PATCH_SHARE) tree = undefined;
    else {
      for (const item of gone) tree.remove(item);
      for (const item of fresh) tree.insert(item);
    }
  }
  if (!tree) {
    tree = new RBush<Indexed>();
    tree.load(now);
  }
  const made = tree;
  const index: HitIndex = { scene, search: (box) => made.search(box) };
  trees.set(index, made);
  return index;
}

const itemsOf = (scene: DiagramScene): Indexed[] => [
  ...scene.connectors,
  ...scene.wires.list,
  ...scene.splices,
];

function difference(a: readonly Indexed[], b: readonly Indexed[]): Indexed[] {
  const known = new Set(b);
  return a.filter((item) => !known.has(item));
}
