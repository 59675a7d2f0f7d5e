/**
 * Circles under way to a packing: centres as x0, y0, x1, y1 ... and their radii, in one unit of length. The picture's
 * centre is the origin.
 */
export interface Arrangement {
  readonly radii: Float64Array;
  readonly xy: Float64Array;
}

/**
 * Makes an arrangement true: moved apart by one factor until no two circles overlap (a hair is added for the last bit
 * of the arithmetic), and measured. Whatever came before was only an approximation; this is where "no overlap" and
 * "all inside" become exact.
 */
export function trueUp({ radii, xy }: Arrangement): { readonly xy: Float64Array; readonly radius: number } {
  const n = radii.length;
  let worst = 0;
  for (let i = 0; i < n; i++)
    for (let k = i + 1; k < n; k++) {
      const dx = xy[2 * i]! - xy[2 * k]!;
      const dy = xy[2 * i + 1]! - xy[2 * k + 1]!;
      const reach = radii[i]! + radii[k]!;
      const ratio = (reach * reach) / (dx * dx + dy * dy);
      if (ratio > worst) worst = ratio;
    }
  const factor = Math.max(Math.sqrt(worst), 1) * (1 + 1e-12);
  const out = xy.map((v) => v * factor);
  let radius = 0;
  for (let i = 0; i < n; i++) radius = Math.max(radius, Math.hypot(out[2 * i]!, out[2 * i + 1]!) + radii[i]!);
  return { xy: out, radius: radius * (1 + 1e-15) };
}
