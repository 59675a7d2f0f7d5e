/** Scales of ISO 5455, large to small. */
const SCALES = [
  50,
  20,
  10,
  5,
  2,
  1,
  1 / 2,
  1 / 5,
  1 / 10,
  1 / 20,
  1 / 50,
  1 / 100,
  1 / 200,
  1 / 500,
  1 / 1000,
] as const;

/** The wanted scale where it fits, else the largest scale of ISO 5455 that does. */
export function scaleThatFits(wanted: number, most: number): number {
  if (wanted <= most) return wanted;
  return SCALES.find((s) => s <= most) ?? most;
}

/** Paper to truth: "1:2", "5:1". */
export function scaleText(scale: number): string {
  return scale >= 1 ? `${rounded(scale)}:1` : `1:${rounded(1 / scale)}`;
}

const rounded = (x: number): number => Math.round(x * 100) / 100;
