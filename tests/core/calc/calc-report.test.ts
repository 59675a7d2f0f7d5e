import { calcReport, reportText } from '@latchwork/core/calc/calc-report';
import { CALC_GROUPS, calcGroupOf } from '@latchwork/core/calc/groups';
import { calculationById, CALCULATIONS } from '@latchwork/core/calc/index';
import { listColumns } from '@latchwork/core/calc/list-columns';
import { inputKind } from '@latchwork/core/calc/input-kind';
import { inputFields, readInputs, type RowTexts } from '@latchwork/core/calc/read-inputs';
import { describe, expect, it } from 'vitest';

const entryOf = (id: string) => calculationById(id)!;
const readOf = (id: string, texts: Record<string, string | RowTexts[]>) => readInputs(entryOf(id), texts);

describe('the groups', () => {
  it('hold every calculation once', () => {
    const grouped: string[] = CALC_GROUPS.flatMap((g) => [...g.ids]);
    expect([...grouped].sort()).toEqual(CALCULATIONS.map((c) => c.id).sort());
    expect(calcGroupOf('ampacity')).toBe('Current and heat');
  });
});

describe('lists', () => {
  it('of numbers may say how many of a kind there are', () => {
    expect(readOf('bundle-diameter', { wireDiametersMm: '3 x 1.5, 0.1 in' })).toEqual({
      ok: true,
      value: { wireDiametersMm: [1.5, 1.5, 1.5, 2.54] },
    });
    expect(readOf('bundle-diameter', { wireDiametersMm: '1,5; 2' })).toMatchObject({
      value: { wireDiametersMm: [1.5, 2] },
    });
    expect(readOf('bundle-diameter', { wireDiametersMm: '999999999 x 1' }).ok).toBe(false);
  });

  it('of objects may be rows of texts, of which the empty ones do not count', () => {
    const rows: Record<string, string>[] = [{ size: '22 AWG' }, { size: ' ' }, { areaMm2: '0.5' }];
    expect(readOf('crimp-equivalent-size', { wires: rows })).toEqual({
      ok: true,
      value: { wires: [{ size: { system: 'awg', gauge: 22 } }, { areaMm2: 0.5 }] },
    });
  });

  it('name row and column of what they cannot read', () => {
    const read = readOf('bundle-heat', { wires: [{ currentA: '2' }, { currentA: 'much' }] });
    expect(read.ok ? [] : read.problem).toEqual({
      code: 'bad-input',
      issues: [{ path: 'wires.1.currentA', message: '"much" is not a number in A' }],
    });
  });

  it('put what belongs to an inner object there', () => {
    const row = { id: 'w', from: 'a', to: 'b', ohm: '1', 'warming.ambientC': '20', 'warming.ratedC': '105', 'warming.ampacityA': '5' }; // prettier-ignore
    expect(readOf('circuit', { branches: [row] })).toMatchObject({
      value: { branches: [{ id: 'w', ohm: 1, warming: { ambientC: 20, ratedC: 105, ampacityA: 5 } }] },
    });
  });

  it('have a label on every column, and a choice where kinds differ', () => {
    const lists = CALCULATIONS.flatMap((c) => inputFields(c)).filter(([, s]) => inputKind(s).kind === 'rows');
    for (const [, schema] of lists) {
      const columns = listColumns(schema);
      expect(columns.length).toBeGreaterThan(0);
      expect(columns.every((c) => c.label !== '')).toBe(true);
    }
    const [draws] = listColumns(entryOf('circuit').inputs.shape['loads']!).filter((c) => c.label === 'Draws');
    expect(inputKind(draws!.schema)).toMatchObject({ kind: 'choice', choices: ['current', 'resistance'] });
  });

  it('leave no input that only JSON can give', () => {
    const json = CALCULATIONS.flatMap((c) =>
      inputFields(c).filter(([, schema]) => inputKind(schema).kind === 'json'),
    );
    expect(json.map(([key]) => key)).toEqual([]);
  });
});

describe('a report', () => {
  it('keeps what was given and what stands by default beside the answer', () => {
    const report = calcReport(entryOf('conductor-resistance'), { areaMm2: 1, lengthMm: 2000 });
    if (!report.ok) throw new Error('no report');
    expect(report.value.inputs.map((i) => [i.key, i.given])).toEqual([
      ['areaMm2', true],
      ['stranded', false],
      ['lengthMm', true],
      ['temperatureC', false],
    ]);
    const text = reportText(entryOf('conductor-resistance'), report.value);
    // 1000/58 ohm mm2/km x 1.02 x 2 m, by hand.
    expect(text).toMatch(/^ {2}Resistance of the length +0\.0351724 ohm$/m);
    expect(text).toMatch(/^ {2}Conductor temperature +20 degC \(by default\)$/m);
    expect(text).toContain('Formula: R = 1000/58');
    expect(text).toMatch(/^Note: Computed for plain annealed copper/m);
  });

  it('marks a source that was recalled', () => {
    const entry = entryOf('pull-force');
    const report = calcReport(entry, { table: 'ul-486a', size: { system: 'awg', gauge: 22 } });
    expect(report.ok && reportText(entry, report.value)).toMatch(
      /^Source: UL 486A-486B: .*\(not verified\)/m,
    );
  });
});
