import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import type { Call } from '../../commands/dispatch';
import type { Station } from '../../model/topology';
import type { BoardPlace, Facts, Input, PointerEventInput, Step, Target } from '../tool';

/** What is slid: a thing with one station, an end of a covering, or a covering as a whole. */
export type Slid =
  | { readonly kind: 'tie' | 'fixing' | 'label'; readonly id: string }
  | { readonly kind: 'covering'; readonly id: string; readonly end: 'from' | 'to' | null };

/** A thing on a run follows the pointer along the runs; it is written once, on release. */
export interface Slide {
  readonly is: 'slide';
  readonly thing: Slid;
  readonly start: Point;
  /** Where it would come to lie; null before it moves. */
  readonly place: BoardPlace | null;
  /** Both ends of a covering that moves, or the end that does with the one that stays. */
  readonly span: { readonly from: Station; readonly to: Station } | null;
  /** Along the covering at which it was taken hold of, mm. */
  readonly heldMm: number;
  readonly moving: boolean;
}

/** Stations snap to this step, mm. */
export const STATION_STEP_MM = 5;
/** How far the pointer may stray from the runs, px of the slop's. */
const REACH_SLOPS = 20;
const NODE_SLOPS = 3;

export function startSlide(input: PointerEventInput, target: Target): Slide | null {
  const thing = slidOf(target);
  if (!thing) return null;
  return {
    is: 'slide',
    thing,
    start: input.at,
    place: null,
    span: null,
    heldMm: target.on === 'covering' ? (target.atMm ?? 0) : 0,
    moving: false,
  };
}

function slidOf(target: Target): Slid | null {
  if (target.on === 'covering') return { kind: 'covering', id: target.id, end: target.end };
  return target.on === 'tie' || target.on === 'fixing' || target.on === 'label'
    ? { kind: target.on, id: target.id }
    : null;
}

export function stepSlide(state: Slide, input: Input, facts: Facts): Step<Slide | null> {
  if (input.on === 'cancel') return { next: null };
  const next = follow(state, input, facts);
  if (input.on !== 'up') return { next };
  if (!next.moving) return { next: null, select: { keys: [state.thing.id], add: input.add } };
  const call = callOf(next, facts);
  return { next: null, ...(call ? { dispatch: call } : {}), select: { keys: [state.thing.id], add: false } };
}

function follow(state: Slide, input: PointerEventInput, facts: Facts): Slide {
  if (!state.moving && distance(state.start, input.at) <= facts.slopMm) return state;
  const found = facts.board?.placeNear(input.at, facts.slopMm * REACH_SLOPS);
  if (!found || !facts.board) return { ...state, moving: true };
  const place = snappedPlace(found, facts, input.alt);
  if (state.thing.kind !== 'covering') return { ...state, moving: true, place };
  const covering = byId(facts.project.coverings).get(state.thing.id);
  if (!covering) return state;
  const station = { segment: place.segment, atMm: place.atMm };
  const { from, to } = covering;
  if (state.thing.end)
    return { ...state, moving: true, place, span: { from, to, [state.thing.end]: station } };
  // As a whole it stays on its segment, where both of its ends lie on one.
  if (from.segment !== to.segment || place.segment !== from.segment) return { ...state, moving: true };
  const [low, high] = [Math.min(from.atMm, to.atMm), Math.max(from.atMm, to.atMm)];
  const free = facts.board.lengthMmOf(from.segment) - high;
  const raw = place.atMm - state.heldMm;
  const step = input.alt || !facts.snap ? 1 : STATION_STEP_MM;
  const by = Math.min(free, Math.max(-low, Math.round(raw / step) * step));
  const shifted = (s: Station): Station => ({ ...s, atMm: s.atMm + by });
  return { ...state, moving: true, place, span: { from: shifted(from), to: shifted(to) } };
}

/** Onto a node when near it, else to a round station; whole millimetres where snapping is off. */
export function snappedPlace(found: BoardPlace, facts: Facts, free: boolean): BoardPlace {
  const length = facts.board?.lengthMmOf(found.segment) ?? 0;
  const reach = facts.slopMm * NODE_SLOPS;
  const step = free || !facts.snap ? 1 : STATION_STEP_MM;
  const atMm =
    found.atMm < reach
      ? 0
      : length - found.atMm < reach
        ? length
        : Math.min(length, Math.max(0, Math.round(found.atMm / step) * step));
  return { ...found, atMm };
}

function callOf({ thing, place, span }: Slide, facts: Facts): Call | null {
  if (thing.kind === 'covering')
    return span && { id: 'covering.edit', args: { id: thing.id, change: { from: span.from, to: span.to } } };
  if (!place) return null;
  const station = { segment: place.segment, atMm: place.atMm };
  switch (thing.kind) {
    case 'tie':
      return { id: 'tie.edit', args: { id: thing.id, change: { station } } };
    case 'fixing':
      return { id: 'fixing.edit', args: { id: thing.id, change: { station } } };
    case 'label': {
      const label = byId(facts.project.labels).get(thing.id);
      if (label?.on.at !== 'station') return null;
      return { id: 'label.edit', args: { id: thing.id, change: { on: { at: 'station', station } } } };
    }
  }
}
