import { byId } from '@latchwork/core/base/by-id';
import { coveringExtents } from '@latchwork/core/derive/covering-extents';
import type { CoveringUse } from '@latchwork/core/derive/harness';
import type { BoardEdits } from './board-edits';
import type {
  BoardCovering,
  BoardNode,
  BoardScene,
  BoardSegment,
} from '@latchwork/core/derive/formboard/scene/board-items';
import { connectorUsesAt, groupByNode } from '@latchwork/core/derive/formboard/scene/build-board-scene';
import { groundOf } from '@latchwork/core/derive/formboard/scene/dimension-ground';
import { dimensionItem } from '@latchwork/core/derive/formboard/scene/dimension-items';
import { connectorsAt, nodeItem } from '@latchwork/core/derive/formboard/scene/node-items';
import { coveringItems, segmentItem } from '@latchwork/core/derive/formboard/scene/segment-items';
import {
  freeEndsAt,
  spliceItem,
  thingItem,
  thingSources,
} from '@latchwork/core/derive/formboard/scene/thing-items';

/**
 * The part of the board that follows a gesture, as it would become. Only the objects in `ids` are made; what they lie on or
 * hang at is taken from the scene.
 */
export function followScene(scene: BoardScene, edits: BoardEdits, ids: ReadonlySet<string>): BoardScene {
  const { harness } = scene;
  const placeOf = (node: string) => edits.nodes.get(node) ?? scene.nodeById.get(node)?.at;

  const segments: BoardSegment[] = [];
  for (const id of ids) {
    const s = scene.segmentById.get(id);
    const [from, to] = s ? [placeOf(s.segment.from), placeOf(s.segment.to)] : [];
    if (!s || !from || !to) continue;
    const via = edits.vias.get(id);
    segments.push(segmentItem(via ? { ...s.segment, via: [...via] } : s.segment, s.use, from, to));
  }
  const segmentById = replaced(scene.segmentById, segments);
  const runsAt = (node: string): readonly BoardSegment[] =>
    (scene.segmentsAt.get(node) ?? []).map((s) => segmentById.get(s.id) ?? s);

  const nodes: BoardNode[] = [];
  const connectors = [];
  for (const id of ids) {
    const node = scene.nodeById.get(id);
    const at = placeOf(id);
    if (!node || !at) continue;
    const here = connectorsAt(id, at, connectorUsesAt(harness).get(id) ?? [], runsAt(id), edits.anglesDeg);
    connectors.push(...here.filter((c) => ids.has(c.id)));
    nodes.push(nodeItem(node.node, at, runsAt(id), here));
  }
  const nodeById = replaced(scene.nodeById, nodes);
  const connectorById = replaced(scene.connectorById, connectors);
  const ground = groundOf(harness, { nodeById, segmentById, connectorById });
  const longest = new Map(scene.coverings.flatMap((c) => (c.named ? [[c.id, c.segment] as const] : [])));
  return {
    harness,
    nodes,
    nodeById,
    segments,
    segmentById,
    segmentsAt: groupByNode(segments),
    connectors,
    connectorById,
    splices: scene.splices.flatMap((s) => {
      const node = nodeById.get(s.splice.node ?? '');
      return node && ids.has(s.id) ? [spliceItem(s.splice, node, runsAt(node.id))] : [];
    }),
    coverings: [
      ...segments.flatMap((s) => coveringItems(s, s.use?.coverings ?? [], longest)),
      ...slidCoverings(scene, edits),
    ],
    things: slidThings(scene, edits, ids, segmentById),
    freeEnds: nodes.flatMap((n) =>
      freeEndsAt(
        n,
        runsAt(n.id),
        scene.freeEnds.filter((e) => e.node === n.id && ids.has(e.wire.wire.id)),
      ),
    ),
    dimensions: scene.dimensions.flatMap((d) => {
      if (!ids.has(d.id)) return [];
      const offsetMm = edits.offsetsMm.get(d.id);
      const dimension = offsetMm === undefined ? d.dimension : { ...d.dimension, offsetMm };
      return dimensionItem(dimension, ground) ?? [];
    }),
  };
}

function replaced<T extends { readonly id: string }>(
  all: ReadonlyMap<string, T>,
  list: readonly T[],
): ReadonlyMap<string, T> {
  if (list.length === 0) return all;
  const out = new Map(all);
  for (const item of list) out.set(item.id, item);
  return out;
}

function slidThings(
  scene: BoardScene,
  edits: BoardEdits,
  ids: ReadonlySet<string>,
  segmentById: BoardScene['segmentById'],
): BoardScene['things'] {
  return thingSources(scene.harness, scene.segmentsAt).flatMap((t) => {
    if (!ids.has(t.id)) return [];
    const station = edits.stations.get(t.id) ?? t.station;
    const s = segmentById.get(station.segment);
    return s ? [thingItem({ ...t, station }, s)] : [];
  });
}

/** A covering whose ends are dragged, laid over the runs between them. */
function slidCoverings(scene: BoardScene, edits: BoardEdits): readonly BoardCovering[] {
  const { project, router } = scene.harness;
  const coverings = byId(project.coverings);
  return [...edits.spans].flatMap(([id, span]) => {
    const covering = coverings.get(id);
    if (!covering) return [];
    const slid = { ...covering, ...span };
    const known = scene.coverings.find((c) => c.id === id)?.use;
    return coveringExtents(slid, byId(project.segments), router).flatMap((e) => {
      const s = scene.segmentById.get(e.segment);
      if (!s) return [];
      const others = (s.use?.coverings ?? []).filter((c) => c.covering.id !== id);
      const use: CoveringUse = { covering: slid, part: known?.part, fromMm: e.fromMm, toMm: e.toMm };
      return coveringItems(s, [...others, use], new Map([[id, s.id]])).filter((c) => c.id === id);
    });
  });
}
