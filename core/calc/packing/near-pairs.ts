import type { Arrangement } from './arrangement';

/** Up to this many circles every pair is looked at: sorting into cells would cost more than it saves. */
const ALL_PAIRS_UP_TO = 40;

/** Pairs of circles with a gap below `reachGap`, as i0, k0, i1, k1 ... Found through square cells, else all pairs. */
export function nearPairs({ radii, xy }: Arrangement, reachGap: number): Int32Array {
  const n = radii.length;
  const pairs: number[] = [];
  const look = (i: number, k: number): void => {
    const dx = xy[2 * i]! - xy[2 * k]!;
    const dy = xy[2 * i + 1]! - xy[2 * k + 1]!;
    const reach = radii[i]! + radii[k]! + reachGap;
    if (dx * dx + dy * dy < reach * reach) pairs.push(i, k);
  };
  if (n <= ALL_PAIRS_UP_TO) {
    for (let i = 0; i < n; i++) for (let k = i + 1; k < n; k++) look(i, k);
    return Int32Array.from(pairs);
  }
  const cell = 2 * Math.max(...radii) + reachGap;
  const cells = new Map<number, number[]>();
  const column = (v: number): number => Math.floor(v / cell);
  const key = (cx: number, cy: number): number => cx * 65536 + cy;
  for (let i = 0; i < n; i++) {
    const cx = column(xy[2 * i]!);
    const cy = column(xy[2 * i + 1]!);
    for (let gx = cx - 1; gx <= cx + 1; gx++)
      for (let gy = cy - 1; gy <= cy + 1; gy++) for (const k of cells.get(key(gx, gy)) ?? []) look(k, i);
    const here = cells.get(key(cx, cy));
    if (here) here.push(i);
    else cells.set(key(cx, cy), [i]);
  }
  return Int32Array.from(pairs);
}
