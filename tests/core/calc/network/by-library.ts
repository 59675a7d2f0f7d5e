import type { Network } from '@latchwork/core/calc/network/network';
import { Matrix, solve } from 'ml-matrix';

/**
 * The same network by another road: modified nodal analysis with a row for the current of each source and each zero-ohm
 * branch, as a dense unsymmetric system, solved by a general-purpose linear-algebra library (ml-matrix, LU with pivoting).
 * Only for networks in which everything reaches the reference.
 */
export function solveByLibrary(network: Network, reference: string): (node: string) => number {
  const nodes = [
    ...new Set([
      ...network.branches.flatMap((b) => [b.from, b.to]),
      ...network.sources.flatMap((s) => [s.positive, s.negative]),
      ...network.loads.flatMap((l) => [l.from, l.to]),
    ]),
  ].filter((n) => n !== reference);
  const fixed = [
    ...network.sources.map((s) => ({ plus: s.positive, minus: s.negative, v: s.voltageV, ohm: s.innerOhm })),
    ...network.branches.filter((b) => b.ohm === 0).map((b) => ({ plus: b.from, minus: b.to, v: 0, ohm: 0 })),
  ];
  const n = nodes.length;
  const a = Matrix.zeros(n + fixed.length, n + fixed.length);
  const b = Matrix.zeros(n + fixed.length, 1);
  const at = (name: string): number => nodes.indexOf(name);
  const add = (i: number, j: number, v: number): void => {
    if (i >= 0 && j >= 0) a.set(i, j, a.get(i, j) + v);
  };
  const conduct = (from: string, to: string, g: number): void => {
    add(at(from), at(from), g);
    add(at(to), at(to), g);
    add(at(from), at(to), -g);
    add(at(to), at(from), -g);
  };
  for (const r of network.branches) if (r.ohm > 0) conduct(r.from, r.to, 1 / r.ohm);
  for (const l of network.loads) {
    if (l.draws === 'resistance') conduct(l.from, l.to, 1 / l.ohm);
    else {
      if (at(l.from) >= 0) b.set(at(l.from), 0, b.get(at(l.from), 0) - l.currentA);
      if (at(l.to) >= 0) b.set(at(l.to), 0, b.get(at(l.to), 0) + l.currentA);
    }
  }
  fixed.forEach((f, k) => {
    const row = n + k;
    add(row, at(f.plus), 1);
    add(row, at(f.minus), -1);
    add(at(f.plus), row, -1);
    add(at(f.minus), row, 1);
    a.set(row, row, f.ohm);
    b.set(row, 0, f.v);
  });
  const x = solve(a, b);
  return (node) => (node === reference ? 0 : x.get(at(node), 0));
}
