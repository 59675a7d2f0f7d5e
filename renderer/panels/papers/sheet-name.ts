import { type Sheet, sheetMm, SheetSize } from '@latchwork/core/exports/paper/sheet';

const MM_PER_PT = 25.4 / 72;

/** The sheet that has the size of a page to within half a millimetre. */
export function sheetOfPage(page: { readonly widthPt: number; readonly heightPt: number }): Sheet | null {
  for (const size of SheetSize.options)
    for (const orientation of ['upright', 'landscape'] as const) {
      const { widthMm, heightMm } = sheetMm({ size, orientation });
      const isIt = Math.abs(page.widthPt * MM_PER_PT - widthMm) < 0.5 && Math.abs(page.heightPt * MM_PER_PT - heightMm) < 0.5;
      if (isIt) return { size, orientation };
    }
  return null;
} // prettier-ignore

/** "A4 upright, 210 × 297 mm". */
export function sheetWords(page: { readonly widthPt: number; readonly heightPt: number }): string {
  const sheet = sheetOfPage(page);
  const mm = (pt: number): string => String(Math.round(pt * MM_PER_PT * 10) / 10);
  const size = `${mm(page.widthPt)} × ${mm(page.heightPt)} mm`;
  return sheet ? `${sheet.size} ${sheet.orientation}, ${size}` : size;
}
