import { crimpEquivalentSize } from '../../calc/crimp-equivalent-size';
import { RETENTION_SHARE } from '../../calc/data/pull-force';
import { pullForce } from '../../calc/pull-force';
import { crimpSpecFor } from '../../derive/crimp-spec';
import { metalAreaMm2 } from '../../derive/crimp-fit';
import type { Harness } from '../../derive/harness';
import { limitValue } from '../../derive/wire-ampacity';
import { roundTo } from '../../model/length-text';
import type { Conductor } from '../../model/parts/wire';
import { wireSizeText } from '../../model/wire-size';
import type { CrimpGroup } from './crimp-groups';

export interface SourcedValue {
  readonly value: number;
  readonly source: string;
}

/** What a crimp must be, as far as records and limit set say. Null: not stated. */
export interface CrimpValues {
  readonly heightMm: number | null;
  readonly heightToleranceMm: number | null;
  readonly widthMm: number | null;
  readonly insulationHeightMm: number | null;
  readonly specSource: string | null;
  readonly pull: SourcedValue | null;
  /** Largest pull on the wire of a seated contact. */
  readonly retentionMaxN: number | null;
  readonly stripMm: number | null;
  readonly stripToleranceMm: number | null;
  readonly missing: readonly string[];
}

/** Maker's specification first; for the pull the table of the limit set where the specification has none. */
export function crimpValues(harness: Harness, group: CrimpGroup): CrimpValues {
  const { part, wires, tool } = group;
  const conductors = wires.map((w) => w.conductor);
  const [only] = wires;
  const spec =
    part.kind === 'contact' && wires.length === 1 && only?.conductor
      ? crimpSpecFor(part, only.conductor.size, only.part?.partNumber)
      : undefined;
  const pull =
    spec?.pullForceMinN === undefined
      ? pullFromTable(harness, conductors)
      : { value: spec.pullForceMinN, source: spec.source ?? `record of ${part.partNumber}` };
  const stripMm = part.stripLengthMm ?? null;
  const ownTolerance = part.kind === 'contact' ? part.stripToleranceMm : undefined;
  const tolerance = ownTolerance ?? limitValue(harness.project.limitSet, 'strip-length-tolerance') ?? null;
  return {
    heightMm: spec?.heightMm ?? null,
    heightToleranceMm: spec?.heightToleranceMm ?? null,
    widthMm: spec?.widthMm ?? null,
    insulationHeightMm: spec?.insulationHeightMm ?? null,
    specSource: spec ? (spec.source ?? `record of ${part.partNumber}`) : null,
    pull,
    retentionMaxN: pull && part.kind === 'contact' ? roundTo(RETENTION_SHARE * pull.value, 1) : null,
    stripMm,
    stripToleranceMm: stripMm === null ? null : tolerance,
    missing: [
      ...wires.flatMap((w) => (w.part ? [] : [`wire part of ${w.wire.designator}`])),
      ...(spec?.heightMm === undefined ? [`crimp height${pairText(conductors)}`] : []),
      ...(spec && spec.heightMm !== undefined && spec.heightToleranceMm === undefined
        ? ['tolerance of the crimp height']
        : []),
      ...(pull ? [] : ['least pull-out force']),
      ...(stripMm === null ? ['strip length'] : []),
      ...(tool ? [] : ['tool']),
      ...(tool && tool.die === undefined ? ['die or setting'] : []),
    ],
  };
}

/** Several wires need a specification of their own; the equivalent size only says where to look for one. */
function pairText(conductors: readonly (Conductor | undefined)[]): string {
  if (conductors.length < 2) return '';
  const known = conductors.flatMap((c) => (c ? [{ size: c.size, areaMm2: metalAreaMm2(c) }] : []));
  const sum =
    known.length === conductors.length
      ? crimpEquivalentSize.run({ wires: known, evenGauges: true })
      : undefined;
  return sum?.ok
    ? ` of ${conductors.length} wires together (equivalent size ${sum.value.equivalentSize})`
    : ` of ${conductors.length} wires together`;
}

function pullFromTable(
  { project }: Harness,
  conductors: readonly (Conductor | undefined)[],
): SourcedValue | null {
  const named = project.limitSet.tables?.find((t) => t.id === 'pull-force')?.table;
  const table = pullForce.inputs.shape.table.safeParse(named);
  const known = conductors.flatMap((c) => (c ? [c] : []));
  const [first] = known;
  if (!table.success || !first || known.length < conductors.length) return null;
  // The weakest of the wires decides; each is pulled alone.
  const results = known.map((c) =>
    pullForce.run(pullForce.inputs.parse({ table: table.data, size: c.size, areaMm2: metalAreaMm2(c) })),
  );
  let least: SourcedValue | null = null;
  for (const [i, r] of results.entries()) {
    if (!r.ok) return null;
    const c = known[i];
    const mark = r.value.verified === 'yes' ? '' : ', not verified';
    const source = `${r.value.tableTitle} for ${c ? wireSizeText(c.size) : ''}${mark}`;
    if (!least || r.value.minimumN < least.value) least = { value: roundTo(r.value.minimumN, 1), source };
  }
  return least;
}
