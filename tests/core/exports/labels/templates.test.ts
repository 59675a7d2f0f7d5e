import { describe, expect, it } from 'vitest';
import { sheetMm } from '@latchwork/core/exports/paper/sheet';
import { LABEL_TEMPLATES, LabelSheet, templateFor } from '@latchwork/core/exports/labels/templates';

/** What the foot of a sheet takes: the bar with its ticks and two lines of small text. */
const FOOT_MM = 15;
/** What office printers leave white along the edges; common practice. */
const WHITE_MM = 5;

describe.each(LABEL_TEMPLATES)('the sheet $id', (t) => {
  it('has its labels on the paper, clear of the foot', () => {
    const { widthMm, heightMm } = sheetMm(t.sheet);
    expect(t.leftMm).toBeGreaterThanOrEqual(WHITE_MM);
    expect(t.leftMm + t.columns * (t.widthMm + t.gapMm) - t.gapMm).toBeLessThanOrEqual(widthMm - WHITE_MM);
    expect(t.topMm + t.rows * (t.heightMm + t.gapMm) - t.gapMm).toBeLessThanOrEqual(heightMm - FOOT_MM);
  });
  it('takes no fewer labels than there is room for', () => {
    const { widthMm, heightMm } = sheetMm(t.sheet);
    expect((t.columns + 1) * (t.widthMm + t.gapMm) - t.gapMm).toBeGreaterThan(widthMm - 2 * WHITE_MM);
    expect(t.topMm + (t.rows + 1) * (t.heightMm + t.gapMm) - t.gapMm).toBeGreaterThan(heightMm - FOOT_MM);
  });
});

it('offers each of them, and each paper', () => {
  expect(LabelSheet.options.filter((id) => id.includes('-')).sort()).toEqual(
    LABEL_TEMPLATES.map((t) => t.id).sort(),
  );
});

it.each([
  ['a4', 25, 12, 'a4-25x12'],
  ['a4', 26, 12, 'a4-50x15'],
  ['letter', 40, 20, 'letter-40x20'],
  ['letter', 90, 90, 'letter-60x30'],
  ['a4-50x15', 25, 12, 'a4-50x15'],
] as const)('on %s a label of %d x %d mm goes on %s', (sheet, widthMm, heightMm, id) => {
  expect(templateFor(sheet, { widthMm, heightMm }).id).toBe(id);
});
