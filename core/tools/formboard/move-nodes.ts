import { byId } from '../../base/by-id';
import { distance, type Point } from '../../base/point';
import { segmentsByNode } from '../../derive/formboard/board-angle';
import { heldMoves, type HeldMoves } from '../../derive/formboard/held-moves';
import type { Project } from '../../model/project';
import { keyOfTarget, type Facts, type Input, type PointerEventInput, type Step } from '../tool';
import { guided, type Guide } from './guides';

/** Nodes follow the pointer, and the lengths of their segments with them; written once, on release. */
export interface MoveNodes {
  readonly is: 'move-nodes';
  readonly from: Point;
  /** What moves, with the places it comes from. The first one is held and snaps. */
  readonly nodes: readonly { readonly id: string; readonly at: Point }[];
  readonly by: Point;
  /** Where they come to lie, locked lengths kept; null before they move or where locked lengths hold them. */
  readonly held: HeldMoves | null;
  readonly refused: string | null;
  readonly guides: readonly Guide[];
  readonly moving: boolean;
  readonly click: string;
}

const STILL: Point = { x: 0, y: 0 };

/** Starts with the pressed node or segment and, where it is selected, all that is selected with it. */
export function startMoveNodes(input: PointerEventInput, facts: Facts): Step<MoveNodes | null> {
  const key = keyOfTarget(input.target);
  if (key === null) return { next: null };
  const selected = facts.selection.has(key);
  const keys = selected || input.add ? [key, ...facts.selection] : [key];
  const ids = nodesOfKeys(facts.project, keys);
  const nodes = byId(facts.project.nodes);
  const next: MoveNodes = {
    is: 'move-nodes',
    from: input.at,
    nodes: ids.flatMap((id) => {
      const node = nodes.get(id);
      return node ? [{ id, at: node.position }] : [];
    }),
    by: STILL,
    held: null,
    refused: null,
    guides: [],
    moving: false,
    click: key,
  };
  if (selected && !input.add) return { next };
  return { next: input.add && selected ? null : next, select: { keys: [key], add: input.add } };
}

/** The nodes that keys mean: nodes themselves, and both ends of segments. */
export function nodesOfKeys(project: Project, keys: Iterable<string>): readonly string[] {
  const out = new Set<string>();
  const nodes = byId(project.nodes);
  const segments = byId(project.segments);
  for (const key of keys) {
    const segment = segments.get(key);
    if (nodes.has(key)) out.add(key);
    else if (segment) for (const id of [segment.from, segment.to]) out.add(id);
  }
  return [...out];
}

export function stepMoveNodes(state: MoveNodes, input: Input, facts: Facts): Step<MoveNodes | null> {
  if (input.on === 'cancel') return { next: null };
  const next = follow(state, input, facts);
  if (input.on !== 'up') return { next };
  if (!next.moving)
    return input.add ? { next: null } : { next: null, select: { keys: [state.click], add: false } };
  if (next.by.x === 0 && next.by.y === 0) return { next: null };
  if (next.refused !== null) return { next: null, refuse: { at: input.at, reason: next.refused } };
  return { next: null, dispatch: { id: 'nodes.move', args: { moves: movesOf(next) } } };
}

const movesOf = ({ nodes, by }: Pick<MoveNodes, 'nodes' | 'by'>): { id: string; to: Point }[] =>
  nodes.map(({ id, at }) => ({ id, to: { x: at.x + by.x, y: at.y + by.y } }));

function follow(state: MoveNodes, input: PointerEventInput, facts: Facts): MoveNodes {
  const raw = { x: input.at.x - state.from.x, y: input.at.y - state.from.y };
  if (!state.moving && distance(STILL, raw) <= facts.slopMm) return state;
  const [held] = state.nodes;
  if (!held) return state;
  const wanted = { x: held.at.x + raw.x, y: held.at.y + raw.y };
  const to = facts.snap && !input.alt ? snapTo(wanted, state, facts) : { at: wanted, guides: [] };
  const by = { x: to.at.x - held.at.x, y: to.at.y - held.at.y };
  const result = heldMoves(facts.project, movesOf({ nodes: state.nodes, by }));
  return {
    ...state,
    moving: true,
    by,
    guides: result.ok && lands(result.value, held.id, to.at) ? to.guides : [],
    held: result.ok ? result.value : state.held,
    refused: result.ok ? null : result.problem,
  };
}

const lands = (held: HeldMoves, id: string, at: Point): boolean =>
  distance(held.nodes.get(id) ?? at, at) < 1e-6;

/** How near a level or a ray must be, px of the slop's. */
const REACH_SLOPS = 2;

function snapTo(wanted: Point, state: MoveNodes, facts: Facts): { at: Point; guides: readonly Guide[] } {
  const moving = new Set(state.nodes.map((n) => n.id));
  const held = state.nodes[0]?.id ?? '';
  const nodes = byId(facts.project.nodes);
  const neighbours = (segmentsByNode(facts.project.segments).get(held) ?? []).flatMap((s) => {
    const start = s.from === held;
    const other = start ? s.to : s.from;
    if (moving.has(other)) return [];
    const bend = start ? s.via?.[0] : s.via?.at(-1);
    return bend ?? nodes.get(other)?.position ?? [];
  });
  const others = facts.project.nodes.filter((n) => !moving.has(n.id)).map((n) => n.position);
  return guided(wanted, neighbours, others, facts.slopMm * REACH_SLOPS);
}
