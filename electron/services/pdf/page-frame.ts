import type { Paper } from '@latchwork/core/exports/paper/paper';
import { HAIR_LINE, INK, leading, MM, type Pen, SECOND_INK, THIN_LINE } from './pen';

/** A4 upright with the margins of ISO 5457: 20 mm to bind at, 10 mm all around. */
export const FRAME = { left: 20 * MM, top: 10 * MM, right: 200 * MM, bottom: 287 * MM } as const;
const WIDTH = FRAME.right - FRAME.left;
const PAD = 1.5 * MM;
const CAUTION_SIZE = 7.5;
const ROWS_MM = [9, 11.5, 8.5] as const;
const BLOCK_HEIGHT = ROWS_MM.reduce((sum, mm) => sum + mm * MM, 0);

/** Where the cautions begin: what stands above is free for the content. */
export function contentBottom(pen: Pen, paper: Paper, page: number): number {
  return FRAME.bottom - BLOCK_HEIGHT - cautionHeight(pen, paper, page);
}

/** Frame, cautions and title block (data fields of ISO 7200) of one page. */
export function drawFrame(pen: Pen, paper: Paper, page: number, pages: number): void {
  const { doc } = pen;
  doc.lineWidth(THIN_LINE).strokeColor(INK);
  doc.rect(FRAME.left, FRAME.top, WIDTH, FRAME.bottom - FRAME.top).stroke();
  drawCautions(pen, paper, page);
  drawTitleBlock(pen, paper, page, pages);
}

const cautionLines = (pen: Pen, paper: Paper, page: number) =>
  (page === 0 ? paper.cautions : paper.cautions.slice(0, 1)).flatMap((text, i) =>
    pen.lines([{ text, face: i === 0 ? 'strong' : 'text' }], CAUTION_SIZE, WIDTH - 2 * PAD),
  );

const cautionHeight = (pen: Pen, paper: Paper, page: number): number =>
  cautionLines(pen, paper, page).length * leading(CAUTION_SIZE) + 2 * PAD;

function drawCautions(pen: Pen, paper: Paper, page: number): void {
  const top = contentBottom(pen, paper, page);
  const height = cautionHeight(pen, paper, page);
  pen.doc.lineWidth(THIN_LINE).strokeColor(INK).rect(FRAME.left, top, WIDTH, height).stroke();
  cautionLines(pen, paper, page).forEach((line, i) =>
    pen.draw(line, FRAME.left + PAD, top + PAD + i * leading(CAUTION_SIZE), CAUTION_SIZE),
  );
}

interface Field {
  readonly label: string;
  readonly value: string;
  readonly widthMm: number;
  readonly strong?: boolean;
  readonly code?: boolean;
}

function drawTitleBlock(pen: Pen, paper: Paper, page: number, pages: number): void {
  const t = paper.titleBlock;
  const title = t.supplementaryTitle ? `${t.title}, ${t.supplementaryTitle}` : t.title;
  const rows: readonly (readonly Field[])[] = [
    [
      { label: 'Responsible department', value: t.responsibleDepartment ?? '', widthMm: 38 },
      { label: 'Technical reference', value: t.technicalReference ?? '', widthMm: 38 },
      { label: 'Created by', value: t.creator, widthMm: 38 },
      { label: 'Approved by', value: t.approvalPerson ?? '', widthMm: 38 },
      { label: 'Decisions judged on', value: paper.date, widthMm: 28 },
    ],
    [
      { label: 'Legal owner', value: t.legalOwner, widthMm: 38 },
      { label: 'Title', value: title, widthMm: 76, strong: true },
      { label: 'Document type', value: paper.title, widthMm: 38 },
      { label: 'Identification number', value: t.identificationNumber, widthMm: 28, code: true },
    ],
    [
      { label: 'Baseline (SHA-256 of the project)', value: paper.baseline, widthMm: 107, code: true },
      { label: 'Revision', value: paper.revision, widthMm: 25 },
      { label: 'Date of issue', value: t.dateOfIssue ?? '', widthMm: 20 },
      { label: 'Language', value: t.language ?? '', widthMm: 13 },
      { label: 'Sheet', value: `${page + 1}/${pages}`, widthMm: 15 },
    ],
  ];
  let y = FRAME.bottom - BLOCK_HEIGHT;
  rows.forEach((fields, i) => {
    const height = (ROWS_MM[i] as number) * MM;
    let x: number = FRAME.left;
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
