import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { calcProblemText } from '@latchwork/core/calc/calc-problem';
import { fieldMeta, figuresOf, runCalculation } from '@latchwork/core/calc/calculation';
import { calculationById, CALCULATIONS } from '@latchwork/core/calc/index';
import { inputFields, isOptional, readInputs } from '@latchwork/core/calc/read-inputs';
import { describe, expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../../core/calc', import.meta.url));
/** Files of core/calc that define a calculation. */
const defining = readdirSync(folder)
  .filter((f) => f.endsWith('.ts') && f !== 'calculation.ts')
  .filter((f) => /= calculation[<(]/.test(readFileSync(`${folder}/${f}`, 'utf8')))
  .map((f) => f.replace('.ts', ''));

const ask = (id: string, texts: Record<string, string>) => {
  const entry = calculationById(id)!;
  const read = readInputs(entry, texts);
  return read.ok ? runCalculation(entry, read.value) : read;
};
const problemText = (id: string, texts: Record<string, string>): string => {
  const result = ask(id, texts);
  return result.ok ? 'no problem' : calcProblemText(result.problem);
};

describe('the registry of calculations', () => {
  it('lists every file that defines one, under its name', () => {
    expect(CALCULATIONS.map((c) => c.id).sort()).toEqual([...defining].sort());
  });

  it.each(CALCULATIONS.map((c) => [c.id, c] as const))(
    '%s labels its inputs and outputs and names its sources',
    (_, c) => {
      const unlabelled = inputFields(c).filter(([, schema]) => fieldMeta(schema).label === '');
      expect(unlabelled.map(([key]) => key)).toEqual([]);
      expect(Object.values(c.outputs).filter((o) => o.label === '')).toEqual([]);
      expect(c.sources.length).toBeGreaterThan(0);
      expect(c.about).not.toBe('');
    },
  );

  it.each(CALCULATIONS.map((c) => [c.id, c] as const))(
    '%s names what it needs when it is given nothing',
    (_, c) => {
      const result = runCalculation(c, {});
      if (result.ok) expect(inputFields(c).every(([, schema]) => isOptional(schema))).toBe(true);
      else expect(result.problem.code).toBe('needs');
    },
  );

  it('refuses inputs it does not know', () => {
    const result = runCalculation(calculationById('conductor-mass')!, { areaMm2: 1, areaInch2: 1 });
    expect(result.ok ? undefined : result.problem.code).toBe('bad-input');
  });
});

describe('inputs as texts', () => {
  it('reads numbers, lengths with units, wire sizes, choices and yes or no', () => {
    const result = ask('ampacity', {
      table: 'ac-43-13-table-11-9', size: '22 AWG', ratedC: '150', ambientC: '70 degC', wires: '33', loadPercent: '20 %',
    }); // prettier-ignore
    expect(result.ok && result.value).toMatchObject({ currentA: 5 });
    const resistance = ask('conductor-resistance', { areaMm2: '1', stranded: 'no', lengthMm: '1 ft' });
    expect(resistance.ok && resistance.value).toMatchObject({ ohm: (1000 / 58) * 0.3048e-3 });
    expect(ask('creepage', { voltageV: '48', pollutionDegree: '2', group: 'IIIa' })).toMatchObject({
      ok: true,
    });
  });

  it('reads a network as JSON', () => {
    const result = ask('circuit', {
      sources: '[{"id":"G","positive":"a","negative":"0","voltageV":12}]',
      branches: '[{"id":"w","from":"a","to":"b","ohm":1}]',
      loads: '[{"id":"e","from":"b","to":"0","draws":"current","currentA":2}]',
    });
    expect(result.ok && result.value).toMatchObject({ lowestLoadV: 10, lossW: 4 });
  });

  it('gives the named numbers with their units', () => {
    const entry = calculationById('skipped-positions')!;
    const result = ask('skipped-positions', { pitchMm: '3', contactWidthMm: '0.8', skipped: '1' });
    expect(result.ok && figuresOf(entry, result.value)).toEqual([
      { name: 'Distance', value: 5.2, unit: 'mm' },
    ]);
  });

  it.each<[string, string, Record<string, string>, string]>([
    ['an unknown name', 'conductor-mass', { areaMm2: '1', colour: 'RD' }, 'Cannot compute: colour: no such input; known: areaMm2, stranded, layFactor, densityGPerCm3, lengthMm.'],
    ['a word for a number', 'conductor-mass', { areaMm2: 'thick' }, 'Cannot compute: areaMm2: "thick" is not a number in mm2.'],
    ['another unit', 'contact-heating', { currentA: '3 mV', ratedA: '3', ambientC: '20' }, 'Cannot compute: currentA: "3 mV" is not a number in A.'],
    ['a bare wire size', 'ampacity', { size: '22' }, 'Cannot compute: size: "22" is not a wire size; write "22 AWG" or "0.35 mm2" with its unit.'],
    ['broken JSON', 'circuit', { sources: '[' }, 'Cannot compute: sources: expected JSON.'],
    ['a missing input', 'contact-heating', { currentA: '3', ratedA: '3' }, 'Cannot verify: needs ambientC.'],
    ['an empty text is a missing input', 'contact-heating', { currentA: '3', ratedA: '3', ambientC: ' ' }, 'Cannot verify: needs ambientC.'],
  ])('%s', (_, id, texts, expected) => {
    expect(problemText(id, texts)).toBe(expected);
  }); // prettier-ignore
});
