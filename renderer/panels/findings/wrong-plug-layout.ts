import type { Plugged } from '@latchwork/core/rules/shared/wrong-plug-words';

/** A half in the picture: ends of the harness on the left, what they are plugged into on the right; px. */
export interface PlacedHalf {
  readonly name: string;
  readonly column: 0 | 1;
  readonly x: number;
  readonly y: number;
}

const COLUMN_PX = 190;
const ROW_PX = 62;

/** Each pair of the design is a row; a half that belongs to nothing gets one of its own. The same places serve both pictures. */
export function placeHalves(right: readonly Plugged[], wrong: readonly Plugged[]): readonly PlacedHalf[] {
  const out: PlacedHalf[] = [];
  const place = (name: string, column: 0 | 1, row: number): void => {
    out.push({ name, column, x: column * COLUMN_PX, y: row * ROW_PX });
  };
  right.forEach((p, row) => {
    place(p.free, 0, row);
    place(p.into, 1, row);
  });
  let rows = right.length;
  for (const p of wrong)
    for (const [column, name] of [p.free, p.into].entries())
      if (!out.some((h) => h.name === name)) place(name, column === 0 ? 0 : 1, rows++);
  return out;
}

interface Way {
  readonly path: string;
  /** Its middle. */
  readonly x: number;
  readonly y: number;
}

/** Straight from one column to the other; two halves of one column are joined by a bow beside it. */
export function wayBetween(
  a: PlacedHalf,
  b: PlacedHalf,
  box: { readonly width: number; readonly height: number },
): Way {
  const [ya, yb] = [a.y + box.height / 2, b.y + box.height / 2];
  if (a.column !== b.column) {
    const [left, right] = a.column < b.column ? [a, b] : [b, a];
    const [x1, x2] = [left.x + box.width, right.x];
    const [y1, y2] = a.column < b.column ? [ya, yb] : [yb, ya];
    // A third of the way, so that the marks of two crossing ways lie apart.
    return {
      path: `M${x1} ${y1}L${x2} ${y2}`,
      x: x1 + (x2 - x1) / 3,
      y: y1 + (y2 - y1) / 3,
    };
  }
  const inner = a.column === 0 ? a.x + box.width : a.x;
  const bow = a.column === 0 ? inner + 60 : inner - 60;
  return {
    path: `M${inner} ${ya}C${bow} ${ya} ${bow} ${yb} ${inner} ${yb}`,
    x: inner + (bow - inner) * 0.75,
    y: (ya + yb) / 2,
  };
}
