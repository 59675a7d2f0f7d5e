import { byId } from '../base/by-id';
import { add, distance, type Point } from '../base/point';
import type { Project } from '../model/project';
import { mateOffer, type MateOffer } from './mate-drop';
import { snapped } from './snap';
import { keyOfTarget, type Facts, type Input, type PointerEventInput, type Step } from './tool';

/** Objects follow the pointer; they are written once, on release. */
export interface Move {
  readonly is: 'move';
  readonly from: Point;
  /** What moves, with the places it comes from. The first one is held and lands on the grid. */
  readonly objects: readonly { readonly id: string; readonly at: Point }[];
  readonly by: Point;
  readonly moving: boolean;
  /** Key that a click without movement selects alone. */
  readonly click: string;
  readonly offer: MateOffer | null;
}

const STILL: Point = { x: 0, y: 0 };

/** Starts with the pressed object and, where it is selected, all that is selected with it. */
export function startMove(input: PointerEventInput, facts: Facts): Step<Move | null> {
  const key = keyOfTarget(input.target);
  const at = key === null ? undefined : placeOf(facts.project, key);
  if (key === null || !at) return { next: null };
  const held = facts.selection.has(key);
  const others = held || input.add ? [...facts.selection].filter((k) => k !== key) : [];
  const objects = [key, ...others].flatMap((id) => {
    const place = placeOf(facts.project, id);
    return place ? [{ id, at: place }] : [];
  });
  const next: Move = {
    is: 'move',
    from: input.at,
    objects,
    by: STILL,
    moving: false,
    click: key,
    offer: null,
  };
  if (held && !input.add) return { next };
  return { next: input.add && held ? null : next, select: { keys: [key], add: input.add } };
}

export function stepMove(state: Move, input: Input, facts: Facts): Step<Move | null> {
  if (input.on === 'cancel') return { next: null };
  const next = follow(state, input, facts);
  if (input.on !== 'up') return { next };
  if (!next.moving)
    return input.add ? { next: null } : { next: null, select: { keys: [state.click], add: false } };
  const moves = next.objects.map((o) => ({ id: o.id, to: add(o.at, next.by) }));
  const held = moves[0];
  if (next.offer && held) {
    const { partner, to, reason } = next.offer;
    const args = { a: held.id, b: partner, moves: [{ id: held.id, to }] };
    if (reason === null) return { next: null, dispatch: { id: 'mate.add', args } };
    return {
      next: null,
      dispatch: { id: 'objects.move', args: { moves } },
      ask: {
        at: input.at,
        reason,
        anyway: { label: 'Keep anyway', call: { id: 'mate.add', args: { ...args, insist: true } } },
      },
    };
  }
  if (next.by.x === 0 && next.by.y === 0) return { next: null };
  return { next: null, dispatch: { id: 'objects.move', args: { moves } } };
}

function follow(state: Move, input: PointerEventInput, facts: Facts): Move {
  const raw = { x: input.at.x - state.from.x, y: input.at.y - state.from.y };
  if (!state.moving && distance(STILL, raw) <= facts.slopMm) return state;
  const held = state.objects[0];
  if (!held) return state;
  const to = snapped(add(held.at, raw), facts.snap && !input.alt);
  const by = { x: to.x - held.at.x, y: to.y - held.at.y };
  const connector = state.objects.length === 1 ? byId(facts.project.connectors).get(held.id) : undefined;
  return { ...state, moving: true, by, offer: connector ? mateOffer(facts.project, connector, to) : null };
}

/** Where a movable object lies, or undefined. */
export function placeOf(project: Project, id: string): Point | undefined {
  for (const list of [project.connectors, project.equipment, project.splices, project.nodes]) {
    const object = byId<{ id: string; position: Point }>(list).get(id);
    if (object) return object.position;
  }
  return undefined;
}
