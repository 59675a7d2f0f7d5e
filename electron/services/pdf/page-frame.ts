import type { Box } from '@latchwork/core/base/point';
import type { Paper } from '@latchwork/core/exports/paper/paper';
import { sheetPlan } from '@latchwork/core/exports/paper/sheet-plan';
import {
  frameOfSheet,
  hasRoomBeside,
  type Sheet,
  TITLE_BLOCK_MM,
  titleBlockBox,
} from '@latchwork/core/exports/paper/sheet';
import { HAIR_LINE, INK, leading, MM, type Pen, SECOND_INK, THIN_LINE } from './pen';

const PAD = 1.5 * MM;
const CAUTION_SIZE = 7.5;
const ROWS_MM = [9, 11.5, 8.5] as const;

const points = (box: Box): Box => ({
  minX: box.minX * MM,
  minY: box.minY * MM,
  maxX: box.maxX * MM,
  maxY: box.maxY * MM,
});

/** The frame of a sheet, points. */
export const frameOf = (sheet: Sheet): Box => points(frameOfSheet(sheet));

/**
 * Where the cautions stand: across the page above the title block, beside it where the sheet is wide. What stands above
 * both is free for the content.
 */
function cautionBox(pen: Pen, paper: Paper, sheet: Sheet, first: boolean): Box {
  const frame = frameOf(sheet);
  const beside = hasRoomBeside(frameOfSheet(sheet));
  const width = frame.maxX - frame.minX - (beside ? TITLE_BLOCK_MM.width * MM : 0);
  const height = cautionLines(pen, paper, first, width).length * leading(CAUTION_SIZE) + 2 * PAD;
  const block = TITLE_BLOCK_MM.height * MM;
  return beside
    ? { ...frame, maxX: frame.minX + width, minY: frame.maxY - Math.max(height, block) }
    : { ...frame, minY: frame.maxY - block - height, maxY: frame.maxY - block };
}

/** Where the cautions begin: what stands above is free for the content. */
export const contentBottom = (pen: Pen, paper: Paper, sheet: Sheet, first: boolean): number =>
  cautionBox(pen, paper, sheet, first).minY;

export interface PageNumber {
  readonly sheet: Sheet;
  /** A page that is one picture, see `sheetPlan`. */
  readonly picture: boolean;
  /** From 0. */
  readonly index: number;
  readonly of: number;
}

/** Frame, cautions and title block (data fields of ISO 7200) of one page. */
export function drawFrame(pen: Pen, paper: Paper, page: PageNumber): void {
  const { doc } = pen;
  const frame = frameOf(page.sheet);
  doc.lineWidth(THIN_LINE).strokeColor(INK);
  doc.rect(frame.minX, frame.minY, frame.maxX - frame.minX, frame.maxY - frame.minY).stroke();
  const first = page.index === 0 && !page.picture;
  const box = page.picture
    ? points(sheetPlan(page.sheet).caution)
    : cautionBox(pen, paper, page.sheet, first);
  drawCautions(pen, paper, first, box, page.picture);
  drawTitleBlock(pen, paper, page);
}

const cautionLines = (pen: Pen, paper: Paper, first: boolean, width: number) =>
  (first ? paper.cautions : paper.cautions.slice(0, 1)).flatMap((text, i) =>
    pen.lines([{ text, face: i === 0 ? 'strong' : 'text' }], CAUTION_SIZE, width - 2 * PAD),
  );

function drawCautions(pen: Pen, paper: Paper, first: boolean, box: Box, tight: boolean): void {
  const width = box.maxX - box.minX;
  pen.doc.lineWidth(THIN_LINE).strokeColor(INK).rect(box.minX, box.minY, width, box.maxY - box.minY).stroke(); // prettier-ignore
  cautionLines(pen, paper, first, width).forEach((line, i) =>
    pen.draw(
      line,
      box.minX + PAD,
      box.minY + (tight ? 0.6 * MM : PAD) + i * leading(CAUTION_SIZE),
      CAUTION_SIZE,
    ),
  );
}

interface Field {
  readonly label: string;
  readonly value: string;
  readonly widthMm: number;
  readonly strong?: boolean;
  readonly code?: boolean;
}

function drawTitleBlock(pen: Pen, paper: Paper, page: PageNumber): void {
  const t = paper.titleBlock;
  const title = t.supplementaryTitle ? `${t.title}, ${t.supplementaryTitle}` : t.title;
  const rows: readonly (readonly Field[])[] = [
    [
      { label: 'Responsible department', value: t.responsibleDepartment ?? '', widthMm: 38 },
      { label: 'Technical reference', value: t.technicalReference ?? '', widthMm: 38 },
      { label: 'Created by', value: t.creator, widthMm: 38 },
      { label: 'Approved by', value: t.approvalPerson ?? '', widthMm: 38 },
      { label: 'Judged as of', value: paper.date, widthMm: 28 },
    ],
    [
      { label: 'Legal owner', value: t.legalOwner, widthMm: 38 },
      { label: 'Title', value: title, widthMm: 76, strong: true },
      { label: 'Document type', value: paper.title, widthMm: 38 },
      { label: 'Identification number', value: t.identificationNumber, widthMm: 28, code: true },
    ],
    [
      { label: 'Baseline (SHA-256 of the project)', value: paper.baseline, widthMm: 100, code: true },
      { label: 'Revision', value: paper.revision, widthMm: 25 },
      { label: 'Date of issue', value: t.dateOfIssue ?? '', widthMm: 20 },
      { label: 'Language', value: t.language ?? '', widthMm: 11 },
      { label: 'Format', value: page.sheet.size, widthMm: 10 },
      { label: 'Sheet', value: `${page.index + 1}/${page.of}`, widthMm: 14 },
    ],
  ];
  const box = points(titleBlockBox(frameOfSheet(page.sheet)));
  let y = box.minY;
  rows.forEach((fields, i) => {
    const height = (ROWS_MM[i] as number) * MM;
    let x = box.minX;
    for (const field of fields) {
      drawField(pen, field, x, y, height);
      x += field.widthMm * MM;
    }
    y += height;
  });
}

const LABEL_SIZE = 5.5;

/** A value that does not fit becomes smaller, and is cut with dots where even that is not enough. */
function drawField(pen: Pen, field: Field, x: number, y: number, height: number): void {
  const width = field.widthMm * MM;
  pen.doc.lineWidth(HAIR_LINE).strokeColor(INK).rect(x, y, width, height).stroke();
  const inner = width - 1.6 * MM;
  const left = x + 0.8 * MM;
  const [label] = pen.lines([{ text: field.label, face: 'text' }], LABEL_SIZE, width);
  if (label) pen.draw(label, left, y + 0.8 * MM, LABEL_SIZE, SECOND_INK);
  const face = field.code ? 'code' : field.strong ? 'strong' : 'text';
  const room = height - leading(LABEL_SIZE) - 1.2 * MM;
  for (const size of [10, 8.5, 7.5, 6.5, 5.8]) {
    const lines = pen.lines([{ text: field.value, face }], size, inner);
    const most = Math.max(1, Math.floor(room / leading(size)));
    if (lines.length > most && size > 5.8) continue;
    lines.slice(0, most).forEach((line, i) => {
      const cut = i === most - 1 && lines.length > most;
      const last = line.at(-1);
      const shown =
        cut && last ? [...line.slice(0, -1), { ...last, text: `${last.text.slice(0, -1)}…` }] : line;
      pen.draw(shown, left, y + leading(LABEL_SIZE) + 0.9 * MM + i * leading(size), size);
    });
    return;
  }
}
