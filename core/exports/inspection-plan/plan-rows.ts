import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness } from '../../derive/harness';
import type { Cell, Column, RowOf } from '../table';
import type { Characteristic } from './characteristic';
import { connectorCharacteristics } from './connector-characteristics';
import { crimpCharacteristics } from './crimp-characteristics';
import { harnessCharacteristics } from './harness-characteristics';
import { samplingOf } from './sampling-cells';

export const PLAN_COLUMNS = [
  { key: 'number', title: 'No.', align: 'right' },
  { key: 'characteristic', title: 'Characteristic' },
  { key: 'at', title: 'At' },
  { key: 'requirement', title: 'Requirement' },
  { key: 'min', title: 'At least', align: 'right' },
  { key: 'max', title: 'At most', align: 'right' },
  { key: 'unit', title: 'Unit' },
  { key: 'class', title: 'Class' },
  { key: 'method', title: 'Method' },
  { key: 'lot', title: 'Lot', align: 'right' },
  { key: 'inspect', title: 'Inspect' },
  { key: 'sampleSize', title: 'Sample', align: 'right' },
  { key: 'accept', title: 'Accept up to', align: 'right' },
  { key: 'reject', title: 'Reject from', align: 'right' },
  { key: 'frequency', title: 'When' },
  { key: 'source', title: 'Source' },
  { key: 'record', title: 'Record' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type PlanKey = (typeof PLAN_COLUMNS)[number]['key'];

/** Every characteristic, numbered: first the crimps, then connectors, then the harness as a whole. */
export const characteristics = memoByIdentity((harness: Harness): readonly Characteristic[] => [
  ...crimpCharacteristics(harness),
  ...connectorCharacteristics(harness),
  ...harnessCharacteristics(harness),
]);

export const planRows = (harness: Harness, order: number): readonly RowOf<PlanKey>[] =>
  characteristics(harness).map((c, i) => ({ cells: cellsOf(c, i + 1, order), objects: c.objects }));

function cellsOf(c: Characteristic, number: number, order: number): Record<PlanKey, Cell> {
  const { lot, inspect, sampleSize, accept, reject } = samplingOf(c, order);
  return {
    number,
    characteristic: c.what,
    at: c.at,
    requirement: c.requirement,
    min: c.min ?? null,
    max: c.max ?? null,
    unit: c.unit ?? null,
    class: c.class,
    method: c.method,
    lot,
    inspect,
    sampleSize,
    accept,
    reject,
    frequency: typeof c.sampling === 'object' ? c.sampling.frequency : 'each lot',
    source: c.source,
    record: c.record,
    remarks: c.missing.map((m) => `cannot be verified, not stated: ${m}`).join('; ') || null,
  };
}
