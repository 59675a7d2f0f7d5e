import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { continuityLimit } from '@latchwork/core/derive/harness-test/loop-resistance';
import { testModelOf } from '@latchwork/core/derive/harness-test/test-model';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { testTable } from '@latchwork/core/exports/test-table';
import { baselineOf } from '@latchwork/core/model/baseline';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const inputOf = (change?: (t: TinyDraft) => void) => {
  const harness = deriveHarness(tiny(change));
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};
const rowsOf = (test: string, change?: (t: TinyDraft) => void) =>
  testTable.table(inputOf(change)).rows.filter((r) => r.test === test);

describe('test table', () => {
  it('asks each net for continuity and for isolation from everything else, with all connectors unmated', () => {
    expect(rowsOf('continuity').map((r) => [r.net, r.signal, r.from, r.to, r.expected])).toEqual([
      ['N1', 'SUP', 'X1:1', 'X2:1', 'joined'],
      ['N2', 'RTN', 'X1:2', 'X2:2', 'joined'],
    ]);
    expect(rowsOf('isolation').map((r) => [r.net, r.from])).toEqual([
      ['N1', 'X1:1'],
      ['N2', 'X1:2'],
    ]);
    expect(rowsOf('unwired position').map((r) => r.from)).toEqual(['X1:3', 'X2:3']);
  });

  it('computes a loop worked by hand: 2 m of 22 AWG at 53.1 ohm/km and two contacts of 10 mohm are 126.2 mohm', () => {
    const { harness } = inputOf((t) => {
      t.wire('W1').lengthMm = 2000;
      t.part('wire', 'WIRE-22').resistanceOhmPerKm = 53.1;
      for (const c of ['C-SOCKET', 'C-PIN']) t.part('contact', c).resistanceMohm = 10;
    });
    const [net] = testModelOf(harness).nets;
    const [from, to] = net?.points ?? [];
    if (!net || !from || !to) throw new Error('no net');
    const limit = continuityLimit(harness, net, from, to);
    expect(limit.ok && limit.value.computedOhm).toBeCloseTo(0.1262, 6);
    // 0.1262 x 1.25 + 0.1 = 0.25775, rounded up.
    expect(limit.ok && limit.value.limitOhm).toBe(0.26);
  });

  it('leaves the limit blank where a length is not known, and says which', () => {
    const [row] = rowsOf('continuity', (t) => void (t.project.segments = []));
    expect([row?.limitOhm, row?.computedOhm]).toEqual([null, null]);
    expect(row?.remarks).toContain('cannot be verified, needs length of W1');
  });

  it('never tests a net above the lowest rating on it, and not at all where one is not stated', () => {
    const lowest = (v: number) => (t: TinyDraft) => void (t.part('housing', 'H-PIN').voltageMaxV = v);
    expect(rowsOf('isolation', lowest(60)).map((r) => r.testVoltageMaxV)).toEqual([60, 60]);
    const [row] = rowsOf('isolation', (t) => void delete t.part('wire', 'WIRE-22').voltageMaxV);
    expect(row?.testVoltageMaxV).toBeNull();
    expect(row?.remarks).toContain('cannot be verified, needs voltage rating of WIRE-22');
    expect([row?.insulationMohm, row?.leakageMa]).toEqual([null, null]);
  });

  it('names the half that each adapter needs, and that it is not known', () => {
    expect(rowsOf('adapter').map((r) => [r.from, r.to])).toEqual([
      ['X1', 'HEADER'],
      ['X2', 'H-SOCKET'],
    ]);
    const [first] = rowsOf('adapter', (t) => void (t.project.mates = []));
    expect([first?.to, first?.remarks]).toEqual([null, expect.stringContaining('mating half not known')]);
  });

  it('asks for locks, and for the rating that is printed on a fuse', () => {
    expect(rowsOf('presence').map((r) => [r.from, r.to])).toEqual([
      ['X1', 'LOCK'],
      ['X2', 'LOCK'],
    ]);
    const [fuse] = rowsOf('component, by eye', (t) => {
      t.project.fuses.push({ id: t.newId(), designator: 'F1', wire: t.wire('W1').id, ratedA: 2 });
    });
    expect([fuse?.from, fuse?.to, fuse?.expected]).toEqual(['F1', 'in W1', 'fitted, marked 2 A']);
  });

  it('names a net that no tester can look along, instead of passing it', () => {
    const [row] = rowsOf('continuity', (t) => {
      const id = t.newId();
      t.project.splices.push({ id, designator: 'XS1', position: { x: 0, y: 0 } });
      t.wire('W1').ends[1] = { at: 'splice', splice: id };
    }).filter((r) => r.expected === 'cannot be verified');
    expect(row?.remarks).toContain('W1');
  });

  it('says that a cavity that the part does not have cannot be touched', () => {
    const [row] = rowsOf('continuity', (t) => {
      const [end] = t.wire('W1').ends;
      if (end.at === 'cavity') end.cavity = '9';
    }).filter((r) => r.from === 'X1:9');
    expect(row?.remarks).toContain('X1:9 cannot be touched');
  });

  it('tells in the head what was seeded and found, and writes the baseline on paper', () => {
    const input = inputOf();
    const head = new Map(testTable.table(input).head);
    expect(head.get('Seeded faults')).toMatch(/^(\d+) of \1 found/);
    expect(Paper.parse(testTable.paper?.(input)).baseline).toBe(baselineOf(input.harness.project));
  });
});
