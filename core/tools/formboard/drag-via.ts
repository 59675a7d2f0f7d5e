import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import { GRID_MM, snapped } from '../snap';
import type { Facts, Input, PointerEventInput, Step } from '../tool';
import { guided, type Guide } from './guides';

/** A bend of a segment follows the pointer. */
export interface DragVia {
  readonly is: 'drag-via';
  readonly segment: string;
  readonly index: number;
  readonly start: Point;
  readonly at: Point;
  readonly guides: readonly Guide[];
  readonly moving: boolean;
}

export const startDragVia = (input: PointerEventInput, segment: string, index: number): DragVia => ({
  is: 'drag-via',
  segment,
  index,
  start: input.at,
  at: input.at,
  guides: [],
  moving: false,
});

export function stepDragVia(state: DragVia, input: Input, facts: Facts): Step<DragVia | null> {
  if (input.on === 'cancel') return { next: null };
  const next = follow(state, input, facts);
  if (input.on !== 'up') return { next };
  const segment = byId(facts.project.segments).get(state.segment);
  if (!next.moving || !segment?.via) return { next: null, select: { keys: [state.segment], add: input.add } };
  const via = segment.via.map((p, i) => (i === state.index ? next.at : p));
  return { next: null, dispatch: { id: 'segment.edit', args: { id: segment.id, change: { via } } } };
}

function follow(state: DragVia, input: PointerEventInput, facts: Facts): DragVia {
  if (!state.moving && distance(state.start, input.at) <= facts.slopMm) return state;
  if (!facts.snap || input.alt) return { ...state, moving: true, at: snapped(input.at, false), guides: [] };
  const segment = byId(facts.project.segments).get(state.segment);
  const nodes = byId(facts.project.nodes);
  const ends = segment ? [nodes.get(segment.from)?.position, nodes.get(segment.to)?.position] : [];
  const line = [ends[0], ...(segment?.via ?? []), ends[1]];
  const beside = [line[state.index], line[state.index + 2]].filter((p) => p !== undefined);
  const { at, guides } = guided(input.at, beside, beside, Math.max(facts.slopMm * 2, GRID_MM / 2));
  return { ...state, moving: true, at, guides };
}
