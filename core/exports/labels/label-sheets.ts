import { AID_NOT_AUTHORITY } from '../cautions';
import type { DrawingItem } from '../drawing/drawing';
import { boxItem, moved, textItem } from '../drawing/items';
import { scaleBar } from '../formboard/scale-bar';
import type { PaperBlock } from '../paper/paper';
import { sheetMm } from '../paper/sheet';
import type { LabelJob, LabelJobs } from './label-jobs';
import { type LabelTemplate, templateWords } from './templates';

/** What a sheet says of the project. */
export interface SheetWords {
  /** "EX-0002 Weather station harness, revision A (draft)". */
  readonly name: string;
  readonly baseline: string;
  /** "General, revision 1". */
  readonly limitSet: string;
}

type SheetBlock = Extract<PaperBlock, { kind: 'sheet' }>;

/** One page for every sheet of labels, at true size, with nothing on it but the labels, a bar to measure and what it is. */
export function labelSheets({ jobs, sheets }: LabelJobs, words: SheetWords): SheetBlock[] {
  return Array.from({ length: sheets }, (_, i) => i + 1).flatMap((sheet): SheetBlock[] => {
    const here = jobs.filter((j) => j.sheet === sheet);
    const template = here[0]?.template;
    if (!template) return [];
    const items = [
      ...here.flatMap((job) => placed(job)),
      ...edges(template, words, `label sheet ${sheet} of ${sheets}`),
    ];
    return [
      {
        kind: 'sheet',
        sheet: template.sheet,
        bare: true,
        layers: [{ drawing: { ...sheetMm(template.sheet), items }, at: { x: 0, y: 0 } }],
      },
    ];
  });
}

/** In the middle of its place; the hair line is where it is cut. */
function placed({ template: t, position, size, drawn }: LabelJob): DrawingItem[] {
  const column = (position - 1) % t.columns;
  const row = Math.floor((position - 1) / t.columns);
  const x = t.leftMm + column * (t.widthMm + t.gapMm) + (t.widthMm - size.widthMm) / 2;
  const y = t.topMm + row * (t.heightMm + t.gapMm) + (t.heightMm - size.heightMm) / 2;
  const cut = { minX: x, minY: y, maxX: x + size.widthMm, maxY: y + size.heightMm };
  return [boxItem(cut, { line: 'hair', layer: 'cut' }), ...drawn.items.map((i) => moved(i, x, y))];
}

const SMALL_MM = 1.4;

/** Above the labels the caution; below them the bar, and what the sheet is. */
function edges(
  template: LabelTemplate,
  { name, baseline, limitSet }: SheetWords,
  sheet: string,
): DrawingItem[] {
  const { heightMm } = sheetMm(template.sheet);
  const left = 12;
  const layer = 'sheet';
  const line = (text: string, x: number, y: number, look?: 'code'): DrawingItem =>
    textItem(text, { x, y }, look ? 1.1 : SMALL_MM, { layer, ...(look ? { look } : {}) });
  const right = left + 106;
  return [
    line(AID_NOT_AUTHORITY, left, 7.5),
    ...scaleBar({ x: left, y: heightMm - 11 }, 'across', layer),
    line('Print at 100 %, not fitted to the page; hold a ruler to the bar.', left, heightMm - 5.5),
    line(name.length > 64 ? `${name.slice(0, 63)}…` : name, right, heightMm - 12.4),
    line(`${sheet}: ${templateWords(template)}`, right, heightMm - 9.6),
    line(`Limit set ${limitSet}; baseline (SHA-256 of the project)`, right, heightMm - 7.2),
    line(baseline, right, heightMm - 5, 'code'),
  ];
}
