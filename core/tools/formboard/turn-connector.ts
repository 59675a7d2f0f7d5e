import { distance, type Point } from '../../base/point';
import type { Facts, Input, PointerEventInput, Step } from '../tool';
import { directionDeg, snappedDeg } from './angle-snap';

/** A connector is turned about its node; with Shift to any angle. */
export interface TurnConnector {
  readonly is: 'turn-connector';
  readonly id: string;
  readonly centre: Point;
  readonly start: Point;
  readonly deg: number;
  readonly moving: boolean;
}

export function startTurnConnector(
  input: PointerEventInput,
  id: string,
  facts: Facts,
): Step<TurnConnector | null> {
  const centre = facts.board?.placeOf(id);
  if (!centre) return { next: null, select: { keys: [id], add: input.add } };
  const deg = directionDeg(centre, input.at);
  return { next: { is: 'turn-connector', id, centre, start: input.at, deg, moving: false } };
}

export function stepTurnConnector(
  state: TurnConnector,
  input: Input,
  facts: Facts,
): Step<TurnConnector | null> {
  if (input.on === 'cancel') return { next: null };
  const moving = state.moving || distance(state.start, input.at) > facts.slopMm;
  const free = input.shift === true || input.alt;
  const deg = moving ? snappedDeg(directionDeg(state.centre, input.at), !free) : state.deg;
  if (input.on !== 'up') return { next: { ...state, moving, deg } };
  if (!moving) return { next: null, select: { keys: [state.id], add: input.add } };
  return {
    next: null,
    dispatch: { id: 'connector.turn', args: { ids: [state.id], toDeg: deg } },
    select: { keys: [state.id], add: false },
  };
}
