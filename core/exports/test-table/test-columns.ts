import type { ObjectRef } from '../../rules/finding';
import type { Cell, Column, RowOf } from '../table';

export const TEST_COLUMNS = [
  { key: 'step', title: 'Step', align: 'right' },
  { key: 'test', title: 'Test' },
  { key: 'net', title: 'Net' },
  { key: 'signal', title: 'Signal' },
  { key: 'from', title: 'From' },
  { key: 'to', title: 'To' },
  { key: 'expected', title: 'Expected' },
  { key: 'computedOhm', title: 'Computed at 20 degC', unit: 'ohm', align: 'right' },
  { key: 'limitOhm', title: 'Resistance, at most', unit: 'ohm', align: 'right' },
  { key: 'testVoltageMaxV', title: 'Test voltage, at most', unit: 'V', align: 'right' },
  { key: 'insulationMohm', title: 'Insulation resistance, at least', unit: 'Mohm', align: 'right' },
  { key: 'leakageMa', title: 'Leakage at withstand, at most', unit: 'mA', align: 'right' },
  { key: 'dwellS', title: 'Dwell, at most', unit: 's', align: 'right' },
  { key: 'source', title: 'Source of the limits' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type TestKey = (typeof TEST_COLUMNS)[number]['key'];
export type TestRow = RowOf<TestKey>;
/** A row before it has its number. */
export type OpenTestRow = {
  readonly cells: Partial<Record<TestKey, Cell>>;
  readonly objects: readonly ObjectRef[];
};
