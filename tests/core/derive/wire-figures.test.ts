import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { wireFigures } from '@latchwork/core/derive/wire-figures';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { describe, expect, it } from 'vitest';

/** What is computed about W1 of the tiny project: 308 mm of 22 AWG, 0.355 mm2, 1.2 mm outside. */
function figuresOf(change?: (t: TinyDraft) => void) {
  const harness = deriveHarness(tiny(change));
  const wire = harness.wires.find((w) => w.wire.designator === 'W1')!;
  return new Map(wireFigures(harness, wire).map((f) => [f.key, f]));
}

describe('what is computed about a wire', () => {
  it('is its resistance, computed and marked so where the record states none', () => {
    const r = figuresOf((t) => delete t.part('wire', 'WIRE-22').resistanceOhmPerKm).get('resistance')!;
    // 1000/58 ohm mm2/km x 1.02 / 0.355 mm2 x 0.308 m, by hand.
    expect(r.value).toBeCloseTo(0.0152578922, 9);
    expect(r.mark).toBe('at 20 °C, computed');
    expect(r.working!.notes.join()).toContain('Computed for plain annealed copper');
  });

  it('takes the value of the record where there is one', () => {
    const r = figuresOf((t) => (t.part('wire', 'WIRE-22').resistanceOhmPerKm = 50)).get('resistance')!;
    expect(r.value).toBeCloseTo(0.0154, 9);
    expect(r.mark).toBe('at 20 °C, catalogue');
  });

  it('says that an area from the designation alone is one', () => {
    const r = figuresOf((t) => {
      const part = t.part('wire', 'WIRE-22');
      delete part.areaMm2;
      delete part.stranding;
      delete part.resistanceOhmPerKm;
    }).get('resistance')!;
    expect(r.working!.notes.join()).toContain('The designation alone');
  });

  it('is its mass by the record, else an estimate, else what is missing', () => {
    const stated = figuresOf((t) => (t.part('wire', 'WIRE-22').massGPerM = 5)).get('mass')!;
    expect(stated).toMatchObject({ mark: 'catalogue', unit: 'g' });
    expect(stated.value).toBeCloseTo(1.54, 9);
    const estimated = figuresOf((t) => (t.part('wire', 'WIRE-22').insulation = 'PVC, irradiated')).get('mass')!; // prettier-ignore
    // (0.355 x 8.89 x 1.02 + (pi/4 x 1.2^2 - 0.355 x 9/7) x 1.4) g/m x 0.308 m, by hand.
    expect(estimated.mark).toBe('estimate');
    expect(estimated.value).toBeCloseTo(1.282337, 6);
    expect(figuresOf().get('mass')).toMatchObject({ value: undefined, needs: ['mass per metre of WIRE-22'] });
  });

  it('is the take-up of its twist, and what a twist lacks', () => {
    const twist = (t: TinyDraft, layMm?: number): void => {
      const wires = t.project.wires.map((w) => w.id);
      t.project.groups.push({ id: t.newId(), designator: 'G1', form: 'twisted', wires, ...(layMm ? { layMm } : {}) }); // prettier-ignore
    };
    // 300 mm x (sqrt(20^2 + (pi x 1.2)^2)/20 - 1), by hand.
    expect(figuresOf((t) => twist(t, 20)).get('take-up')!.value).toBeCloseTo(5.2830684, 6);
    expect(figuresOf((t) => twist(t)).get('take-up')).toMatchObject({ value: undefined, needs: ['lay of G1'] }); // prettier-ignore
    expect(figuresOf().has('take-up')).toBe(false);
  });

  it('is what a crimp on it must hold, by the table of the limit set', () => {
    // IEC 60352-2, table 1, from memory: 40 N for 22 AWG.
    expect(figuresOf().get('pull-force')).toMatchObject({ value: 40, unit: 'N', mark: 'not verified' });
    expect(figuresOf((t) => delete t.project.limitSet.tables).get('pull-force')).toMatchObject({
      value: undefined,
      needs: ['the table of pull-out forces in the limit set'],
    });
  });

  it('is its current against what it may carry', () => {
    const figures = figuresOf();
    expect(figures.get('current')!.value).toBeCloseTo(1, 9);
    expect(figures.get('current')!.most).toBe(figures.get('ampacity')!.value);
    expect(figures.get('ampacity')!.working!.sources[0]!.title).toContain('AC 43.13-1B');
    const hidden = figuresOf((t) => delete t.part('wire', 'WIRE-22').temperatureMaxC).get('ampacity')!;
    expect(hidden).toMatchObject({ value: undefined, needs: ['temperature rating of WIRE-22'] });
  });

  it('names the length where there is none', () => {
    const figures = figuresOf((t) => (t.project.segments = []));
    expect(figures.get('resistance')!.needs).toEqual(['length of W1']);
    expect(figures.get('mass')!.needs).toEqual(['length of W1']);
  });
});
