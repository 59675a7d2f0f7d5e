import { crimpGroups, wireName } from '../crimp-sheets/crimp-groups';
import { HEIGHT_SAMPLES, PULL_SAMPLES } from '../crimp-sheets/crimp-checks';
import type { DocumentInput } from '../exporter';
import { planRows } from '../inspection-plan/plan-rows';
import { partsList } from '../parts-list';
import type { Cell, Column, RowOf } from '../table';

export const RECORD_COLUMNS = [
  { key: 'form', title: 'Form' },
  { key: 'line', title: 'Line', align: 'right' },
  { key: 'characteristic', title: 'Characteristic' },
  { key: 'at', title: 'At' },
  { key: 'requirement', title: 'Requirement' },
  { key: 'min', title: 'At least', align: 'right' },
  { key: 'max', title: 'At most', align: 'right' },
  { key: 'unit', title: 'Unit' },
  { key: 'readings', title: 'Readings to enter', align: 'right' },
  { key: 'result', title: 'Result' },
  { key: 'gauge', title: 'Gauge' },
  { key: 'lotOrSerial', title: 'Lot or serial number' },
  { key: 'verdict', title: 'Verdict' },
  { key: 'nonconformity', title: 'Nonconformity no.' },
  { key: 'signed', title: 'Name and date' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type RecordKey = (typeof RECORD_COLUMNS)[number]['key'];
export type RecordRow = RowOf<RecordKey>;

export const FORMS = {
  parts: 'First article: parts',
  processes: 'First article: materials, processes, tests',
  characteristics: 'First article: characteristics',
  heights: 'Crimp heights',
  pulls: 'Pull-out forces',
} as const;

/** What is filled in by hand stays blank; everything that is known beforehand is printed. */
export function recordRows(input: DocumentInput): readonly RecordRow[] {
  const rows = [...parts(input), ...processes(input), ...measured(input)];
  const lines = new Map<string, number>();
  return rows.map(({ form, objects, ...known }) => {
    const line = (lines.get(form) ?? 0) + 1;
    lines.set(form, line);
    const cells = Object.fromEntries(
      RECORD_COLUMNS.map(({ key }) => [
        key,
        key === 'form' ? form : key === 'line' ? line : (known[key] ?? null),
      ]),
    ) as Record<RecordKey, Cell>;
    return { cells, objects };
  });
}

type OpenRow = Partial<Record<RecordKey, Cell>> & {
  readonly form: string;
  readonly objects: RecordRow['objects'];
};

/** Part accountability: each line of the parts list that the harness brings. */
function parts(input: DocumentInput): OpenRow[] {
  const table = partsList.table(input);
  return table.rows.flatMap((row, i): OpenRow[] =>
    row.suppliedWith === 'equipment'
      ? []
      : [
          {
            form: FORMS.parts,
            characteristic: 'part',
            at: row.designators ?? null,
            requirement: words([row.partNumber ?? 'part not chosen', row.description, row.colour]),
            min: row.quantity ?? null,
            max: row.quantity ?? null,
            unit: row.unit ?? null,
            readings: 1,
            remarks: row.remarks ?? null,
            objects: table.objects[i] ?? [],
          },
        ],
  );
}

const words = (cells: readonly (Cell | undefined)[]): string =>
  cells.filter((t) => t !== null && t !== undefined && t !== '').join(', ');

/** Process and test accountability: tools with their crimps, and the electrical test. */
function processes({ harness }: DocumentInput): OpenRow[] {
  const crimps = crimpGroups(harness).map((g, i): OpenRow => ({
    form: FORMS.processes,
    characteristic: 'crimping',
    at: `sheet ${i + 1}: ${g.part.partNumber} on ${g.wires.map(wireName).join(' + ')}`,
    requirement: `${g.tool?.partNumber ?? 'tool not stated'}, die or setting ${g.tool?.die ?? 'not stated'}; calibrated`,
    readings: 1,
    remarks: g.tool ? null : 'tool not stated',
    objects: g.places.map((p) => p.object),
  }));
  const project: RecordRow['objects'] = [{ type: 'project', id: harness.project.id }];
  return [
    ...crimps,
    { form: FORMS.processes, characteristic: 'build sequence', at: 'harness', requirement: 'followed, departures listed', readings: 1, objects: project },
    { form: FORMS.processes, characteristic: 'test program', at: 'harness', requirement: 'made from the test table of this baseline; tried with an open, a short and a swap before use', readings: 1, objects: project },
    { form: FORMS.processes, characteristic: 'electrical test', at: 'harness', requirement: 'every step of the test table passed', readings: 1, objects: project },
  ]; // prettier-ignore
}

/** Characteristics of the inspection plan, by the form on which each is written down. */
function measured({ harness, options }: DocumentInput): OpenRow[] {
  const rows = planRows(harness, options?.quantity ?? 1);
  const formOf = (c: Cell): { form: string; readings: number } =>
    c === 'crimp height'
      ? { form: FORMS.heights, readings: HEIGHT_SAMPLES }
      : c === 'pull-out force'
        ? { form: FORMS.pulls, readings: PULL_SAMPLES }
        : { form: FORMS.characteristics, readings: 1 };
  const all = rows.map(({ cells: c, objects }): OpenRow => ({
    ...formOf(c.characteristic),
    characteristic: `${c.number} ${c.characteristic}`,
    at: c.at,
    requirement: c.requirement,
    min: c.min,
    max: c.max,
    unit: c.unit,
    remarks: c.remarks,
    objects,
  }));
  const order = [FORMS.characteristics, FORMS.heights, FORMS.pulls] as readonly string[];
  return order.flatMap((form) => all.filter((r) => r.form === form));
}
