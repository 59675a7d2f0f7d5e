import type { Arrangement } from './arrangement';

const GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

/**
 * Circles on a sunflower spiral in the order given, each circle as far out as the area before it demands (Vogel, "A
 * better way to construct the sunflower head", Mathematical Biosciences 44, 1979). They overlap: tighten them.
 */
export function sunflower(radii: Float64Array, order: readonly number[], fill: number): Arrangement {
  const xy = new Float64Array(2 * radii.length);
  let squares = 0;
  order.forEach((i, place) => {
    const r = radii[i]!;
    const out = Math.sqrt((squares + (r * r) / 2) / fill);
    squares += r * r;
    xy[2 * i] = out * Math.cos(place * GOLDEN_ANGLE);
    xy[2 * i + 1] = out * Math.sin(place * GOLDEN_ANGLE);
  });
  return { radii, xy };
}

/** Centres of a triangular lattice of unit circles that a start may lie on: a circle, a gap, a touching point. */
export const LATTICE_CENTRES: readonly (readonly [number, number])[] = [
  [0, 0],
  [1, 1 / Math.sqrt(3)],
  [1, 0],
  [0.5, 0.3],
];

/** The n places of a triangular lattice that lie nearest to a centre, for n equal circles. */
export function lattice(radii: Float64Array, [cx, cy]: readonly [number, number]): Arrangement {
  const n = radii.length;
  const r = radii[0]!;
  const rows = Math.ceil(Math.sqrt(n)) + 2;
  const places: { x: number; y: number }[] = [];
  for (let row = -rows; row <= rows; row++)
    for (let column = -2 * rows; column <= 2 * rows; column++)
      places.push({ x: r * (2 * column + row - cx), y: r * (Math.sqrt(3) * row - cy) });
  places.sort((a, b) => a.x * a.x + a.y * a.y - (b.x * b.x + b.y * b.y) || a.x - b.x || a.y - b.y);
  const xy = new Float64Array(2 * n);
  for (let i = 0; i < n; i++) {
    xy[2 * i] = places[i]!.x;
    xy[2 * i + 1] = places[i]!.y;
  }
  return { radii, xy };
}

/**
 * The curved hexagonal packing of 3k(k+1) + 1 equal circles (Lubachevsky and Graham, "Curved hexagonal packings of equal
 * disks in a circle", Discrete and Computational Geometry 18, 1997): six sectors, each of k rows that run parallel to an
 * outer arc of k touching circles, along an arm of the same curve. For fewer circles the last places stay empty.
 */
export function curvedHexagon(radii: Float64Array): Arrangement {
  const n = radii.length;
  const step = 2 * radii[0]!;
  let k = 1;
  while (3 * k * (k + 1) + 1 < n) k++;
  const turn = Math.PI / (3 * k);
  const xy = new Float64Array(2 * n);
  let i = 1;
  for (let row = 1; row <= k; row++)
    for (let sector = 0; sector < 6; sector++)
      for (let m = 0; m < row && i < n; m++, i++) {
        const along = (angle: number): void => {
          xy[2 * i] = xy[2 * i]! + step * Math.cos(angle + (sector * Math.PI) / 3);
          xy[2 * i + 1] = xy[2 * i + 1]! + step * Math.sin(angle + (sector * Math.PI) / 3);
        };
        for (let a = 0; a < row; a++) along((a - (k - 1) / 2) * turn);
        for (let w = 0; w < m; w++) along(Math.PI / 2 + (w + 0.5) * turn);
      }
  return { radii, xy };
}
