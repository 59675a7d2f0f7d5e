import { byId } from '../../../base/by-id';
import { distance, type Point } from '../../../base/point';
import { isMatingHalf } from '../../../model/parts/part';
import type { Project } from '../../../model/project';
import type { Wire } from '../../../model/wire';
import { symbolBox } from '../../symbol';
import { bodyOutline } from '../body-outline';

/** Something at which wires end: a connector, a splice, or free ends that lie together. */
export interface Terminal {
  readonly key: string;
  readonly is: 'connector' | 'splice' | 'free';
  /** Of the connector or splice; of free ends the wires with the end that lies there. */
  readonly id: string;
  readonly ends: readonly { readonly wire: string; readonly end: 0 | 1 }[];
  /** Middle on the diagram, mm. */
  readonly at: Point;
  /** Equipment that it is on, or plugs into. */
  readonly equipment: readonly string[];
  /** Its node, where it is laid out already. */
  readonly node: string | undefined;
  readonly acrossMm: number;
  readonly alongMm: number;
}

/** Wires between two terminals. */
export interface Tie {
  readonly a: string;
  readonly b: string;
  readonly wires: number;
  /** Longest route that a typed length among them leaves room for, mm. */
  readonly typedMm: number | undefined;
}

/** Free ends nearer to each other on the diagram than this end together, mm. */
const TOGETHER_MM = 30;
const FREE_END = { acrossMm: 10, alongMm: 15, equipment: [] } as const;

/**
 * All terminals in the order of the project, and what runs between them. `besideMm` is what a wire needs besides its route.
 */
export function terminalsOf(
  project: Project,
  besideMm: (wire: string) => number,
): {
  readonly terminals: readonly Terminal[];
  readonly ties: readonly Tie[];
} {
  const out = new Map<string, Terminal>();
  const ties = new Map<string, Tie>();
  for (const wire of project.wires) {
    const [a, b] = [0, 1].map((end) => terminalAt(project, wire, end as 0 | 1, out)) as [string, string];
    if (a === b) continue;
    const key = a < b ? `${a} ${b}` : `${b} ${a}`;
    const known = ties.get(key);
    const own = wire.lengthMm === undefined ? undefined : wire.lengthMm - besideMm(wire.id);
    const typed = [known?.typedMm, own].filter((mm) => mm !== undefined);
    ties.set(key, {
      a: a < b ? a : b,
      b: a < b ? b : a,
      wires: (known?.wires ?? 0) + 1,
      typedMm: typed.length > 0 ? Math.max(...typed) : undefined,
    });
  }
  return { terminals: [...out.values()], ties: [...ties.values()] };
}

function terminalAt(project: Project, wire: Wire, end: 0 | 1, out: Map<string, Terminal>): string {
  const e = wire.ends[end];
  if (e.at === 'cavity') {
    if (!out.has(e.connector)) out.set(e.connector, connectorTerminal(project, e.connector));
    return e.connector;
  }
  if (e.at === 'splice') {
    const splice = byId(project.splices).get(e.splice);
    if (!out.has(e.splice))
      out.set(e.splice, {
        ...FREE_END,
        key: e.splice,
        is: 'splice',
        id: e.splice,
        ends: [],
        at: splice?.position ?? { x: 0, y: 0 },
        node: splice?.node,
      });
    return e.splice;
  }
  const near = [...out.values()].find(
    (t) => t.is === 'free' && t.node === e.node && distance(t.at, e.position) <= TOGETHER_MM,
  );
  const key = near?.key ?? `free ${wire.id} ${end}`;
  const ends = [...(near?.ends ?? []), { wire: wire.id, end }];
  out.set(key, { ...FREE_END, key, is: 'free', id: key, ends, at: near?.at ?? e.position, node: e.node });
  return key;
}

function connectorTerminal(project: Project, id: string): Terminal {
  const connector = byId(project.connectors).get(id);
  const part = byId(project.parts).get(connector?.part ?? '');
  const half = isMatingHalf(part) ? part : undefined;
  const box = connector && symbolBox(connector, half);
  return {
    key: id,
    is: 'connector',
    id,
    ends: [],
    at: box ? { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 } : { x: 0, y: 0 },
    equipment: equipmentOf(project, id),
    node: connector?.node,
    ...bodyOutline(half),
  };
}

function equipmentOf({ connectors, mates }: Project, id: string): readonly string[] {
  const own = [id, ...mates.flatMap((m) => (m.a === id ? [m.b] : m.b === id ? [m.a] : []))];
  return [...new Set(own.flatMap((c) => byId(connectors).get(c)?.equipment ?? []))];
}

/** Sets that lead to the same equipment, as one: their wires run in one harness. */
export function bundledSets(sets: readonly (readonly Terminal[])[]): readonly (readonly Terminal[])[] {
  const out: Terminal[][] = [];
  for (const set of sets) {
    const here = new Set(set.flatMap((t) => t.equipment));
    const meeting = out.filter((o) => o.some((t) => t.equipment.some((e) => here.has(e))));
    const [first, ...others] = meeting;
    if (!first) out.push([...set]);
    else {
      first.push(...others.flat(), ...set);
      for (const o of others) out.splice(out.indexOf(o), 1);
    }
  }
  return out;
}

/** Terminals that wires join, directly or over others, set by set. */
export function wiredSets(
  terminals: readonly Terminal[],
  ties: readonly Tie[],
): readonly (readonly Terminal[])[] {
  const set = new Map(terminals.map((t) => [t.key, [t]]));
  for (const { a, b } of ties) {
    const [one, other] = [set.get(a)!, set.get(b)!];
    if (one === other) continue;
    one.push(...other);
    for (const t of other) set.set(t.key, one);
  }
  return [...new Set(terminals.map((t) => set.get(t.key)!))];
}
