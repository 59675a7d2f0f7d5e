import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import { normalDeg } from '../../derive/formboard/normal-deg';
import { moved, turning, type Relaid } from '../../derive/formboard/relaid';
import type { Facts, Input, PointerEventInput, Step } from '../tool';
import { directionDeg, snappedDeg } from './angle-snap';
import { branchOf, type Branch } from './branch-of';

/** What hangs on a node is turned about it; the direction of its first run snaps, with Shift it is free. */
export interface TurnBranch {
  readonly is: 'turn-branch';
  readonly branch: Branch;
  readonly nodes: readonly string[];
  readonly pivot: Point;
  readonly start: Point;
  /** Direction of its first run before it was turned. */
  readonly firstDeg: number;
  readonly byDeg: number;
  readonly turned: Relaid | null;
  readonly moving: boolean;
}

export function startTurnBranch(
  input: PointerEventInput,
  segment: string,
  facts: Facts,
): Step<TurnBranch | null> {
  const branch = branchOf(facts.project, segment);
  const nodes = byId(facts.project.nodes);
  const run = byId(facts.project.segments).get(segment);
  const pivot = branch && nodes.get(branch.node)?.position;
  const far = run && branch && nodes.get(run.from === branch.node ? run.to : run.from)?.position;
  if (!branch || !run || !pivot || !far)
    return {
      next: null,
      refuse: { at: input.at, reason: 'A run that is part of a closed loop cannot turn by itself.' },
    };
  const next = (run.from === branch.node ? run.via?.[0] : run.via?.at(-1)) ?? far;
  return {
    next: {
      is: 'turn-branch',
      branch,
      nodes: [...branch.nodes],
      pivot,
      start: input.at,
      firstDeg: directionDeg(pivot, next),
      byDeg: 0,
      turned: null,
      moving: false,
    },
  };
}

export function stepTurnBranch(state: TurnBranch, input: Input, facts: Facts): Step<TurnBranch | null> {
  if (input.on === 'cancel') return { next: null };
  const next = follow(state, input, facts);
  if (input.on !== 'up') return { next };
  if (!next.moving || next.byDeg === 0) return { next: null };
  const { node, segment } = state.branch;
  return { next: null, dispatch: { id: 'branch.rotate', args: { node, segment, byDeg: next.byDeg } } };
}

function follow(state: TurnBranch, input: PointerEventInput, facts: Facts): TurnBranch {
  if (!state.moving && distance(state.start, input.at) <= facts.slopMm) return state;
  const raw = directionDeg(state.pivot, input.at) - directionDeg(state.pivot, state.start);
  const free = input.shift === true || input.alt;
  const byDeg = normalDeg(snappedDeg(state.firstDeg + raw, !free) - state.firstDeg);
  const { nodes, segments } = state.branch;
  const turned = moved(facts.project, nodes, segments, turning(state.pivot, byDeg));
  return { ...state, moving: true, byDeg, turned };
}
