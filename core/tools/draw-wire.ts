import { distance, type Point } from '../base/point';
import { snapped } from './snap';
import { keyOfTarget, type Facts, type Input, type PointerEventInput, type Step, type Target } from './tool';
import { samePlace, wireEndAt, type WireEndTarget } from './wire-target';

/** A wire that is being drawn: from a cavity or splice to wherever the pointer is. */
export interface DrawWire {
  readonly is: 'draw-wire';
  readonly from: WireEndTarget;
  readonly start: Point;
  readonly at: Point;
  readonly over: Target;
  readonly drawing: boolean;
  readonly click: string | null;
}

/** Null where no wire can start. */
export function startDrawWire(input: PointerEventInput): DrawWire | null {
  const from = wireEndAt(input.target, input.at);
  if (!from) return null;
  return {
    is: 'draw-wire',
    from,
    start: input.at,
    at: input.at,
    over: input.target,
    drawing: false,
    click: keyOfTarget(input.target),
  };
}

export function stepDrawWire(state: DrawWire, input: Input, facts: Facts): Step<DrawWire | null> {
  if (input.on === 'cancel') return { next: null };
  const drawing = state.drawing || distance(state.start, input.at) > facts.slopMm;
  const next = { ...state, at: input.at, over: input.target, drawing };
  if (input.on !== 'up') return { next };
  const to = wireEndAt(input.target, snapped(input.at, facts.snap && !input.alt));
  if (!drawing || (to && samePlace(state.from, to)))
    return { next: null, ...(state.click ? { select: { keys: [state.click], add: input.add } } : {}) };
  if (!to)
    return {
      next: null,
      refuse: { at: input.at, reason: 'Release on a cavity, a splice, or the empty sheet.' },
    };
  return { next: null, dispatch: { id: 'wire.add', args: { from: state.from, to } } };
}
