import { distance, type Box, type Point } from '../base/point';
import type { Facts, Input, PointerEventInput, Step } from './tool';

/** A frame drawn over the sheet; everything inside is selected on release. */
export interface BoxSelect {
  readonly is: 'box-select';
  readonly from: Point;
  readonly to: Point;
  readonly add: boolean;
  /** The area that was pressed: a click selects it. */
  readonly area: string | undefined;
}

export const startBoxSelect = (input: PointerEventInput): BoxSelect => ({
  is: 'box-select',
  from: input.at,
  to: input.at,
  add: input.add,
  area: input.target.on === 'sheet' ? input.target.area : undefined,
});

export const boxOf = ({ from, to }: { readonly from: Point; readonly to: Point }): Box => ({
  minX: Math.min(from.x, to.x),
  minY: Math.min(from.y, to.y),
  maxX: Math.max(from.x, to.x),
  maxY: Math.max(from.y, to.y),
});

export function stepBoxSelect(state: BoxSelect, input: Input, facts: Facts): Step<BoxSelect | null> {
  if (input.on === 'cancel') return { next: null };
  const next = { ...state, to: input.at };
  if (input.on !== 'up') return { next };
  if (distance(state.from, input.at) > facts.slopMm)
    return { next: null, select: { keys: facts.inBox(boxOf(next)), add: state.add } };
  if (state.area) return { next: null, select: { keys: [state.area], add: state.add } };
  return state.add ? { next: null } : { next: null, select: { keys: [], add: false } };
}
