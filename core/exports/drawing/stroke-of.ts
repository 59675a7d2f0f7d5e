import { type DrawingItem, LINE_MM, type LineWeight } from './drawing';

type Stroked = Extract<DrawingItem, { kind: 'polyline' | 'curve' | 'circle' | 'arc' }>;

/** Greys of the fills: light stays visible in a copy, and black text on it legible. */
export const FILL_COLOURS = { ink: '#000000', light: '#d6d6d6', paper: '#ffffff' } as const;

/** Length of dashes and gaps in turn, mm on paper. */
export const DASH_MM = {
  dashed: [2.5, 1.25],
  dotted: [0.4, 0.9],
  chain: [6, 1.2, 0.6, 1.2],
} as const satisfies Record<NonNullable<Stroked['dash']>, readonly number[]>;

/** The line around a figure: the one it names, none where it is only filled, else a thin one. */
export const lineOf = (item: Stroked): LineWeight | null => item.line ?? (item.fill ? null : 'thin');

export const lineMmOf = (item: Stroked): number => {
  const line = lineOf(item);
  return line === null ? 0 : LINE_MM[line];
};
