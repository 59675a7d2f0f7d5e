import type { Box } from '../../base/point';
import { figuresOnTiles } from './figures-on-tiles';
import { OVERLAP_MM, type Size, tilesOf, type Tiling } from './tiles';

const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0, 1] as const;

/**
 * The sheets of a drawing, laid so that their seams cut as few of its figures as may be, and without those that would be
 * empty. `figures` are the boxes around all that is drawn.
 */
export function placeTiles(drawing: Size, window: Size, figures: readonly Box[]): Tiling {
  const at = (left: number, above: number): Tiling => tilesOf(drawing, window, OVERLAP_MM, { left, above });
  const bestOf = (cuts: (share: number) => number): number =>
    SHARES.map((share) => ({ share, cut: cuts(share) })).reduce((a, b) => (b.cut < a.cut ? b : a)).share;
  const left = bestOf((share) => cutBy(at(share, 0.5), figures, 'x'));
  const above = bestOf((share) => cutBy(at(0.5, share), figures, 'y'));
  const tiling = at(left, above);
  const onTile = figuresOnTiles(tiling, figures);
  return { ...tiling, tiles: tiling.tiles.filter((_, i) => onTile[i]?.length) };
}

/** How many figures lie on a join line: in the middle of what two sheets share. */
function cutBy({ tiles }: Tiling, figures: readonly Box[], axis: 'x' | 'y'): number {
  const [min, max] = axis === 'x' ? (['minX', 'maxX'] as const) : (['minY', 'maxY'] as const);
  const ends = [...new Set(tiles.map((t) => t.area[max]))].sort((a, b) => a - b);
  const [first = 0, second = Infinity] = ends.slice(0, -1).map((end) => end - OVERLAP_MM / 2);
  // Seams are evenly spaced, so which of them a figure could meet is a division away.
  const step = second - first;
  const at = (place: number): number => (Number.isFinite(step) ? (place - first) / step : place - first);
  const last = ends.length - 2;
  return figures.filter((f) => Math.max(0, Math.ceil(at(f[min]))) <= Math.min(last, Math.floor(at(f[max]))))
    .length;
}
