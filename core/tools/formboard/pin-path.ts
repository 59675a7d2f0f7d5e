import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import { pathThrough } from '../../derive/formboard/wire-path';
import type { Facts, Input, PointerEventInput, Step } from '../tool';

/** Segments that wires must pass are clicked one after the other; Enter lays the wires on the way through them. */
export interface PinPath {
  readonly is: 'pin-path';
  readonly wires: readonly string[];
  readonly through: readonly string[];
  /** The way through them, or null where there is none. */
  readonly path: readonly string[] | null;
  readonly at: Point;
}

export function startPinPath(input: PointerEventInput, facts: Facts): Step<PinPath | null> {
  const known = byId(facts.project.wires);
  const wires = [...facts.selection].filter((key) => known.has(key));
  if (wires.length === 0)
    return {
      next: null,
      refuse: { at: input.at, reason: 'Select a wire first, then click the runs it takes.' },
    };
  return stepPinPath({ is: 'pin-path', wires, through: [], path: null, at: input.at }, input, facts);
}

export function stepPinPath(state: PinPath, input: Input, facts: Facts): Step<PinPath | null> {
  if (input.on === 'cancel') return { next: null };
  if (input.on !== 'down') return { next: { ...state, at: input.at } };
  // What lies on a run means the run here.
  const { target } = input;
  const run =
    target.on === 'segment' ? target.id : facts.board?.placeNear(input.at, facts.slopMm * 4)?.segment;
  const [first] = state.wires;
  const wire = first === undefined ? undefined : byId(facts.project.wires).get(first);
  if (run === undefined || !wire || !facts.board)
    return {
      next: state,
      refuse: { at: input.at, reason: 'Click the runs that the wire takes; Enter lays it there.' },
    };
  const through = state.through.includes(run)
    ? state.through.filter((id) => id !== run)
    : [...state.through, run];
  const path = pathThrough(facts.project, facts.board.router, wire, through);
  if (path === null && through.length > state.through.length)
    return {
      next: state.through.length ? state : null,
      refuse: { at: input.at, reason: `${wire.designator} cannot pass there without going back on itself.` },
    };
  return { next: { ...state, through, path, at: input.at } };
}

/** Lays the wires on the path; without a chosen run they take the shortest way again. */
export function finishPinPath({ wires, through, path }: PinPath): Step<null> {
  if (through.length === 0 || path === null) return { next: null };
  return { next: null, dispatch: { id: 'wire.pin-path', args: { wires: [...wires], path: [...path] } } };
}
