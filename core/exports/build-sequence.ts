import { memoByIdentity } from '../base/memo-by-identity';
import type { Harness } from '../derive/harness';
import { buildOrder } from '../derive/build-order/build-order';
import { buildSteps, partsText, placesText, rangesText, type BuildStep } from './build-sequence/build-steps';
import { HEAT_CAUTION, STAGE_CAUTIONS, STAGE_WORDS } from './build-sequence/stage-words';
import type { DocumentInput, Exporter } from './exporter';
import { crimpGroups } from './crimp-sheets/crimp-groups';
import { crimpValues } from './crimp-sheets/crimp-spec-values';
import { benchHead, benchPaper } from './paper/bench-paper';
import type { Paper, PaperBlock } from './paper/paper';
import { paperTable } from './paper/paper-table';
import { A4_LANDSCAPE } from './paper/sheet';
import type { Cell, Column, RowOf, Table } from './table';

const COLUMNS = [
  { key: 'step', title: 'Step', align: 'right' },
  { key: 'stage', title: 'Stage' },
  { key: 'what', title: 'Work' },
  { key: 'at', title: 'At' },
  { key: 'quantity', title: 'Quantity', align: 'right' },
  { key: 'parts', title: 'Parts' },
  { key: 'after', title: 'After steps' },
  { key: 'why', title: 'Why then' },
  { key: 'caution', title: 'Caution' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

type Key = (typeof COLUMNS)[number]['key'];

/** The order of the work, from the model: what must be on a wire or a bundle before what blocks it. */
export const buildSequence: Exporter = {
  id: 'build-sequence',
  title: 'Build sequence',
  summary:
    'The steps in an order in which they can be done, each with its objects, parts and the reason why then.',
  table: ({ harness }) => sequenceTable(harness),
  paper: (input) => sequencePaper(input),
};

const stepsOf = memoByIdentity((harness: Harness): readonly BuildStep[] => {
  const order = buildOrder(harness);
  return order.ok ? buildSteps(order.ops) : [];
});

function sequenceTable(harness: Harness): Table {
  const rows = stepsOf(harness).map((step) => rowOf(harness, step));
  return {
    id: buildSequence.id,
    title: buildSequence.title,
    head: benchHead(harness.project, buildSequence.title, summaryOf(harness)),
    columns: [...COLUMNS],
    rows: rows.map((r) => r.cells),
    objects: rows.map((r) => [...r.objects]),
  };
}

function rowOf(harness: Harness, step: BuildStep): RowOf<Key> {
  const { stage } = step;
  const missing = step.ops.flatMap((op) => op.parts).some((p) => p.part === null);
  const cells: Record<Key, Cell> = {
    step: step.number,
    stage: STAGE_WORDS[stage],
    what: step.what,
    at: placesText(step) || null,
    quantity: step.ops.length,
    parts: partsText(step),
    after: rangesText(step.after) || null,
    why: step.reasons.join('; ') || null,
    caution: cautionOf(step) ?? null,
    remarks:
      [
        ...(stage === 'insert' ? [tugText(harness, step)] : []),
        ...(missing ? ['a part is not chosen'] : []),
      ].join('; ') || null,
  };
  const seen = new Map(
    step.ops.flatMap((op) => op.objects).map((o) => [`${o.type} ${o.id} ${o.cavity ?? ''}`, o] as const),
  );
  return { cells, objects: [...seen.values()] };
}

const cautionOf = ({ stage, what }: BuildStep): string | undefined =>
  stage === 'cover' && what.includes('shrink') ? HEAT_CAUTION : STAGE_CAUTIONS[stage];

/** What each cavity's contact may be tugged with, by connector and cavity; null where it is not stated. */
const tugLimits = memoByIdentity((harness: Harness): ReadonlyMap<string, number | null> => {
  const out = new Map<string, number | null>();
  for (const group of crimpGroups(harness)) {
    const { retentionMaxN } = crimpValues(harness, group);
    for (const { object } of group.places) out.set(`${object.id} ${object.cavity ?? ''}`, retentionMaxN);
  }
  return out;
});

/** The least of what the contacts of the step may be tugged with. */
function tugText(harness: Harness, step: BuildStep): string {
  const limits = step.ops.flatMap((op) =>
    op.objects.map((o) => tugLimits(harness).get(`${o.id} ${o.cavity ?? ''}`) ?? null),
  );
  if (limits.length === 0 || limits.some((n) => n === null)) return 'tug: limit not stated';
  return `tug with at most ${Math.min(...limits.flatMap((n) => n ?? []))} N (80 % of the least pull-out force)`;
}

function summaryOf(harness: Harness): [string, string][] {
  const order = buildOrder(harness);
  if (!order.ok) return [['Steps', `none: these wait for each other: ${order.ring.slice(0, 10).join('; ')}`]];
  return [
    ['Steps', `${stepsOf(harness).length} of ${order.ops.length} operations`],
    [
      'Order',
      'what slides on before what closes the end; then cut, crimp, twist, splice, load, lay, cover, label, lock, inspect, test (common practice)',
    ],
    [
      'Threaded',
      'tubes, sleeves, braids, conduits and grommets, from the side with fewer connectors; a split one may go on later',
    ],
  ];
}

function sequencePaper(input: DocumentInput): Paper {
  const { harness } = input;
  const rows = stepsOf(harness).map((step) => ({ step, row: rowOf(harness, step).cells }));
  const stages = [...new Set(rows.map((r) => r.step.stage))];
  // A stage may come up more than once where something else must lie between.
  const blocks = stages.flatMap((stage): PaperBlock[] => {
    const here = rows.filter((r) => r.step.stage === stage);
    const caution = here.map((r) => cautionOf(r.step)).find((text) => text !== undefined);
    return [
      { kind: 'matter', name: STAGE_WORDS[stage], state: caution ?? '' },
      paperTable(
        [
          { title: 'Step', share: 0.9, align: 'right', of: (r) => r.row.step },
          { title: 'Work', share: 5, of: (r) => r.row.what },
          { title: 'At', share: 6.5, of: (r) => r.row.at },
          { title: 'Parts', share: 3.2, of: (r) => r.row.parts ?? '' },
          { title: 'After', share: 1.8, of: (r) => r.row.after ?? '' },
          {
            title: 'Why then',
            share: 4.6,
            of: (r) => [r.row.why, r.row.remarks].filter((t) => t !== null).join('; '),
          },
          { title: 'Done', share: 1, of: () => '' },
        ],
        here,
      ),
    ];
  });
  return benchPaper(buildSequence, input, summaryOf(harness), blocks, A4_LANDSCAPE);
}
