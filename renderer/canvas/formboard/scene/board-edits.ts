import type { Point } from '@latchwork/core/base/point';
import type { Station } from '@latchwork/core/model/topology';
import type { Gesture } from '@latchwork/core/tools/step-tool';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';

/** What a gesture would change, as far as it is seen on the board. */
export interface BoardEdits {
  readonly nodes: ReadonlyMap<string, Point>;
  readonly vias: ReadonlyMap<string, readonly Point[]>;
  readonly stations: ReadonlyMap<string, Station>;
  readonly spans: ReadonlyMap<string, { readonly from: Station; readonly to: Station }>;
  readonly anglesDeg: ReadonlyMap<string, number>;
  readonly offsetsMm: ReadonlyMap<string, number>;
}

export const NO_EDITS: BoardEdits = {
  nodes: new Map(),
  vias: new Map(),
  stations: new Map(),
  spans: new Map(),
  anglesDeg: new Map(),
  offsetsMm: new Map(),
};

export function editsOf(gesture: Gesture, scene: BoardScene): BoardEdits {
  switch (gesture.is) {
    case 'move-nodes':
      return gesture.held ? { ...NO_EDITS, nodes: gesture.held.nodes, vias: gesture.held.vias } : NO_EDITS;
    case 'turn-branch':
      return gesture.turned
        ? {
            ...NO_EDITS,
            nodes: gesture.turned.nodes,
            vias: gesture.turned.vias,
            anglesDeg: gesture.turned.angles,
          }
        : NO_EDITS;
    case 'drag-via': {
      const via = scene.segmentById.get(gesture.segment)?.segment.via ?? [];
      const moved = via.map((p, i) => (i === gesture.index ? gesture.at : p));
      return { ...NO_EDITS, vias: new Map([[gesture.segment, moved]]) };
    }
    case 'slide':
      if (gesture.span) return { ...NO_EDITS, spans: new Map([[gesture.thing.id, gesture.span]]) };
      return gesture.place && gesture.thing.kind !== 'covering'
        ? {
            ...NO_EDITS,
            stations: new Map([
              [gesture.thing.id, { segment: gesture.place.segment, atMm: gesture.place.atMm }],
            ]),
          }
        : NO_EDITS;
    case 'turn-connector':
      return { ...NO_EDITS, anglesDeg: new Map([[gesture.id, gesture.deg]]) };
    case 'drag-dimension':
      return { ...NO_EDITS, offsetsMm: new Map([[gesture.id, gesture.offsetMm]]) };
    default:
      return NO_EDITS;
  }
}

/** The ids of all that a gesture carries along: drawn on the top canvas while it lasts. */
export function followersOf(gesture: Gesture, scene: BoardScene): ReadonlySet<string> {
  switch (gesture.is) {
    case 'move-nodes':
      return followNodes(
        gesture.nodes.map((n) => n.id),
        scene,
      );
    case 'turn-branch':
      return followNodes(gesture.nodes, scene);
    case 'drag-via': {
      const s = scene.segmentById.get(gesture.segment);
      return s ? followSegments([s.id], [s.segment.from, s.segment.to], scene) : new Set();
    }
    case 'slide':
      return new Set([gesture.thing.id]);
    case 'turn-connector':
      return followTurned(gesture.id, scene);
    case 'drag-dimension':
      return new Set([gesture.id]);
    default:
      return new Set();
  }
}

function followNodes(moved: readonly string[], scene: BoardScene): ReadonlySet<string> {
  const segments = new Set<string>();
  const touched = new Set(moved);
  for (const node of moved)
    for (const s of scene.segmentsAt.get(node) ?? []) {
      segments.add(s.id);
      touched.add(s.segment.from).add(s.segment.to);
    }
  return followSegments([...segments], [...touched], scene);
}

/** Segments with all that lies on them, the nodes at their ends with all that stands there, and every dimension. */
function followSegments(
  segments: readonly string[],
  nodes: readonly string[],
  scene: BoardScene,
): ReadonlySet<string> {
  const out = new Set([...segments, ...nodes]);
  const [onSegment, onNode] = [new Set(segments), new Set(nodes)];
  for (const t of scene.things) if (onSegment.has(t.segment)) out.add(t.id);
  for (const c of scene.connectors) if (onNode.has(c.node)) out.add(c.id);
  for (const s of scene.splices) if (onNode.has(s.splice.node ?? '')) out.add(s.id);
  for (const e of scene.freeEnds) if (onNode.has(e.node)) out.add(e.wire.wire.id);
  for (const d of scene.dimensions) out.add(d.id);
  return out;
}

function followTurned(id: string, scene: BoardScene): ReadonlySet<string> {
  const node = scene.connectorById.get(id)?.node;
  return new Set(node === undefined ? [id] : [id, node]);
}
