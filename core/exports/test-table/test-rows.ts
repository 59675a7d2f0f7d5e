import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness } from '../../derive/harness';
import { testCoverage } from '../../derive/harness-test/coverage';
import { continuityLimit } from '../../derive/harness-test/loop-resistance';
import {
  testModelOf,
  type TestModel,
  type TestNet,
  type TestPoint,
} from '../../derive/harness-test/test-model';
import { testSteps, type TestStep } from '../../derive/harness-test/test-plan';
import { testVoltage } from '../../derive/harness-test/test-voltage';
import { roundTo } from '../../model/length-text';
import { cavityRef, wireRef } from '../../rules/refs';
import type { ObjectRef } from '../../rules/finding';
import type { Cell } from '../table';
import { adapterRows } from './adapter-rows';
import { TEST_COLUMNS, type OpenTestRow, type TestKey, type TestRow } from './test-columns';
import { componentRows, presenceRows } from './fitted-rows';

/** Hold until the reading stands still, one minute at most: NASA-STD-8739.4, 18.2. */
const DWELL_S = 60;

/** Adapters, then the steps in the order in which a tester runs them, then what a person looks at, then what no step tells. */
export const testRows = memoByIdentity((harness: Harness): readonly TestRow[] => {
  const model = testModelOf(harness);
  const open: OpenTestRow[] = [
    ...adapterRows(harness, model),
    ...presenceRows(model),
    ...testSteps(model).map((step) => stepRow(harness, model, step)),
    ...blindRows(model),
    ...componentRows(harness),
    ...missedRows(harness),
  ];
  return open.map(({ cells, objects }, i) => ({
    cells: Object.fromEntries(
      TEST_COLUMNS.map(({ key }) => [key, key === 'step' ? i + 1 : (cells[key] ?? null)]),
    ) as Record<TestKey, Cell>,
    objects,
  }));
});

/** "N3": nets by their place in the natural order of their first points. */
export const netName = (index: number): string => `N${index + 1}`;

export const signalsOf = (net: TestNet | undefined): string | null =>
  [...new Set((net?.wires ?? []).flatMap((w) => (w.wire.signal ? [w.wire.signal.name] : [])))].join(', ') ||
  null;

const refOf = (p: TestPoint): ObjectRef[] =>
  p.cavity ? [cavityRef(p.cavity)] : p.wire ? [wireRef(p.wire)] : [];

function stepRow(harness: Harness, model: TestModel, step: TestStep): OpenTestRow {
  if (step.kind === 'unwired')
    return {
      cells: {
        test: 'unwired position',
        from: step.from.text,
        to: 'every other point',
        expected: 'not joined',
        remarks: step.from.cavity?.state === 'undeclared' ? 'state of the cavity not declared' : null,
      },
      objects: refOf(step.from),
    };
  const net = model.nets[step.net];
  const common = { net: netName(step.net), signal: signalsOf(net), from: step.from.text };
  if (!net) return { cells: common, objects: [] };
  return step.kind === 'continuity'
    ? continuityRow(harness, net, common, step.from, step.to)
    : isolationRow(harness, net, common);
}

type Common = Pick<Record<TestKey, Cell>, 'net' | 'signal' | 'from'>;

function continuityRow(
  harness: Harness,
  net: TestNet,
  common: Common,
  from: TestPoint,
  to: TestPoint,
): OpenTestRow {
  const limit = continuityLimit(harness, net, from, to);
  const isEarth = net.wires.some((w) => w.wire.signal?.class === 'protective-earth');
  const remarks = [
    ...(limit.ok ? [] : [`limit cannot be verified, needs ${limit.needs.join(', ')}`]),
    ...nowhere([from, to]),
    ...(isEarth ? ['protective bond: the limit of the product standard goes first'] : []),
  ];
  return {
    cells: {
      ...common,
      test: 'continuity',
      to: to.text,
      expected: 'joined',
      computedOhm: limit.ok ? roundTo(limit.value.computedOhm, 4) : null,
      limitOhm: limit.ok ? limit.value.limitOhm : null,
      source: limit.ok ? limit.value.working : null,
      remarks: remarks.join('; ') || null,
    },
    objects: [...refOf(from), ...refOf(to)],
  };
}

function isolationRow(harness: Harness, net: TestNet, common: Common): OpenTestRow {
  const voltage = testVoltage(harness, net);
  return {
    cells: {
      ...common,
      test: 'isolation',
      to: 'every point outside the net',
      expected: 'not joined',
      testVoltageMaxV: voltage.ok ? voltage.atMostV : null,
      dwellS: DWELL_S,
      source: voltage.ok
        ? `rating of ${voltage.by}; dwell: NASA-STD-8739.4, 18.2 (until steady, one minute at most)`
        : null,
      remarks: [
        ...nowhere(net.points),
        ...(voltage.ok ? [] : [`test voltage cannot be verified, needs ${voltage.needs.join(', ')}`]),
        'insulation resistance and leakage: as agreed for the product class',
      ].join('; '),
    },
    objects: net.points.flatMap(refOf),
  };
}

/** Points that an adapter cannot reach, because the part has no such cavity. */
const nowhere = (points: readonly TestPoint[]): string[] =>
  points.flatMap((p) =>
    p.cavity && !p.cavity.exists ? [`${p.text} cannot be touched: the part has no such cavity`] : [],
  );

/** Nets that a tester cannot look along: they are named, not passed over. */
function blindRows({ nets }: TestModel): OpenTestRow[] {
  return nets.flatMap((net, i) =>
    net.points.length >= 2
      ? []
      : [
          {
            cells: {
              test: 'continuity',
              net: netName(i),
              signal: signalsOf(net),
              from: net.points[0]?.text ?? null,
              expected: 'cannot be verified',
              remarks: `fewer than two points to touch; wires ${net.wires.map((w) => w.wire.wire.designator).join(', ')}`,
            },
            objects: net.wires.map((w) => wireRef(w.wire)),
          },
        ],
  );
}

function missedRows(harness: Harness): OpenTestRow[] {
  return testCoverage(harness).missed.map(({ fault, reason }) => ({
    cells: { test: 'not found by this test', from: fault.text, expected: null, remarks: reason },
    objects: [...new Set(fault.wires)].map((id) => ({ type: 'wire' as const, id })),
  }));
}
