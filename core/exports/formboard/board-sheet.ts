import type { Box, Point } from '../../base/point';
import { itemBounds } from '../drawing/drawing-bounds';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem } from '../drawing/items';
import { Occupied } from './occupied';

const STEPS = 16;
const RINGS_MM = [0, 3, 7, 12, 18, 26, 36, 48, 64, 84, 110, 140, 180, 230, 300] as const;
/** From here on a hairline joins a name to what it names. */
const LEADER_MM = 4;
/** So close to a thing its own room is taken. */
const CLOSE_MM = 2;
/** How much farther away a name may stand so that its hairline is clear. */
const DETOUR_MM = 40;

/** A drawing that grows, and what of it is taken. */
export class BoardSheet {
  readonly items: DrawingItem[] = [];
  /** Hairlines to tables: they go under everything else. */
  readonly under: DrawingItem[] = [];
  readonly occupied = new Occupied();

  draw(...items: readonly DrawingItem[]): void {
    this.items.push(...items);
  }

  /** Draws and takes the room. */
  take(...items: readonly DrawingItem[]): void {
    this.draw(...items);
    for (const item of items) this.occupied.add(itemBounds(item));
  }

  isFree(items: readonly DrawingItem[], roomMm = 0.4): boolean {
    return items.every((item) => this.occupied.isFree(grown(itemBounds(item), roomMm)));
  }

  /**
   * Draws a block of the given size where there is room, as near to a point as possible and first in a liked direction
   * (radians). What is far is joined to the point by a hairline. Where there is no room at all it stands at its first place.
   */
  place(
    size: { readonly width: number; readonly height: number },
    near: Point,
    options: {
      readonly clearMm: number;
      readonly liked: number;
      readonly layer: string;
      readonly under?: true;
    },
    draw: (box: Box) => readonly DrawingItem[],
  ): Box {
    const { clearMm, liked, layer } = options;
    const box = this.freeBox(size, near, clearMm, liked);
    const end = nearestOn(box, near);
    const [dx, dy] = [end.x - near.x, end.y - near.y];
    const long = Math.hypot(dx, dy);
    if (long > clearMm + LEADER_MM) {
      const start = { x: near.x + (dx / long) * clearMm * 0.8, y: near.y + (dy / long) * clearMm * 0.8 };
      (options.under ? this.under : this.items).push(lineItem(start, end, { line: 'hair', layer }));
      if (!options.under) this.occupied.addLine([start, end], 0.3);
    }
    this.draw(...draw(box));
    this.occupied.add(grown(box, 0.6));
    return box;
  }

  /** The nearest free box to which a hairline can be drawn past all other names; where there is none, the nearest free one. */
  private freeBox(
    size: Parameters<BoardSheet['place']>[0],
    near: Point,
    clearMm: number,
    liked: number,
  ): Box {
    let nearest: { readonly box: Box; readonly ring: number } | undefined;
    for (const ring of RINGS_MM) {
      if (nearest && ring > nearest.ring + DETOUR_MM) break;
      for (let i = 0; i < STEPS; i++) {
        // Liked direction first, then to both sides of it in turn.
        const angle = liked + (Math.ceil(i / 2) * (i % 2 === 0 ? -1 : 1) * 2 * Math.PI) / STEPS;
        const box = boxBeside(near, angle, clearMm + ring, size);
        if (!this.occupied.isFree(box)) continue;
        if (this.leaderIsFree(near, box, clearMm)) return box;
        nearest ??= { box, ring };
      }
    }
    return nearest?.box ?? boxBeside(near, liked, clearMm, size);
  }

  /** Whether the way from what is named to its name is clear, but for what lies close around the thing itself. */
  private leaderIsFree(near: Point, box: Box, clearMm: number): boolean {
    const end = nearestOn(box, near);
    const long = Math.hypot(end.x - near.x, end.y - near.y);
    if (long <= clearMm + LEADER_MM) return true;
    for (let mm = clearMm + CLOSE_MM; mm < long - 1; mm += 1.5) {
      const at = { x: near.x + ((end.x - near.x) * mm) / long, y: near.y + ((end.y - near.y) * mm) / long };
      if (!this.occupied.isFree({ minX: at.x - 0.4, minY: at.y - 0.4, maxX: at.x + 0.4, maxY: at.y + 0.4 })) return false; // prettier-ignore
    }
    return true;
  }
}

export const grown = (b: Box, by: number): Box => ({
  minX: b.minX - by,
  minY: b.minY - by,
  maxX: b.maxX + by,
  maxY: b.maxY + by,
});

/** A box of that size which touches a circle around the point on the side of the angle. */
function boxBeside(
  near: Point,
  angle: number,
  radius: number,
  { width, height }: { width: number; height: number },
): Box {
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  // How far its middle is from its edge along the direction.
  const reach = Math.min(
    Math.abs(ux) < 1e-9 ? Infinity : width / 2 / Math.abs(ux),
    Math.abs(uy) < 1e-9 ? Infinity : height / 2 / Math.abs(uy),
  );
  const [x, y] = [near.x + ux * (radius + reach), near.y + uy * (radius + reach)];
  return { minX: x - width / 2, minY: y - height / 2, maxX: x + width / 2, maxY: y + height / 2 };
}

const nearestOn = (b: Box, p: Point): Point => ({
  x: Math.min(Math.max(p.x, b.minX), b.maxX),
  y: Math.min(Math.max(p.y, b.minY), b.maxY),
});
