import type { Point } from '../base/point';
import type { Input, PointerEventInput, Step } from './tool';

/** The sheet is held and follows the pointer. Nothing of the project changes. */
export interface Pan {
  readonly is: 'pan';
  readonly last: Point;
}

export const startPan = (input: PointerEventInput): Pan => ({ is: 'pan', last: input.screen });

export function stepPan(state: Pan, input: Input): Step<Pan | null> {
  if (input.on === 'cancel') return { next: null };
  const pan = { x: input.screen.x - state.last.x, y: input.screen.y - state.last.y };
  return { next: input.on === 'up' ? null : { is: 'pan', last: input.screen }, pan };
}
