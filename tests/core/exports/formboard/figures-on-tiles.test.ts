import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boxesMeet, type Box } from '@latchwork/core/base/point';
import { figuresOnTiles } from '@latchwork/core/exports/formboard/figures-on-tiles';
import { Occupied } from '@latchwork/core/exports/formboard/occupied';
import { tilesOf } from '@latchwork/core/exports/formboard/tiles';

// Whole numbers, so that figures touch the edges of tiles and of cells often.
const place = fc.integer({ min: -60, max: 460 });
const size = fc.integer({ min: 0, max: 90 });
const box = fc.tuple(place, place, size, size).map(([minX, minY, w, h]): Box => ({ minX, minY, maxX: minX + w, maxY: minY + h })); // prettier-ignore

it('finds for every tile the figures that a look at each pair finds, of those tiles that are left', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 30 }), fc.nat(7), (figures, dropped) => {
      const whole = tilesOf({ widthMm: 400, heightMm: 300 }, { widthMm: 110, heightMm: 90 }, 10);
      const tiling = { ...whole, tiles: whole.tiles.filter((_, i) => i % 8 !== dropped) };
      expect(figuresOnTiles(tiling, figures)).toEqual(
        tiling.tiles.map((t) => figures.flatMap((f, i) => (boxesMeet(f, t.area) ? [i] : []))),
      );
    }),
  );
});

it('says that a place is free exactly where no box that was added meets it', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 20 }), box, (added, asked) => {
      const occupied = new Occupied();
      for (const b of added) occupied.add(b);
      expect(occupied.isFree(asked)).toBe(!added.some((b) => boxesMeet(b, asked)));
    }),
  );
});
