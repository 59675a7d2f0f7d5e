import { ok, problem, type Result } from '../base/result';
import type { Equipment } from '../model/equipment';
import type { MatingHalf, Part } from '../model/parts/part';
import { asText } from './fields';
import { findPart } from './find-part';
import type { ImportProblem } from './import-problem';
import { readRows, type FieldSpecs, type Row } from './read-rows';

/** Columns of a connectors CSV: one placed housing or header a row. */
export const CONNECTOR_COLUMNS = {
  designator: { read: asText, required: true },
  part: { read: asText, required: true },
  mates_with: { read: asText },
  equipment: { read: asText },
} as const satisfies FieldSpecs;

export interface ConnectorPlan {
  readonly designator: string;
  readonly part: MatingHalf;
  readonly equipment: string | undefined;
  readonly row: Row<typeof CONNECTOR_COLUMNS>;
}

/** What a connectors CSV asks for, with every name found. */
export interface ConnectorsPlan {
  readonly connectors: readonly ConnectorPlan[];
  /** Pairs of designators, each pair once. */
  readonly mates: readonly (readonly [string, string])[];
  readonly equipment: ReadonlyMap<string, Equipment['kind']>;
}

/** Reads the connectors and finds their parts in the catalogues by part number. */
export function readConnectors(
  file: string,
  text: string,
  catalogue: readonly Part[],
): Result<ConnectorsPlan, readonly ImportProblem[]> {
  const rows = readRows(file, text, CONNECTOR_COLUMNS);
  if (!rows.ok) return rows;
  const problems: ImportProblem[] = [];
  const connectors = new Map<string, ConnectorPlan>();
  for (const row of rows.value) {
    const { designator, part: number, equipment } = row.values;
    const before = connectors.get(designator);
    if (before) {
      problems.push(row.problem('designator', `${designator} stands in line ${before.row.line} already`));
      continue;
    }
    const part = findPart(catalogue, number, ['housing', 'header']);
    if (!part.ok) problems.push(row.problem('part', part.problem));
    else connectors.set(designator, { designator, part: part.value, equipment, row });
  }
  // Names are looked up only when all are known, so that one wrong part does not make its mates look wrong too.
  if (problems.length) return problem(problems);
  const list = [...connectors.values()];
  const mates = matesOf(list, connectors, problems);
  const equipment = equipmentOf(list, problems);
  return problems.length ? problem(problems) : ok({ connectors: list, mates, equipment });
}

function matesOf(
  list: readonly ConnectorPlan[],
  known: ReadonlyMap<string, ConnectorPlan>,
  problems: ImportProblem[],
): ConnectorsPlan['mates'] {
  const partner = new Map<string, string>();
  const mates: [string, string][] = [];
  for (const { designator, row } of list) {
    const other = row.values.mates_with;
    if (other === undefined) continue;
    const refuse = (message: string): void => void problems.push(row.problem('mates_with', message));
    if (other === designator) refuse('a connector cannot mate with itself');
    else if (!known.has(other)) refuse(`there is no connector ${other}`);
    else if (partner.get(designator) === other) continue;
    else if (partner.has(designator))
      refuse(`${designator} is mated with ${partner.get(designator)} already`);
    else if (partner.has(other)) refuse(`${other} is mated with ${partner.get(other)} already`);
    else {
      partner.set(designator, other).set(other, designator);
      mates.push([designator, other]);
    }
  }
  return mates;
}

/** A name becomes a board where a header for boards is on it, a panel where a panel connector is, else a device. */
function equipmentOf(
  list: readonly ConnectorPlan[],
  problems: ImportProblem[],
): ReadonlyMap<string, Equipment['kind']> {
  const out = new Map<string, Equipment['kind']>();
  for (const { part, equipment, row } of list) {
    if (equipment === undefined) continue;
    const kind = kindOf(part);
    const before = out.get(equipment);
    if (kind !== 'device' && before !== undefined && before !== 'device' && before !== kind)
      problems.push(
        row.problem(
          'equipment',
          `${equipment} would be a ${before} and a ${kind} at once; give the two their own names`,
        ),
      );
    out.set(equipment, kind === 'device' ? (before ?? kind) : kind);
  }
  return out;
}

function kindOf(part: MatingHalf): Equipment['kind'] {
  if (part.mounting === 'board' || (part.mounting === undefined && part.kind === 'header')) return 'board';
  return part.mounting === 'panel' ? 'panel' : 'device';
}
