import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import type { Facts, Input, PointerEventInput, Step } from '../tool';

/** A dimension line is drawn nearer or farther. */
export interface DragDimension {
  readonly is: 'drag-dimension';
  readonly id: string;
  readonly start: Point;
  /** Direction in which its offset grows, a unit. */
  readonly away: Point;
  readonly firstMm: number;
  readonly offsetMm: number;
  readonly moving: boolean;
}

const STEP_MM = 5;

export function startDragDimension(
  input: PointerEventInput,
  id: string,
  facts: Facts,
): Step<DragDimension | null> {
  const away = facts.board?.awayOf(id);
  const dimension = byId(facts.project.dimensions).get(id);
  if (!away || !dimension) return { next: null, select: { keys: [id], add: input.add } };
  const { offsetMm } = dimension;
  const next: DragDimension = {
    is: 'drag-dimension',
    id,
    start: input.at,
    away,
    firstMm: offsetMm,
    offsetMm,
    moving: false,
  };
  return { next };
}

export function stepDragDimension(
  state: DragDimension,
  input: Input,
  facts: Facts,
): Step<DragDimension | null> {
  if (input.on === 'cancel') return { next: null };
  const moving = state.moving || distance(state.start, input.at) > facts.slopMm;
  const by = (input.at.x - state.start.x) * state.away.x + (input.at.y - state.start.y) * state.away.y;
  const step = input.alt || !facts.snap ? 1 : STEP_MM;
  const offsetMm = moving ? Math.round((state.firstMm + by) / step) * step : state.firstMm;
  if (input.on !== 'up') return { next: { ...state, moving, offsetMm } };
  const select = { keys: [state.id], add: input.add && !moving };
  if (!moving || offsetMm === state.firstMm) return { next: null, select };
  return {
    next: null,
    dispatch: { id: 'dimension.edit', args: { id: state.id, change: { offsetMm } } },
    select,
  };
}
