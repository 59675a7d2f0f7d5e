import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import { snapped } from '../snap';
import type { BoardPlace, Facts, Input, PointerEventInput, Step, Target } from '../tool';
import { guided, type Guide } from './guides';
import { snappedPlace } from './slide';

/** A new run is pulled out of a segment; a press without a drag selects what lies there. */
export interface DragBranch {
  readonly is: 'drag-branch';
  readonly click: string;
  readonly root: BoardPlace;
  readonly start: Point;
  readonly at: Point;
  readonly over: Target;
  readonly guides: readonly Guide[];
  readonly moving: boolean;
}

export function startDragBranch(
  input: PointerEventInput,
  click: string,
  facts: Facts,
): Step<DragBranch | null> {
  const found = facts.board?.placeNear(input.at, facts.slopMm * 6);
  if (!found) return { next: null, select: { keys: [click], add: input.add } };
  const root = snappedPlace(found, facts, input.alt);
  return {
    next: {
      is: 'drag-branch',
      click,
      root,
      start: input.at,
      at: input.at,
      over: input.target,
      guides: [],
      moving: false,
    },
  };
}

/** How far a press must be dragged to pull a branch, px of the slop's: selecting is far more common. */
const PULL_SLOPS = 4;

export function stepDragBranch(state: DragBranch, input: Input, facts: Facts): Step<DragBranch | null> {
  if (input.on === 'cancel') return { next: null };
  const next = follow(state, input, facts);
  if (input.on !== 'up') return { next };
  if (!next.moving) return { next: null, select: { keys: [state.click], add: input.add } };
  const { root } = state;
  const run = byId(facts.project.segments).get(root.segment);
  const length = facts.board?.lengthMmOf(root.segment) ?? 0;
  const node = root.atMm === 0 ? run?.from : root.atMm === length ? run?.to : undefined;
  const at = node ? { node } : { segment: root.segment, atMm: root.atMm };
  if (next.over.on === 'node')
    return node && node !== next.over.id
      ? { next: null, dispatch: { id: 'segment.add', args: { from: node, to: next.over.id } } }
      : {
          next: null,
          refuse: {
            at: input.at,
            reason: 'A branch ends on the empty board. Split the run first to join two nodes.',
          },
        };
  return { next: null, dispatch: { id: 'branch.insert', args: { at, to: next.at } } };
}

function follow(state: DragBranch, input: PointerEventInput, facts: Facts): DragBranch {
  if (!state.moving && distance(state.start, input.at) <= facts.slopMm * PULL_SLOPS) return state;
  const over = input.target;
  if (!facts.snap || input.alt)
    return { ...state, moving: true, over, at: snapped(input.at, false), guides: [] };
  const others = facts.project.nodes.map((n) => n.position);
  const { at, guides } = guided(input.at, [state.root.at], others, facts.slopMm * 2);
  return { ...state, moving: true, over, at, guides };
}
