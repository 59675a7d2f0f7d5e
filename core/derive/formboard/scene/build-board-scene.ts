import { boxAround, grownBox, type Box } from '../../../base/point';
import type { ConnectorUse, Harness, SegmentUse } from '../../harness';
import { memoByIdentity } from '../../../base/memo-by-identity';
import type { BoardConnector, BoardNode, BoardScene, BoardSegment } from './board-items';
import { dimensionItem } from './dimension-items';
import { groundOf } from './dimension-ground';
import { connectorsAt, nodeItem } from './node-items';
import { coveringItems, longestPieces, segmentItem } from './segment-items';
import { freeEndsAt, openEndsByNode, spliceItem, thingItem, thingSources } from './thing-items';

// A use is a new object whenever its nodes, its wires or what lies on it changed.
const itemOfUse = memoByIdentity((use: SegmentUse): BoardSegment | null =>
  use.fromNode && use.toNode
    ? segmentItem(use.segment, use, use.fromNode.position, use.toNode.position)
    : null,
);

export function buildBoardScene(harness: Harness): BoardScene {
  const { project } = harness;
  const segments = harness.segments.flatMap((use) => itemOfUse(use) ?? []);
  const segmentById = new Map(segments.map((s) => [s.id, s]));
  const segmentsAt = groupByNode(segments);
  const usesAt = connectorUsesAt(harness);
  const nodes: BoardNode[] = [];
  const connectors: BoardConnector[] = [];
  for (const node of project.nodes) {
    const runs = segmentsAt.get(node.id) ?? [];
    const here = connectorsAt(node.id, node.position, usesAt.get(node.id) ?? [], runs);
    connectors.push(...here);
    nodes.push(nodeItem(node, node.position, runs, here));
  }
  const nodeById = new Map(nodes.map((n) => [n.id, n]));
  const connectorById = new Map(connectors.map((c) => [c.id, c]));
  const ground = groundOf(harness, { nodeById, segmentById, connectorById });
  const longest = longestPieces(harness.segments);
  return {
    harness,
    nodes,
    nodeById,
    segments,
    segmentById,
    segmentsAt,
    connectors,
    connectorById,
    splices: project.splices.flatMap((splice) => {
      const node = nodeById.get(splice.node ?? '');
      return node ? [spliceItem(splice, node, segmentsAt.get(node.id) ?? [])] : [];
    }),
    coverings: segments.flatMap((s) => coveringItems(s, s.use?.coverings ?? [], longest)),
    things: thingSources(harness, segmentsAt).flatMap((t) => {
      const s = segmentById.get(t.station.segment);
      return s ? [thingItem(t, s)] : [];
    }),
    freeEnds: [...openEndsByNode(harness)].flatMap(([id, ends]) => {
      const node = nodeById.get(id);
      return node ? freeEndsAt(node, segmentsAt.get(id) ?? [], ends) : [];
    }),
    dimensions: project.dimensions.flatMap((d) => dimensionItem(d, ground) ?? []),
  };
}

export function groupByNode(segments: readonly BoardSegment[]): ReadonlyMap<string, readonly BoardSegment[]> {
  const out = new Map<string, BoardSegment[]>();
  for (const s of segments)
    for (const node of new Set([s.segment.from, s.segment.to])) {
      const list = out.get(node);
      if (list) list.push(s);
      else out.set(node, [s]);
    }
  return out;
}

export const connectorUsesAt = memoByIdentity(
  (harness: Pick<Harness, 'connectors'>): ReadonlyMap<string, readonly ConnectorUse[]> => {
    const out = new Map<string, ConnectorUse[]>();
    for (const use of harness.connectors) {
      const { node } = use.resolved.connector;
      if (!node) continue;
      const list = out.get(node);
      if (list) list.push(use);
      else out.set(node, [use]);
    }
    return out;
  },
);

/** Room that connectors and their names take around the nodes, mm. */
const EDGE_MM = 22;

/** The box around all that lies on the board; null for an empty one. */
export function boardBounds(scene: BoardScene): Box | null {
  const box = boxAround([
    ...scene.nodes.map(({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })),
    ...scene.segments,
    ...scene.dimensions,
  ]);
  return box && grownBox(box, EDGE_MM);
}
