import { distance, type Point } from '../base/point';
import { snapped } from './snap';
import type { Facts, Input, PointerEventInput, Step, Target } from './tool';

/** A segment that is being drawn from one node to another. */
export interface DrawSegment {
  readonly is: 'draw-segment';
  readonly from: string;
  readonly start: Point;
  readonly at: Point;
  readonly over: Target;
}

export const startDrawSegment = (input: PointerEventInput): DrawSegment | null =>
  input.target.on === 'node'
    ? { is: 'draw-segment', from: input.target.id, start: input.at, at: input.at, over: input.target }
    : null;

export function stepDrawSegment(state: DrawSegment, input: Input, facts: Facts): Step<DrawSegment | null> {
  if (input.on === 'cancel') return { next: null };
  if (input.on !== 'up') return { next: { ...state, at: input.at, over: input.target } };
  if (distance(state.start, input.at) <= facts.slopMm)
    return { next: null, select: { keys: [state.from], add: input.add } };
  if (input.target.on === 'sheet') {
    const to = snapped(input.at, facts.snap && !input.alt);
    return { next: null, dispatch: { id: 'branch.insert', args: { at: { node: state.from }, to } } };
  }
  if (input.target.on !== 'node')
    return {
      next: null,
      refuse: { at: input.at, reason: 'A segment ends at a node, or on the empty board with a new one.' },
    };
  return {
    next: null,
    dispatch: { id: 'segment.add', args: { from: state.from, to: input.target.id } },
  };
}
