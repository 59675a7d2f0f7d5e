import type { Curve } from './curve';

/** Where a wire leaves an object: a point on its outline and the side it leaves to. */
export interface Mouth {
  readonly x: number;
  readonly y: number;
  readonly side: -1 | 1;
}

/** Distance between the wires of a ribbon, mm. */
const LANE_MM = 1.7;
const FAN_MIN_MM = 9;
const FAN_MAX_MM = 26;
const PULL_MIN_MM = 13;
const PULL_MAX_MM = 54;

/** How far a curve runs straight out before it turns, mm. */
const pullOf = (dx: number, dy: number): number =>
  Math.max(PULL_MIN_MM, Math.min(PULL_MAX_MM, Math.abs(dx) * 0.5 + Math.abs(dy) * 0.08));

/** One wire alone: leaves along the axis of its cavity, arrives along the axis of the other. */
export function singleCurve(a: Mouth, b: Mouth): Curve {
  const k = pullOf(b.x - a.x, b.y - a.y);
  return Float64Array.of(a.x, a.y, a.x + a.side * k, a.y, b.x + b.side * k, b.y, b.x, b.y);
}

/**
 * Wires that run from the same side of one connector to the same side of another are gathered: each fans in from its
 * cavity to a lane of the ribbon, and out again. Given in any order, answered in that order.
 */
export function ribbonCurves(wires: readonly { readonly a: Mouth; readonly b: Mouth }[]): readonly Curve[] {
  const n = wires.length;
  if (n === 1) return wires.map((w) => singleCurve(w.a, w.b));
  const order = wires.map((_, i) => i).sort((i, j) => top(wires, i) - top(wires, j));
  const lane = new Array<number>(n);
  order.forEach((wire, place) => (lane[wire] = place - (n - 1) / 2));
  const [a, b] = [trunk(wires.map((w) => w.a)), trunk(wires.map((w) => w.b))];
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const k = pullOf(dx, dy);
  const turnsBack = a.side === b.side;
  return wires.map((w, i) => {
    const off = (lane[i] as number) * LANE_MM;
    // Lanes keep their distance round the bends: the outer one turns later.
    const late = turnsBack ? -a.side * off * Math.sign(dy || 1) : -off * Math.sign(dy);
    const ya = a.y + off;
    const yb = b.y + (turnsBack ? -off : off);
    const xa = a.x + a.side * a.fan;
    const xb = b.x + b.side * b.fan;
    return Float64Array.of(
      w.a.x, w.a.y,
      w.a.x + a.side * a.fan * 0.62, w.a.y, xa - a.side * a.fan * 0.38, ya, xa, ya,
      xa + a.side * k + late, ya, xb + b.side * k + late, yb, xb, yb,
      xb - b.side * b.fan * 0.38, yb, w.b.x + b.side * b.fan * 0.62, w.b.y, w.b.x, w.b.y,
    ); // prettier-ignore
  });
}

const top = (wires: readonly { readonly a: Mouth; readonly b: Mouth }[], i: number): number => {
  const w = wires[i];
  return w ? w.a.y + w.b.y * 1e-4 : 0;
};

function trunk(mouths: readonly Mouth[]): Mouth & { readonly fan: number } {
  const ys = mouths.map((m) => m.y);
  const spread = Math.max(...ys) - Math.min(...ys);
  const first = mouths[0] ?? { x: 0, y: 0, side: 1 };
  const fan = Math.min(FAN_MAX_MM, FAN_MIN_MM + spread * 0.38);
  return { x: first.x, y: (Math.max(...ys) + Math.min(...ys)) / 2, side: first.side, fan };
}
