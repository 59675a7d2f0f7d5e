import type { Point } from '../base/point';
import { symbolOf } from '../derive/symbol';
import type { MatingHalf } from '../model/parts/part';

/** Something to be put on the sheet. Members of one place (the connectors of a board) stay together. */
export interface Item {
  readonly name: string;
  /** Equipment that carries it. */
  readonly on: string | undefined;
  /** Absent for a splice. */
  readonly part?: MatingHalf | undefined;
}

export interface Placed {
  readonly position: Point;
  readonly exit: 'left' | 'right';
}

export interface Arrangement {
  readonly items: ReadonlyMap<string, Placed>;
  readonly equipment: ReadonlyMap<string, { position: Point; widthMm: number; heightMm: number }>;
}

const COLUMN_MM = 140;
const GAP_MM = 18;
const PADDING_MM = 8;
const NAME_MM = 10;
const SPLICE_MM = 12;

/**
 * A first arrangement to be tidied by hand: what is joined stands in neighbouring columns (breadth first from the
 * item that comes first), the connectors of one piece of equipment below each other inside its outline (mm).
 */
export function arrange(items: readonly Item[], joints: readonly (readonly [string, string])[]): Arrangement {
  const groupOf = new Map(items.map((i) => [i.name, i.on === undefined ? `item ${i.name}` : `on ${i.on}`]));
  const columns = columnsOf([...new Set(groupOf.values())], neighbours(groupOf, joints));
  const columnOf = (name: string): number => columns.get(groupOf.get(name) ?? '') ?? 0;
  const lean = new Map<string, number>();
  for (const [a, b] of joints) {
    const step = Math.sign(columnOf(b) - columnOf(a));
    lean.set(a, (lean.get(a) ?? 0) + step);
    lean.set(b, (lean.get(b) ?? 0) - step);
  }
  const placed = new Map<string, Placed>();
  const equipment = new Map<string, { position: Point; widthMm: number; heightMm: number }>();
  const nextY = new Map<number, number>();
  for (const [group, column] of columns) {
    const members = items.filter((i) => groupOf.get(i.name) === group);
    const on = members[0]?.on;
    const inset = on === undefined ? 0 : PADDING_MM;
    const top = nextY.get(column) ?? 0;
    let y = top + (on === undefined ? 0 : inset + NAME_MM);
    let widthMm = 0;
    for (const item of members) {
      const exit = (lean.get(item.name) ?? 0) < 0 ? 'left' : 'right';
      const size = item.part
        ? symbolOf(item.part, { exit, view: 'mating-face' })
        : { widthMm: SPLICE_MM, heightMm: SPLICE_MM };
      placed.set(item.name, { position: { x: column * COLUMN_MM + inset, y }, exit });
      widthMm = Math.max(widthMm, size.widthMm);
      y += size.heightMm + GAP_MM;
    }
    const bottom = y - GAP_MM + inset;
    if (on !== undefined)
      equipment.set(on, {
        position: { x: column * COLUMN_MM, y: top },
        widthMm: widthMm + 2 * inset,
        heightMm: bottom - top,
      });
    nextY.set(column, bottom + GAP_MM);
  }
  return { items: placed, equipment };
}

function neighbours(
  groupOf: ReadonlyMap<string, string>,
  joints: readonly (readonly [string, string])[],
): ReadonlyMap<string, ReadonlySet<string>> {
  const out = new Map<string, Set<string>>();
  for (const [a, b] of joints)
    for (const [from, to] of [
      [groupOf.get(a), groupOf.get(b)],
      [groupOf.get(b), groupOf.get(a)],
    ] as const) {
      // prettier-ignore
      if (from === undefined || to === undefined) continue;
      const list = out.get(from);
      if (list) list.add(to);
      else out.set(from, new Set([to]));
    }
  return out;
}

/** Steps from the first group of each connected set, in the order of the walk. */
function columnsOf(
  groups: readonly string[],
  next: ReadonlyMap<string, ReadonlySet<string>>,
): ReadonlyMap<string, number> {
  const out = new Map<string, number>();
  for (const start of groups) {
    if (out.has(start)) continue;
    out.set(start, 0);
    const queue = [start];
    for (const group of queue)
      for (const other of next.get(group) ?? [])
        if (!out.has(other)) {
          out.set(other, (out.get(group) ?? 0) + 1);
          queue.push(other);
        }
  }
  return out;
}
