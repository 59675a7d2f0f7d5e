import type { Box, Point } from '../../base/point';
import { itemBounds } from '../drawing/drawing-bounds';
import type { DrawingItem } from '../drawing/drawing';
import { lineItem } from '../drawing/items';
import { Occupied } from './occupied';

const STEPS = 16;
const RINGS_MM = [0, 3, 7, 12, 18, 26, 36, 48, 64, 84, 110, 140, 180, 230, 300] as const;
/** From here on a hairline joins a name to what it names. */
const LEADER_MM = 4;

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
    let chosen: Box | undefined;
    let first: Box | undefined;
    for (const ring of RINGS_MM) {
      for (let i = 0; i < STEPS && !chosen; i++) {
        // Liked direction first, then to both sides of it in turn.
        const angle = liked + (Math.ceil(i / 2) * (i % 2 === 0 ? -1 : 1) * 2 * Math.PI) / STEPS;
        const box = boxBeside(near, angle, clearMm + ring, size);
        first ??= box;
        if (this.occupied.isFree(box)) chosen = box;
      }
      if (chosen) break;
    }
    const box = chosen ?? (first as Box);
    const end = nearestOn(box, near);
    const [dx, dy] = [end.x - near.x, end.y - near.y];
    const long = Math.hypot(dx, dy);
    if (long > clearMm + LEADER_MM)
      (options.under ? this.under : this.items).push(
        lineItem({ x: near.x + (dx / long) * clearMm * 0.8, y: near.y + (dy / long) * clearMm * 0.8 }, end, {
          line: 'hair',
          layer,
        }),
      );
    this.draw(...draw(box));
    this.occupied.add(grown(box, 0.6));
    return box;
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
