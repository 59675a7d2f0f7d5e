import { baselineOf } from '../model/baseline';
import type { Project } from '../model/project';
import { isOurs } from '../derive/label-plan';
import type { Drawing, DrawingItem } from './drawing/drawing';
import { moved } from './drawing/items';
import type { DocumentInput, Exporter } from './exporter';
import { CODE_WORDS } from './labels/label-code';
import { labelJobs } from './labels/label-jobs';
import { LABEL_COLUMNS, labelRows, type LabelKey, type LabelRow } from './labels/label-rows';
import { labelSheets } from './labels/label-sheets';
import { METHOD_WORDS } from './labels/method-words';
import { LABEL_TEMPLATES, templateWords } from './labels/templates';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper } from './paper/paper';
import { paperTable, plainText } from './paper/paper-table';
import type { Sheet } from './paper/sheet';
import type { Cell, Table } from './table';

/** Every end and connector with its mark; on paper the list, and the labels themselves at true size. */
export const labels: Exporter = {
  id: 'labels',
  title: 'Labels',
  summary: 'Every wire end, cable end and connector with its mark; on paper sheets of labels with codes, to be cut.',
  asks: ['labelSheet', 'labelCode', 'labelStart'],
  table: (input) => labelTable(input),
  paper: (input) => labelPaper(input),
  drawing: (input) => labelDrawing(input),
}; // prettier-ignore

function labelTable(input: DocumentInput): Table {
  const rows = labelRows(input.harness, input.options);
  return {
    id: labels.id,
    title: labels.title,
    head: benchHead(input.harness.project, labels.title, summaryOf(input, rows)),
    columns: [...LABEL_COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function summaryOf({ harness, options }: DocumentInput, rows: readonly LabelRow[]): [string, string][] {
  const { sheets, jobs, start, startRemark } = labelJobs(harness, options);
  const without = rows.filter(
    (r) =>
      r.cells.text === null &&
      (r.cells.kind !== 'connector' || isOurs(harness.connectorById.get(r.objects[0]?.id ?? ''))),
  );
  const used = LABEL_TEMPLATES.filter((t) => jobs.some((j) => j.template === t));
  const codes = jobs.filter((j) => j.drawn.code !== 'none').length;
  return [
    ['Method', METHOD_WORDS[harness.project.labelMethod ?? 'none']],
    ['Labels', `${jobs.length}, ${jobs.filter((j) => j.part).length} with a part`],
    ['Ends and connectors without a label', without.length === 0 ? 'none' : String(without.length)],
    ['Label sheets', sheets === 0 ? 'none' : `${sheets}: ${used.map(templateWords).join('; ')}`],
    ['First label at position', startRemark ? `${start} (${startRemark})` : String(start)],
    [
      'Codes',
      `${CODE_WORDS[options?.labelCode ?? 'qr']} on ${codes} of ${jobs.length}: identification number, designator, and the end 1 or 2, with strokes between`,
    ],
    ['Text of marks', 'X1:3 is cavity 3 of X1; a free end without a name is called by its wire and 1 or 2'],
    ['On the wire', 'the width of a label lies along the wire, its height goes round it'],
  ];
}

const nameOf = ({ titleBlock: t, revisions }: Project): string => {
  const revision = revisions.at(-1);
  return [
    `${t.identificationNumber || 'identification number not given'} ${t.title}`,
    revision ? `revision ${revision.revision} (${revision.status})` : 'revision not given',
  ].join(', ');
};

const sheetsOf = ({ harness, options }: DocumentInput) =>
  labelSheets(labelJobs(harness, options), {
    name: nameOf(harness.project),
    baseline: baselineOf(harness.project),
    limitSet: `${harness.project.limitSet.name}, revision ${harness.project.limitSet.revision}`,
  });

function labelPaper(input: DocumentInput): Paper {
  const rows = labelRows(input.harness, input.options);
  const sheets = sheetsOf(input);
  const letter = input.options?.labelSheet?.startsWith('letter') === true;
  const list: Sheet = { size: letter ? 'Letter' : 'A4', orientation: 'landscape' };
  return benchPaper(
    labels,
    input,
    summaryOf(input, rows),
    [
      plainText(
        sheets.length === 0
          ? 'There is no label yet. – : not known, or no label.'
          : 'The sheets of labels come after this list. Print them at 100 %, not fitted to the page, and hold a ruler to the bar of each. – : not known, or no label.',
      ),
      paperTable(PAPER_COLUMNS, rows),
      ...sheets,
    ],
    list,
  );
}

/** The sheets one below the other, at true size. */
function labelDrawing(input: DocumentInput): Drawing {
  const items: DrawingItem[] = [];
  let [widthMm, heightMm] = [1, 1];
  for (const { layers } of sheetsOf(input))
    for (const { drawing } of layers) {
      items.push(...drawing.items.map((i) => moved(i, 0, heightMm)));
      widthMm = Math.max(widthMm, drawing.widthMm);
      heightMm += drawing.heightMm;
    }
  return { widthMm, heightMm, items };
}

const cell =
  (key: LabelKey) =>
  (r: LabelRow): Cell =>
    r.cells[key];

const PAPER_COLUMNS = [
  { title: 'Object', share: 1.6, of: cell('object') },
  { title: 'Kind', share: 1.7, of: cell('kind') },
  { title: 'End', share: 0.9, of: cell('end') },
  { title: 'Goes to', share: 1.8, of: cell('place') },
  { title: 'Text', share: 3, of: cell('text') },
  { title: 'Part', share: 1.8, of: cell('part') },
  { title: 'At, mm', share: 1.3, align: 'right' as const, of: cell('distanceMm') },
  { title: 'Round Ø', share: 1.4, align: 'right' as const, of: cell('aroundMm') },
  { title: 'To Ø', share: 1.1, align: 'right' as const, of: cell('bundleMaxMm') },
  { title: 'Code', share: 3, of: (r: LabelRow) => (r.cells.codeKind === 'none' ? 'none' : r.cells.codeKind === null ? null : r.cells.codeText) },
  { title: 'Sheet', share: 1, align: 'right' as const, of: (r: LabelRow) => (r.cells.sheet === null ? null : `${r.cells.sheet}:${r.cells.position ?? '?'}`) },
  { title: 'Remarks', share: 5, of: (r: LabelRow) => r.cells.remarks ?? '' },
]; // prettier-ignore
