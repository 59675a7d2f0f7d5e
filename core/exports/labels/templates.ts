import { z } from 'zod';
import { type Sheet, sheetMm } from '../paper/sheet';

/** A sheet of labels, mm: how many, how large, and where the first one lies from the top left of the sheet. */
export interface LabelTemplate {
  readonly id: LabelSheetId;
  readonly sheet: Sheet & { readonly size: 'A4' | 'Letter' };
  readonly columns: number;
  readonly rows: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  /** Between labels, in both directions. */
  readonly gapMm: number;
}

const LabelSheetId = z.enum([
  'a4-25x12', 'a4-40x20', 'a4-50x15', 'a4-60x30', 'letter-25x12', 'letter-40x20', 'letter-50x15', 'letter-60x30',
]); // prettier-ignore
type LabelSheetId = z.infer<typeof LabelSheetId>;

/** A template, or a paper: each label then goes on the sheet of that paper that has its size, or the next larger one. */
export const LabelSheet = z.enum(['a4', 'letter', ...LabelSheetId.options]);
export type LabelSheet = z.infer<typeof LabelSheet>;

const GAP_MM = 2;
const TOP_MM = 11;

const template = (id: LabelSheetId, columns: number, rows: number): LabelTemplate => {
  const [paper, size] = id.split('-') as ['a4' | 'letter', string];
  const [widthMm, heightMm] = size.split('x').map(Number) as [number, number];
  const sheet = { size: paper === 'a4' ? 'A4' : 'Letter', orientation: 'upright' } as const;
  const usedMm = columns * (widthMm + GAP_MM) - GAP_MM;
  const leftMm = (sheetMm(sheet).widthMm - usedMm) / 2;
  return { id, sheet, columns, rows, widthMm, heightMm, leftMm, topMm: TOP_MM, gapMm: GAP_MM };
};

/**
 * Our own sheets, of no maker: labels of one size in the middle of the sheet, a strip above and a foot below for what the
 * sheet says of itself. Printed on plain label stock and cut apart.
 */
export const LABEL_TEMPLATES: readonly LabelTemplate[] = [
  template('a4-25x12', 7, 19),
  template('a4-40x20', 4, 12),
  template('a4-50x15', 3, 16),
  template('a4-60x30', 3, 8),
  template('letter-25x12', 7, 18),
  template('letter-40x20', 4, 11),
  template('letter-50x15', 3, 15),
  template('letter-60x30', 3, 7),
];

export const templateWords = (t: LabelTemplate): string =>
  `${t.sheet.size}, ${t.columns} x ${t.rows} labels of ${t.widthMm} x ${t.heightMm} mm`;

/** The sheet for a label of that size. */
export function templateFor(
  sheet: LabelSheet,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): LabelTemplate {
  const named = LABEL_TEMPLATES.find((t) => t.id === sheet);
  if (named) return named;
  const bySize = LABEL_TEMPLATES.filter((t) => t.id.startsWith(sheet)).sort(
    (a, b) => a.widthMm * a.heightMm - b.widthMm * b.heightMm,
  );
  const found = bySize.find((t) => t.widthMm >= widthMm && t.heightMm >= heightMm) ?? bySize.at(-1);
  if (!found) throw new Error(`no label sheet ${sheet}`);
  return found;
}
