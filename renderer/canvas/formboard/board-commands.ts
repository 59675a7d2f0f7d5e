import { byId } from '@latchwork/core/base/by-id';
import type { Point } from '@latchwork/core/base/point';
import type { Call } from '@latchwork/core/commands/dispatch';
import { awayFromRunsDeg, segmentsByNode } from '@latchwork/core/derive/formboard/board-angle';
import { placeOfStation, segmentLengths, segmentPath } from '@latchwork/core/derive/formboard/segment-path';
import { roundTo } from '@latchwork/core/model/length-text';
import type { Project } from '@latchwork/core/model/project';
import type { Segment } from '@latchwork/core/model/topology';
import { ANGLE_STEP_DEG } from '@latchwork/core/tools/formboard/angle-snap';
import { branchOf } from '@latchwork/core/tools/formboard/branch-of';
import type { AppState } from '../../app/store';

type Here = Pick<AppState, 'history' | 'harness' | 'view'>;

/** Something that can be done with what is selected on the formboard, from menu, palette and key. */
export interface BoardCommand {
  readonly id: string;
  readonly label: string;
  /** A letter, with "Shift+" before it where that is held. */
  readonly key?: string;
  /** The command that it means for the selection; null where it means none. */
  readonly call: (state: Here) => Call | null;
}

const selected = <T extends { readonly id: string }>(list: readonly T[], { view }: Here): readonly T[] => {
  const known = byId(list);
  return [...view.selection].flatMap((key) => known.get(key) ?? []);
};

const only = <T>(list: readonly T[]): T | null => (list.length === 1 ? (list[0] as T) : null);

const onlySegment = (state: Here): Segment | null => only(selected(state.history.project.segments, state));

/** The middle of a segment, at a whole millimetre. */
function middleOf(project: Project, s: Segment): { readonly atMm: number; readonly at: Point } | null {
  const nodes = byId(project.nodes);
  const path = segmentPath(s, nodes);
  if (!path) return null;
  const { usedMm } = segmentLengths(s, nodes);
  const atMm = Math.round(usedMm / 2);
  return { atMm, at: placeOfStation(path, usedMm, atMm).at };
}

const BRANCH_MM = 60;

function branchCall(state: Here): Call | null {
  const { project } = state.history;
  const segment = onlySegment(state);
  const node = only(selected(project.nodes, state));
  const out = (at: Point, deg: number): Point => ({
    x: roundTo(at.x + Math.cos((deg * Math.PI) / 180) * BRANCH_MM, 3),
    y: roundTo(at.y + Math.sin((deg * Math.PI) / 180) * BRANCH_MM, 3),
  });
  if (node) {
    const runs = segmentsByNode(project.segments).get(node.id) ?? [];
    const deg = awayFromRunsDeg(node.id, runs, byId(project.nodes));
    return { id: 'branch.insert', args: { at: { node: node.id }, to: out(node.position, deg) } };
  }
  const middle = segment && middleOf(project, segment);
  const path = segment && segmentPath(segment, byId(project.nodes));
  if (!segment || !middle || !path) return null;
  const { usedMm } = segmentLengths(segment, byId(project.nodes));
  const { angle } = placeOfStation(path, usedMm, middle.atMm);
  const at = { segment: segment.id, atMm: middle.atMm };
  return { id: 'branch.insert', args: { at, to: out(middle.at, (angle * 180) / Math.PI - 90) } };
}

/** A bend in the longest straight stretch of a segment, at its middle. */
export function bendAt(project: Project, segment: Segment, at: Point): Call | null {
  const nodes = byId(project.nodes);
  const [from, to] = [nodes.get(segment.from)?.position, nodes.get(segment.to)?.position];
  if (!from || !to) return null;
  const line = [from, ...(segment.via ?? []), to];
  let best = { index: 0, detour: Infinity };
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1] as Point, line[i] as Point];
    const detour =
      Math.hypot(at.x - a.x, at.y - a.y) +
      Math.hypot(b.x - at.x, b.y - at.y) -
      Math.hypot(b.x - a.x, b.y - a.y);
    if (detour < best.detour) best = { index: i - 1, detour };
  }
  const via = [...(segment.via ?? [])];
  via.splice(best.index, 0, { x: roundTo(at.x, 3), y: roundTo(at.y, 3) });
  return { id: 'segment.edit', args: { id: segment.id, change: { via } } };
}

function turnCall(state: Here, byDeg: number): Call | null {
  const { project } = state.history;
  const connectors = selected(project.connectors, state).filter((c) => c.node);
  if (connectors.length) return { id: 'connector.turn', args: { ids: connectors.map((c) => c.id), byDeg } };
  const segment = onlySegment(state);
  const branch = segment && branchOf(project, segment.id);
  return branch && { id: 'branch.rotate', args: { node: branch.node, segment: branch.segment, byDeg } };
}

function straightenCall(state: Here): Call | null {
  const { project } = state.history;
  const nodes = selected(project.nodes, state);
  if (nodes.length === 2 && nodes[0] && nodes[1])
    return { id: 'trunk.straighten', args: { from: nodes[0].id, to: nodes[1].id } };
  // The two ends of a chain of selected segments.
  const ends = new Map<string, number>();
  for (const s of selected(project.segments, state))
    for (const id of [s.from, s.to]) ends.set(id, (ends.get(id) ?? 0) + 1);
  const [from, to, ...more] = [...ends].filter(([, n]) => n === 1).map(([id]) => id);
  return from && to && more.length === 0 ? { id: 'trunk.straighten', args: { from, to } } : null;
}

const edit = (s: Segment | null, change: (s: Segment) => EditChange | null): Call | null => {
  const made = s && change(s);
  return s && made && { id: 'segment.edit', args: { id: s.id, change: made } };
};
type EditChange = Extract<Call, { id: 'segment.edit' }>['args']['change'];

/** Whether something of the diagram has no place on the board yet. */
const isUnlaid = ({ connectors }: Project): boolean =>
  connectors.some((c) => c.supply === 'harness' && !c.node);

export const BOARD_COMMANDS: readonly BoardCommand[] = [
  {
    id: 'lay-out',
    label: 'Lay out from the diagram',
    call: ({ history }) => (isUnlaid(history.project) ? { id: 'formboard.lay-out', args: {} } : null),
  },
  {
    id: 'split',
    label: 'Split the segment',
    key: 'X',
    call: (state) => {
      const s = onlySegment(state);
      const middle = s && middleOf(state.history.project, s);
      return middle && { id: 'segment.split', args: { station: { segment: s.id, atMm: middle.atMm } } };
    },
  },
  {
    id: 'join',
    label: 'Join the two segments at the node',
    key: 'J',
    call: (state) => {
      const node = only(selected(state.history.project.nodes, state));
      return node && { id: 'segment.join', args: { node: node.id } };
    },
  },
  { id: 'branch', label: 'Insert a branch', key: 'A', call: branchCall },
  {
    id: 'bend',
    label: 'Add a bend',
    key: 'Q',
    call: (state) => {
      const s = onlySegment(state);
      const middle = s && middleOf(state.history.project, s);
      return middle && bendAt(state.history.project, s, middle.at);
    },
  },
  {
    id: 'curve',
    label: 'Curve, or straight runs',
    key: 'C',
    call: (state) =>
      edit(onlySegment(state), (s) =>
        s.via?.length ? { shape: s.shape === 'curve' ? null : 'curve' } : null,
      ),
  },
  {
    id: 'unbend',
    label: 'Take the bends out of the segment',
    call: (state) => edit(onlySegment(state), (s) => (s.via?.length ? { via: null, shape: null } : null)),
  },
  {
    id: 'lock',
    label: 'Lock or free the length',
    key: 'K',
    call: (state) => edit(onlySegment(state), (s) => ({ lengthLocked: s.lengthLocked ? null : true })),
  },
  {
    id: 'type-length',
    label: 'Type the drawn length',
    call: (state) =>
      edit(onlySegment(state), (s) => {
        const { drawnMm } = segmentLengths(s, byId(state.history.project.nodes));
        return drawnMm > 0 ? { lengthMm: roundTo(drawnMm, 1) } : null;
      }),
  },
  {
    id: 'draw-length',
    label: 'Take the length from the drawing',
    call: (state) => edit(onlySegment(state), (s) => (s.lengthMm === undefined ? null : { lengthMm: null })),
  },
  {
    id: 'mirror',
    label: 'Mirror the branch',
    key: 'I',
    call: (state) => {
      const s = onlySegment(state);
      const branch = s && branchOf(state.history.project, s.id);
      return branch && { id: 'branch.mirror', args: { node: branch.node, segment: branch.segment } };
    },
  },
  {
    id: 'turn',
    label: `Turn branch or connector by ${ANGLE_STEP_DEG}° clockwise`,
    key: 'O',
    call: (state) => turnCall(state, ANGLE_STEP_DEG),
  },
  {
    id: 'turn-back',
    label: `Turn branch or connector by ${ANGLE_STEP_DEG}° counter-clockwise`,
    key: 'Shift+O',
    call: (state) => turnCall(state, -ANGLE_STEP_DEG),
  },
  {
    id: 'in-line',
    label: 'Lay connectors in line with their run',
    call: (state) => {
      const ids = selected(state.history.project.connectors, state)
        .filter((c) => c.formboardAngleDeg !== undefined)
        .map((c) => c.id);
      return ids.length ? { id: 'connector.turn', args: { ids, toDeg: null } } : null;
    },
  },
  { id: 'straighten', label: 'Straighten the trunk', key: 'U', call: straightenCall },
  {
    id: 'pin',
    label: 'Pin wires to the way they take',
    call: (state) => {
      const wires = selected(state.history.project.wires, state);
      const route = wires[0] && state.harness.wireById.get(wires[0].id)?.route;
      return route?.found && route.segments.length
        ? { id: 'wire.pin-path', args: { wires: wires.map((w) => w.id), path: [...route.segments] } }
        : null;
    },
  },
  {
    id: 'unpin',
    label: 'Let wires take the shortest way',
    call: (state) => {
      const wires = selected(state.history.project.wires, state).filter((w) => w.path);
      return wires.length ? { id: 'wire.unpin-path', args: { wires: wires.map((w) => w.id) } } : null;
    },
  },
];
