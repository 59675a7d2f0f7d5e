import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CALCULATIONS } from '@latchwork/core/calc/index';
import { bench, type Bench } from './bench';

let b: Bench;
beforeAll(async () => {
  b = await bench();
});
afterAll(() => b.remove());

const AMPACITY = ['table=ac-43-13-table-11-9', 'size=22 AWG', 'ratedC=150', 'ambientC=158 degF', 'wires=33', 'loadPercent=20']; // prettier-ignore

describe('latchwork calc', () => {
  it('lists every calculation', async () => {
    const { code, out } = await b.run('calc');
    expect(code).toBe(0);
    for (const { id, title } of CALCULATIONS) expect(out).toMatch(new RegExp(`^  ${id} +${title.replace(/[()]/g, '\\$&')}$`, 'm')); // prettier-ignore
    const { calculations } = JSON.parse((await b.run('calc', '--json')).out);
    expect(calculations).toHaveLength(CALCULATIONS.length);
  });

  it('lists the inputs of one with units, choices and defaults', async () => {
    const { code, out } = await b.run('calc', 'ampacity');
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}ambientC +Ambient temperature, degC; needed$/m);
    expect(out).toMatch(/^ {2}size +Wire size; needed; "22 AWG" or "0.35 mm2"$/m);
    expect(out).toMatch(/^ {2}altitudeFt +Altitude, ft; by default 0$/m);
    const { calculations } = JSON.parse((await b.run('calc', 'ampacity', '--json')).out);
    expect(calculations[0].inputs[0]).toMatchObject({ key: 'table', kind: 'choice', needed: true });
    expect(calculations[0].inputs[6]).toEqual({
      key: 'altitudeFt', label: 'Altitude', unit: 'ft', kind: 'number', needed: false, default: 0,
    }); // prettier-ignore
  });

  // FAA AC 43.13-1B table 11-9: 5 A for 22 AWG at 150 degC, 70 degC ambient.
  it('answers with value, unit, formula, inputs, source and notes', async () => {
    const { code, out, err } = await b.run('calc', 'ampacity', ...AMPACITY);
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}Continuous current +5 A$/m);
    expect(out).toContain('Formula: I = I(table) x ambient x altitude x bundle');
    expect(out).toMatch(/^ {2}Ambient temperature +70 degC$/m);
    expect(out).toMatch(/^Source: FAA AC 43\.13-1B/m);
    expect(out).toMatch(/^Note: 70 degC ambient, 33 or more wires/m);
    expect(err).toContain('Checked against the limits entered');
  });

  it('gives the same as JSON of a stable shape', async () => {
    const answer = JSON.parse((await b.run('calc', 'ampacity', ...AMPACITY, '--json')).out);
    expect(Object.keys(answer)).toEqual(['format', 'formatVersion', 'calculation', 'title', 'about', 'inputs', 'results', 'working']); // prettier-ignore
    expect(answer).toMatchObject({ format: 'latchwork-calc', formatVersion: 1, calculation: 'ampacity' });
    expect(answer.inputs[1]).toEqual({
      key: 'size', label: 'Wire size', unit: '', value: { system: 'awg', gauge: 22 }, given: true,
    }); // prettier-ignore
    expect(answer.results[0]).toEqual({
      key: 'currentA',
      label: 'Continuous current',
      unit: 'A',
      value: 5,
    });
    expect(Object.keys(answer.working)).toEqual(['formula', 'figures', 'sources', 'notes']);
  });

  it.each<[string, string[], string]>([
    ['a missing input', ['contact-heating', 'currentA=3', 'ratedA=3'], 'Cannot verify: needs ambientC.'],
    ['a word for a number', ['conductor-mass', 'areaMm2=thick'], 'areaMm2: "thick" is not a number in mm2'],
    ['a bare wire size', ['ampacity', 'size=22'], 'size: "22" is not a wire size'],
    ['a choice there is not', ['board-spacing', 'peakV=10', 'layer=middle'], 'layer: '],
    ['an input there is not', ['conductor-mass', 'area=1'], 'area: no such input; known: areaMm2'],
    ['a negative area', ['conductor-mass', 'areaMm2=-1'], 'areaMm2: '],
    ['a value without a key', ['conductor-mass', '12'], '"12" is no input; write key=value.'],
    ['a key given twice', ['conductor-mass', 'areaMm2=1', 'areaMm2=2'], 'areaMm2 is given twice.'],
    ['a calculation there is not', ['poetry'], 'There is no calculation "poetry"'],
  ])('ends with 2 and a reason on %s', async (_, argv, reason) => {
    const { code, out, err } = await b.run('calc', ...argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(reason);
  });
});
