import type { Point } from '../../../base/point';
import { breakoutsOf, inOrder, mean, runsAcross, type Breakout } from './comb-order';
import { fitLengths } from './fit-lengths';
import type { Terminal, Tie } from './terminals';

/** A node to be made, with what sits on it. */
export interface NewNode {
  readonly key: string;
  readonly position: Point;
  readonly terminals: readonly Terminal[];
}

/** Nodes and the runs between them, by key. */
export interface Laid {
  readonly nodes: readonly NewNode[];
  readonly runs: readonly { readonly from: string; readonly to: string }[];
}

/** Room between outlines, for names and for hands, mm. */
const GAP_MM = 20;
const SHORTEST_BRANCH_MM = 60;
const GRID_MM = 5;

/**
 * A first layout of terminals that wires join: a straight trunk in the direction in which they spread on the diagram, in the
 * order of the diagram, the first and the last at its ends, the others on branches to the side on which they stand. Splices
 * sit on the breakout that most of their wires are near. Since branches leave at right angles, one to a side, nothing crosses.
 * Lengths follow the distances on the diagram and the typed lengths, and leave room for the outlines. The first node of the
 * trunk is at 0/0.
 */
export function combLayout(terminals: readonly Terminal[], ties: readonly Tie[]): Laid {
  const leaves = terminals.filter((t) => t.is !== 'splice');
  const splices = terminals.filter((t) => t.is === 'splice');
  // Splices alone have nothing to hang on: they are the leaves.
  const ends = leaves.length >= 2 ? leaves : terminals;
  const inner = leaves.length >= 2 ? splices : [];
  if (ends.length === 1)
    return { nodes: [{ key: 'end 0', position: { x: 0, y: 0 }, terminals: ends }], runs: [] };

  const wide = runsAcross(ends, ties);
  const along = (t: Terminal): number => (wide ? t.at.x : t.at.y);
  const across = (t: Terminal): number => (wide ? t.at.y : t.at.x);
  const ordered = inOrder(ends, along, across);
  const [first, last] = [ordered[0]!, ordered.at(-1)!];
  const breakouts = breakoutsOf(ordered.slice(1, -1), along, across);
  const needsMiddle = breakouts.length === 0 && inner.length > 0;
  const stations: readonly Breakout[] = needsMiddle
    ? [{ teeth: [], at: (along(first) + along(last)) / 2 }]
    : breakouts;

  const runs = [];
  const names = ['start', ...stations.map((_, i) => `breakout ${i}`), 'finish'];
  const least: number[] = [];
  const wanted: number[] = [];
  for (let i = 1; i < names.length; i++) {
    const [a, b] = [stations[i - 2], stations[i - 1]];
    runs.push({ from: names[i - 1]!, to: names[i]! });
    least.push(leastGap(a, b));
    wanted.push((b?.at ?? along(last)) - (a?.at ?? along(first)));
  }
  const middle = mean(ends.map(across));
  const teeth = stations.flatMap((s, i) => s.teeth.map((tooth) => ({ ...tooth, root: `breakout ${i}` })));
  for (const { terminal, root } of teeth) {
    runs.push({ from: root, to: terminal.key });
    least.push(SHORTEST_BRANCH_MM);
    wanted.push(Math.abs(across(terminal) - middle));
  }
  const nameOf = (key: string): string => (key === first.key ? 'start' : key === last.key ? 'finish' : key);
  const lengths = fitLengths(
    runs.map((r, i) => ({
      ...r,
      leastMm: least[i]!,
      wantedMm: Math.ceil(Math.max(least[i]!, wanted[i]!) / GRID_MM) * GRID_MM,
    })),
    ties.flatMap((t) =>
      t.typedMm === undefined ? [] : [{ from: nameOf(t.a), to: nameOf(t.b), lengthMm: t.typedMm }],
    ),
  );

  const turned = (x: number, y: number): Point => (wide ? { x, y } : { x: y, y: x });
  const nodes: NewNode[] = [];
  let x = 0;
  const trunk = names.map((name, i) => {
    if (i > 0) x += lengths[i - 1]!;
    return { name, x };
  });
  const owners = new Map<string, Terminal[]>([['start', [first]], ['finish', [last]]]); // prettier-ignore
  for (const splice of inner) {
    const name = nearestBreakout(splice, trunk, teeth, ties, nameOf);
    owners.set(name, [...(owners.get(name) ?? []), splice]);
  }
  for (const { name, x } of trunk)
    nodes.push({ key: name, position: turned(x, 0), terminals: owners.get(name) ?? [] });
  teeth.forEach(({ terminal, side, root }, k) => {
    const base = trunk.find((t) => t.name === root)!.x;
    const lengthMm = lengths[names.length - 1 + k]!;
    nodes.push({ key: terminal.key, position: turned(base, side * lengthMm), terminals: [terminal] });
  });
  return { nodes, runs };
}

/** Distance of two breakouts, or of one from the end of the trunk, that keeps the outlines apart. */
function leastGap(a: Breakout | undefined, b: Breakout | undefined): number {
  const half = (s: Breakout | undefined): number =>
    Math.max(0, ...(s?.teeth ?? []).map((t) => t.terminal.acrossMm / 2));
  return Math.max(SHORTEST_BRANCH_MM, half(a) + half(b) + GAP_MM);
}

/** The breakout, or the trunk node beside it, that gives the wires of a splice the least length in all. */
function nearestBreakout(
  splice: Terminal,
  trunk: readonly { readonly name: string; readonly x: number }[],
  teeth: readonly { readonly terminal: Terminal; readonly root: string }[],
  ties: readonly Tie[],
  nameOf: (key: string) => string,
): string {
  const place = (key: string): number | undefined => {
    const root = teeth.find((t) => t.terminal.key === key)?.root ?? nameOf(key);
    return trunk.find((t) => t.name === root)?.x;
  };
  const pulls = ties.flatMap((t) => {
    const other = t.a === splice.key ? t.b : t.b === splice.key ? t.a : undefined;
    const at = other === undefined ? undefined : place(other);
    return at === undefined ? [] : [{ at, wires: t.wires }];
  });
  const cost = (x: number): number => pulls.reduce((sum, p) => sum + p.wires * Math.abs(p.at - x), 0);
  const inside = trunk.slice(1, -1);
  return inside.reduce((best, t) => (cost(t.x) < cost(best.x) ? t : best)).name;
}
