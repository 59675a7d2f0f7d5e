import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import type { Datum, Dimension } from '../../model/topology';
import type { Facts, Input, PointerEventInput, Step, Target } from '../tool';
import { snappedPlace } from './slide';

/** Datums are clicked one after the other; Enter, or a second click on the last one, ends. */
export interface DrawDimension {
  readonly is: 'draw-dimension';
  readonly form: Dimension['form'];
  readonly datums: readonly Datum[];
  /** What the pointer would add. */
  readonly over: Datum | null;
  readonly at: Point;
}

/** Distance of a new dimension line from what it measures, mm. */
export const FIRST_OFFSET_MM = 25;

export function startDrawDimension(
  input: PointerEventInput,
  facts: Facts,
  form: Dimension['form'] = 'chain',
): Step<DrawDimension | null> {
  const datum = datumAt(input, facts);
  if (!datum)
    return {
      next: null,
      refuse: { at: input.at, reason: 'A dimension starts at a node, a connector or a run.' },
    };
  return { next: { is: 'draw-dimension', form, datums: [datum], over: null, at: input.at } };
}

export function stepDrawDimension(
  state: DrawDimension,
  input: Input,
  facts: Facts,
): Step<DrawDimension | null> {
  if (input.on === 'cancel') return { next: null };
  const over = datumAt(input, facts);
  if (input.on !== 'down') return { next: { ...state, over, at: input.at } };
  const last = state.datums.at(-1);
  if (over && last && sameDatum(over, last)) return finishDimension(state);
  if (!over)
    return {
      next: state,
      refuse: { at: input.at, reason: 'Click a node, a connector or a run; Enter ends the dimension.' },
    };
  return { next: { ...state, datums: [...state.datums, over], over: null, at: input.at } };
}

/** Ends the dimension; nothing is made of a single datum. */
export function finishDimension({ form, datums }: DrawDimension): Step<null> {
  if (datums.length < 2) return { next: null };
  return {
    next: null,
    dispatch: { id: 'dimension.add', args: { form, datums: [...datums], offsetMm: FIRST_OFFSET_MM } },
  };
}

function datumAt(input: PointerEventInput, facts: Facts): Datum | null {
  const at = datumOf(input.target);
  if (at) return at;
  const found = facts.board?.placeNear(input.at, facts.slopMm * 3);
  if (!found) return null;
  const { segment, atMm } = snappedPlace(found, facts, input.alt);
  const run = byId(facts.project.segments).get(segment);
  // The ends of a run are its nodes.
  if (run && atMm === 0) return { at: 'node', node: run.from };
  if (run && atMm === facts.board?.lengthMmOf(segment)) return { at: 'node', node: run.to };
  return { at: 'station', station: { segment, atMm } };
}

function datumOf(target: Target): Datum | null {
  if (target.on === 'node') return { at: 'node', node: target.id };
  return target.on === 'turning' ? { at: 'connector', connector: target.id } : null;
}

export const sameDatum = (a: Datum, b: Datum): boolean =>
  (a.at === 'node' && b.at === 'node' && a.node === b.node) ||
  (a.at === 'connector' && b.at === 'connector' && a.connector === b.connector) ||
  (a.at === 'station' &&
    b.at === 'station' &&
    a.station.segment === b.station.segment &&
    a.station.atMm === b.station.atMm);
