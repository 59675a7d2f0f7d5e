import { distance, type Point } from '../base/point';
import { snapped } from './snap';
import type { Facts, Input, PointerEventInput, Step, Target } from './tool';
import { wireEndAt } from './wire-target';

/** One end of a wire is taken off and follows the pointer. */
export interface Reconnect {
  readonly is: 'reconnect';
  readonly wire: string;
  readonly end: 0 | 1;
  readonly start: Point;
  readonly at: Point;
  readonly over: Target;
  readonly drawing: boolean;
}

export const startReconnect = (
  input: PointerEventInput,
  target: Extract<Target, { on: 'wire-end' }>,
): Reconnect => ({
  is: 'reconnect',
  wire: target.wire,
  end: target.end,
  start: input.at,
  at: input.at,
  over: target,
  drawing: false,
});

export function stepReconnect(state: Reconnect, input: Input, facts: Facts): Step<Reconnect | null> {
  if (input.on === 'cancel') return { next: null };
  const drawing = state.drawing || distance(state.start, input.at) > facts.slopMm;
  if (input.on !== 'up') return { next: { ...state, at: input.at, over: input.target, drawing } };
  if (!drawing) return { next: null, select: { keys: [state.wire], add: input.add } };
  const to = wireEndAt(input.target, snapped(input.at, facts.snap && !input.alt));
  if (!to)
    return {
      next: null,
      refuse: { at: input.at, reason: 'Release on a cavity, a splice, or the empty sheet.' },
    };
  return { next: null, dispatch: { id: 'wire.move-end', args: { id: state.wire, end: state.end, to } } };
}
