import { byId } from '../../base/by-id';
import { lengthTolerance } from '../../calc/length-tolerance';
import type { Harness } from '../../derive/harness';
import { limitValue } from '../../derive/wire-ampacity';
import { colourText } from '../../model/colour';
import { wireSizeText } from '../../model/wire-size';
import { wireRef } from '../../rules/refs';
import type { Cell, Column, RowOf } from '../table';
import type { CutEnd, CutJob } from './cut-jobs';
import type { CutLine } from './cut-plan';

export const CUT_COLUMNS = [
  { key: 'sequence', title: 'Seq.', align: 'right' },
  { key: 'setUp', title: 'Set-up', align: 'right' },
  { key: 'change', title: 'Change before it' },
  { key: 'wires', title: 'Wires' },
  { key: 'wirePart', title: 'Wire part' },
  { key: 'size', title: 'Size' },
  { key: 'colour', title: 'Colour' },
  { key: 'lengthMm', title: 'Cut length', unit: 'mm', align: 'right' },
  { key: 'plusMm', title: 'Plus', unit: 'mm', align: 'right' },
  { key: 'minusMm', title: 'Minus', unit: 'mm', align: 'right' },
  { key: 'quantity', title: 'Per harness', align: 'right' },
  { key: 'orderQuantity', title: 'Per order', align: 'right' },
  { key: 'endA', title: 'End A' },
  { key: 'stripAMm', title: 'Strip A', unit: 'mm', align: 'right' },
  { key: 'stripAToleranceMm', title: 'Strip A, plus and minus', unit: 'mm', align: 'right' },
  { key: 'contactA', title: 'Contact A' },
  { key: 'sealA', title: 'Seal A' },
  { key: 'toolA', title: 'Tool A' },
  { key: 'labelA', title: 'Label A' },
  { key: 'endB', title: 'End B' },
  { key: 'stripBMm', title: 'Strip B', unit: 'mm', align: 'right' },
  { key: 'stripBToleranceMm', title: 'Strip B, plus and minus', unit: 'mm', align: 'right' },
  { key: 'contactB', title: 'Contact B' },
  { key: 'sealB', title: 'Seal B' },
  { key: 'toolB', title: 'Tool B' },
  { key: 'labelB', title: 'Label B' },
  { key: 'mark', title: 'Mark on the wire' },
  { key: 'group', title: 'Twist or shield with' },
  { key: 'cable', title: 'Cable and core' },
  { key: 'path', title: 'Goes into' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type CutKey = (typeof CUT_COLUMNS)[number]['key'];

export function cutRow(harness: Harness, line: CutLine, sequence: number, order: number): RowOf<CutKey> {
  const [first] = line.jobs;
  if (!first) throw new Error('a line of the cut list without a wire');
  const { wire } = first;
  const lengthMm = wire.length.cutMm ?? null;
  const standard = lengthMm === null ? undefined : lengthTolerance.run({ lengthMm });
  const sides = line.jobs.map(
    (j) => (line.swapped ? [j.ends[1], j.ends[0]] : j.ends) as readonly [CutEnd, CutEnd],
  );
  const a = sides.map((s) => s[0]);
  const b = sides.map((s) => s[1]);
  return {
    cells: {
      sequence,
      setUp: line.setUp,
      change: line.changed.join(', ') || null,
      wires: line.jobs.map((j) => j.wire.wire.designator).join(', '),
      wirePart: wire.part?.partNumber ?? null,
      size: wire.conductor ? wireSizeText(wire.conductor.size) : null,
      colour: wire.wire.colour ? colourText(wire.wire.colour) : null,
      lengthMm,
      plusMm: standard?.ok ? standard.value.plusMm : null,
      minusMm: lengthMm === null ? null : (limitValue(harness.project.limitSet, 'cut-length-minus') ?? null),
      quantity: line.jobs.length,
      orderQuantity: line.jobs.length * order,
      ...sideCells('A', a),
      ...sideCells('B', b),
      mark:
        line.jobs
          .map((j) => markOf(harness, j) ?? '?')
          .join(', ')
          .replace(/^[?, ]*$/, '') || null,
      group: wire.group ? `${wire.group.designator} (${wire.group.form}${layText(wire.group.layMm)})` : null,
      cable: wire.wire.core
        ? `${byId(harness.project.cables).get(wire.wire.core.cable)?.designator ?? '?'}:${wire.wire.core.name}`
        : null,
      path:
        [...new Set(line.jobs.map((j) => j.wire.segments.map((s) => s.designator).join(' ')))].join('; ') ||
        null,
      remarks: remarksOf(harness, line, a, b).join('; ') || null,
    },
    objects: line.jobs.map((j) => wireRef(j.wire)),
  };
}

/** What a marker prints along the wire, by the method of the project; null where none is settled or the signal is not named. */
function markOf({ project }: Harness, { wire, ends: [from, to] }: CutJob): string | null {
  switch (project.labelMethod) {
    case 'identification':
      return wire.wire.designator;
    case 'signal':
      return wire.signal?.name ?? null;
    case 'local-end':
      return `${from.place} at ${from.place}, ${to.place} at ${to.place}`;
    case 'remote-end':
      return `${to.place} at ${from.place}, ${from.place} at ${to.place}`;
    case 'both-ends':
      return `${from.place}/${to.place}`;
    case undefined:
      return null;
  }
}

const layText = (layMm: number | undefined): string => (layMm === undefined ? '' : `, lay ${layMm} mm`);

/** Parts of one line are the same for all of its wires; places and labels are listed in the order of the wires. */
function sideCells<S extends 'A' | 'B'>(side: S, ends: readonly CutEnd[]): SideCells<S> {
  const [first] = ends;
  const labels = ends.map((e) => e.label);
  return {
    [`end${side}`]: ends.map((e) => e.place).join(', '),
    [`strip${side}Mm`]: first?.stripMm ?? null,
    [`strip${side}ToleranceMm`]: typeof first?.stripMm === 'number' ? first.stripToleranceMm : null,
    [`contact${side}`]: first?.contact ?? null,
    [`seal${side}`]: first?.seal ?? null,
    [`tool${side}`]: first?.tool ?? null,
    [`label${side}`]: labels.some((l) => l !== null) ? labels.map((l) => l ?? '?').join(', ') : null,
  } as SideCells<S>;
}

type SideCells<S extends 'A' | 'B'> = Record<
  `end${S}` | `strip${S}Mm` | `strip${S}ToleranceMm` | `contact${S}` | `seal${S}` | `tool${S}` | `label${S}`,
  Cell
>;

function remarksOf(
  { project }: Harness,
  line: CutLine,
  a: readonly CutEnd[],
  b: readonly CutEnd[],
): string[] {
  const said = new Set<string>();
  line.jobs.forEach((job, i) => {
    const { wire } = job;
    const name = line.jobs.length > 1 ? `${wire.wire.designator}: ` : '';
    if (!wire.part) said.add(`${name}wire part not chosen`);
    else if (!wire.wire.colour) said.add(`${name}colour not chosen`);
    if (wire.length.kind === 'unknown')
      said.add(`${name}length not known, needs ${wire.length.needs.join(', ')}`);
    else if (wire.length.needs.length > 0) said.add(`${name}length without ${wire.length.needs.join(', ')}`);
    for (const fuse of project.fuses) if (fuse.wire === wire.wire.id) said.add(`${name}${fuseWords(fuse)}`);
    if (wire.wire.core) said.add(`${name}cut with its cable, stripped as a core`);
    for (const r of a[i]?.remarks ?? []) said.add(`${name}A: ${r}`);
    for (const r of b[i]?.remarks ?? []) said.add(`${name}B: ${r}`);
  });
  return [...said];
}

/** A fuse sits in the wire: whoever cuts it must know. */
const fuseWords = ({ designator, fromSourceMm }: Harness['project']['fuses'][number]): string =>
  `fuse ${designator} in it, ${fromSourceMm === undefined ? 'place not stated' : `${fromSourceMm} mm from the source`}`;
