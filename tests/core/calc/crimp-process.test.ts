import { bendRadius } from '@latchwork/core/calc/bend-radius';
import { runCalculation } from '@latchwork/core/calc/calculation';
import { crimpEquivalentSize } from '@latchwork/core/calc/crimp-equivalent-size';
import { LEVELS, ZERO_LETTER, type Aql } from '@latchwork/core/calc/data/sampling';
import { harnessMass } from '@latchwork/core/calc/harness-mass';
import { leadHole } from '@latchwork/core/calc/lead-hole';
import { pegFit } from '@latchwork/core/calc/peg-fit';
import { pitchError } from '@latchwork/core/calc/pitch-error';
import { pullForce } from '@latchwork/core/calc/pull-force';
import { reflowPeak } from '@latchwork/core/calc/reflow-peak';
import { codeLetter, samplingPlan } from '@latchwork/core/calc/sampling-plan';
import { strandDamage } from '@latchwork/core/calc/strand-damage';
import { tieSpacing } from '@latchwork/core/calc/tie-spacing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueOf } from './published/check';

const awg = (gauge: number) => ({ system: 'awg', gauge }) as const;
const mm2 = (areaMm2: number) => ({ system: 'mm2', areaMm2 }) as const;
const plan = (lotSize: number, aql: Aql, level: (typeof LEVELS)[number] = 'II') =>
  valueOf(samplingPlan.run({ lotSize, level, aql }));

describe('a sampling plan', () => {
  const lot = fc.integer({ min: 2, max: 2_000_000 });
  const level = fc.constantFrom(...LEVELS);
  const aql = fc.constantFrom(...(Object.keys(ZERO_LETTER) as Aql[]));

  it('never asks for more than the lot, and rejects from one more than it accepts', () => {
    fc.assert(
      fc.property(lot, level, aql, (n, l, a) => {
        const got = plan(n, a, l);
        expect(got.sampleSize).toBeLessThanOrEqual(n);
        expect(got.sampleSize).toBeGreaterThan(0);
        expect(got.reject).toBe(got.accept + 1);
        expect(got.inspection === 'every item').toBe(got.sampleSize === n);
      }),
    );
  });

  it('does not use the letters I and O, and grows with the lot', () => {
    fc.assert(
      fc.property(lot, lot, level, (a, b, l) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)].map((n) => codeLetter(n, l));
        expect('IO').not.toContain(small);
        expect(large! >= small!).toBe(true);
      }),
    );
  });

  // Trap of the reference file: an arrow changes the sample size too. Lot 100 at level II is letter F, 20 pieces.
  it('changes the sample size with an arrow', () => {
    expect(plan(100, '1.5')).toMatchObject({ letter: 'F', planLetter: 'G', sampleSize: 32, accept: 1 });
    expect(plan(100, '1.0')).toMatchObject({ letter: 'F', planLetter: 'E', sampleSize: 13, accept: 0 });
    expect(plan(10, '0.65')).toMatchObject({ sampleSize: 10, inspection: 'every item' });
    expect(plan(100, '1.5').working.notes.join(' ')).toContain('letter F to G');
  });
});

describe('the least pull-out force', () => {
  const force = (input: object) => runCalculation(pullForce, input as Record<string, unknown>);

  // Trap of the reference file: tables differ by 1.5 to 2.3 for one size, so the name belongs to the number.
  it('names its table, and whether it was seen', () => {
    const ul = force({ table: 'ul-486a', size: awg(18) });
    const as = force({ table: 'as7928', size: awg(18) });
    expect(ul).toMatchObject({ ok: true, value: { minimumN: 89, verified: 'yes' } });
    expect(as).toMatchObject({ ok: true, value: { minimumN: 169, verified: 'yes' } });
    expect(force({ table: 'ul-486a', size: awg(20) })).toMatchObject({ value: { verified: 'not verified' } });
    expect(force({ table: 'iec-60352-2', size: mm2(0.5) })).toMatchObject({
      value: { minimumN: 60, verified: 'not verified' },
    });
  });

  // Trap of the reference file: a false table with 5, 40 and 150 N is in circulation.
  it.each([
    [0.05, 6],
    [0.5, 60],
    [2.5, 230],
  ])('of %s mm2 is %s N by IEC 60352-2', (area, expected) => {
    expect(force({ table: 'iec-60352-2', size: mm2(area) })).toMatchObject({ value: { minimumN: expected } });
  });

  // Trap of the reference file: the values level off above 4 mm2.
  it('is not extrapolated, and lies between its neighbours', () => {
    expect(force({ table: 'iec-60352-2', size: mm2(16) })).toMatchObject({
      problem: { code: 'out-of-range' },
    });
    expect(force({ table: 'iec-60352-2', size: mm2(0.03) })).toMatchObject({
      problem: { code: 'out-of-range' },
    });
    expect(force({ table: 'ul-486a', size: mm2(0.5) })).toMatchObject({ problem: { code: 'out-of-range' } });
    const between = force({ table: 'iec-60352-2', size: mm2(0.41) });
    expect(between.ok && between.value).toMatchObject({ minimumN: 50, verified: 'not verified' });
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 10, noNaN: true }),
        fc.double({ min: 0.05, max: 10, noNaN: true }),
        (a, b) => {
          const of = (x: number): number =>
            valueOf(pullForce.run({ table: 'iec-60352-2', size: mm2(x), tensileNPerMm2: 1 })).minimumN;
          expect(of(Math.max(a, b))).toBeGreaterThanOrEqual(of(Math.min(a, b)));
        },
      ),
    );
  });

  it('of two wires is that of the thinner, and the retention pull is 80 % of it', () => {
    const two = force({ table: 'nasa-8739-4', size: awg(22), otherSize: awg(24) });
    expect(two).toMatchObject({ value: { minimumN: 36 } });
    expect(two.ok && (two.value as unknown as { retentionMaxN: number }).retentionMaxN).toBeCloseTo(28.8, 9);
  });

  it('names what it needs', () => {
    expect(force({ table: 'ul-486a' })).toMatchObject({ problem: { code: 'needs', inputs: ['size'] } });
    expect(force({ table: 'sixty-percent' })).toMatchObject({ problem: { code: 'needs' } });
  });
});

describe('the equivalent size of a crimp', () => {
  it('has at least the summed area, and the next thinner even gauge has less', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 8, max: 15 }), { minLength: 1, maxLength: 6 }), (halves) => {
        const wires = halves.map((h) => ({ size: awg(2 * h) }));
        const of = (list: typeof wires): number =>
          valueOf(crimpEquivalentSize.run({ wires: list, evenGauges: true })).equivalentGauge;
        const gauge = of(wires);
        expect(gauge).toBeLessThanOrEqual(Math.min(...halves) * 2);
        expect(of([...wires, wires[0]!])).toBeLessThanOrEqual(gauge);
      }),
    );
  });

  it('counts the metal that is there: two 0.6 mm2 strands of "20 AWG" are 2368 cmil', () => {
    const got = valueOf(
      crimpEquivalentSize.run({
        wires: [{ areaMm2: 0.6 }, { areaMm2: 0.6, size: awg(20) }],
        evenGauges: true,
      }),
    );
    expect(got.circularMils).toBeCloseTo(1.2 / 0.000506707479, 1);
    expect(got.equivalentGauge).toBe(16);
  });

  it('ends at 4/0 and names what is missing', () => {
    expect(
      runCalculation(crimpEquivalentSize, { wires: [{ size: awg(-3) }, { size: awg(0) }] }),
    ).toMatchObject({
      problem: { code: 'out-of-range' },
    });
    expect(runCalculation(crimpEquivalentSize, { wires: [{}] })).toMatchObject({
      problem: { code: 'needs' },
    });
  });
});

describe('strand damage', () => {
  const most = (strands: number, more: object = {}) =>
    runCalculation(strandDamage, { strands, ...more } as Record<string, unknown>);

  // Trap of the reference file: 16 to 25 strands is 3, 0 or 2.
  it('depends on the class and on tinning', () => {
    expect(most(19, { productClass: '2' })).toMatchObject({ value: { damagedMax: 3 } });
    expect(most(19, { productClass: '3' })).toMatchObject({ value: { damagedMax: 0 } });
    expect(most(19, { productClass: '3', tinned: true })).toMatchObject({ value: { damagedMax: 2 } });
  });

  // Trap of the reference file: the aircraft table counts nicked and broken apart.
  it('counts nicked and broken apart by the aircraft table, and says which strandings it knows', () => {
    expect(most(19, { table: 'ac-43-13-1b' })).toMatchObject({ value: { damagedMax: 2, severedMax: 0 } });
    expect(most(20, { table: 'ac-43-13-1b' })).toMatchObject({ problem: { code: 'out-of-range' } });
    expect(most(19, { table: 'ac-43-13-1b', material: 'aluminium' })).toMatchObject({
      value: { damagedMax: 0, severedMax: 0 },
    });
  });

  it('of a solid wire is none', () => {
    expect(most(1, { productClass: '1' })).toMatchObject({ value: { damagedMax: 0 } });
  });
});

describe('the least bend radius', () => {
  // Trap of the reference file: compute the bundle and each member, take the larger.
  it('is the larger of what the bundle and its members ask for', () => {
    const run = (members: object[]) => runCalculation(bendRadius, { bundleDiameterMm: 8, bundleRule: 'as50881-supported', members }); // prettier-ignore
    expect(run([])).toMatchObject({ value: { leastMm: 24, governs: 'bundle' } });
    expect(run([{ diameterMm: 5, rule: 'nasa-coaxial' }])).toMatchObject({ value: { leastMm: 30, preferredMm: 50, governs: 'member 1' } }); // prettier-ignore
    expect(run([{ diameterMm: 1.5, rule: 'a620-single-wire' }])).toMatchObject({ value: { leastMm: 24 } });
    expect(run([{ diameterMm: 5, factor: 12 }])).toMatchObject({ value: { leastMm: 60 } });
    expect(run([{ diameterMm: 5 }])).toMatchObject({ problem: { code: 'needs' } });
  });

  // Trap of the reference file: 6 and 10 times are both correct for the same cable.
  it('tells the installed radius from the preferred one', () => {
    const got = runCalculation(bendRadius, { bundleDiameterMm: 5, bundleRule: 'nasa-multiconductor' });
    expect(got).toMatchObject({ value: { leastMm: 30, preferredMm: 50 } });
  });
});

describe('board and panel', () => {
  // Trap of the reference file: ">= 2.5" of revision C became "> 2.5" in D.
  it('a body of exactly 2.5 mm is thick in revision C and not in D', () => {
    const at = (revision: string) => runCalculation(reflowPeak, { bodyThicknessMm: 2.5, bodyVolumeMm3: 500, revision }); // prettier-ignore
    expect(at('C')).toMatchObject({ value: { classificationC: 245 } });
    expect(at('D')).toMatchObject({ value: { classificationC: 250 } });
  });

  // Trap of the reference file: the classification is a limit of the part, not the profile of the board.
  it('says by how much a process stays below the limit of the part', () => {
    const got = runCalculation(reflowPeak, { bodyThicknessMm: 3, bodyVolumeMm3: 500, processPeakC: 250 });
    expect(got).toMatchObject({ value: { classificationC: 245, marginC: -5, timeWithin5CS: 30 } });
    expect(got.ok && got.value.working.notes.join()).toContain('limit of the part');
  });

  // Trap of the reference file: levels A, B and C are no product classes.
  it('says that hole levels are no product classes, and asks for the second side of a rectangle', () => {
    const round = runCalculation(leadHole, { sideMm: 1 });
    expect(round.ok && round.value.working.notes.join()).toContain('not product classes');
    expect(runCalculation(leadHole, { sideMm: 1, shape: 'rectangular' })).toMatchObject({
      problem: { code: 'needs', inputs: ['otherSideMm'] },
    });
    const flat = runCalculation(leadHole, { sideMm: 0.6, otherSideMm: 0.8, shape: 'rectangular' });
    expect(flat.ok && (flat.value as unknown as { leadMaxMm: number }).leadMaxMm).toBeCloseTo(1, 12);
  });

  it('a pitch error grows with every way', () => {
    const got = runCalculation(pitchError, { ways: 12, pitchMm: 2.5, otherPitchMm: 2.54, playMm: 0.1 });
    // Play of 0.1 to each side is 0.2 in all: five gaps of 0.04, six ways.
    expect(got).toMatchObject({ value: { waysMax: 6 } });
    expect(
      runCalculation(pitchError, { ways: 12, pitchMm: 2.5, otherPitchMm: 2.5, playMm: 0.1 }),
    ).toMatchObject({
      value: { endToEndMm: 0, waysMax: undefined },
    });
  });

  it.each([
    [{ pegMm: 2, holeMm: 2.2 }, 'free'],
    [{ pegMm: 2, holeMm: 2.1, pegToleranceMm: 0.1, holeToleranceMm: 0.05 }, 'may bind'],
    [{ pegMm: 2.4, holeMm: 2.2, pegToleranceMm: 0.05 }, 'never fits'],
  ])('peg %o: %s', (input, verdict) => {
    expect(runCalculation(pegFit, input)).toMatchObject({ value: { verdict } });
  });
});

it('ties stand closer on thin bundles, by a table that is marked as recalled', () => {
  const at = (diameterMm: number) => valueOf(tieSpacing.run({ table: 'nasa-8739-4', diameterMm, lengthMm: 0, breakouts: 0 })); // prettier-ignore
  const spacings = [3, 6.4, 6.5, 12.7, 20, 40].map((d) => at(d).spacingMaxMm);
  expect(spacings).toEqual([19.1, 19.1, 38.1, 38.1, 50.8, 76.2]);
  expect(at(3).working.sources[0]!.verified).toBe(false);
});

it('a mass that is not known makes the whole unknown', () => {
  const got = runCalculation(harnessMass, {
    items: [
      { name: 'X1', massG: 2 },
      { name: 'W1', lengthMm: 300 },
    ],
  });
  expect(got).toMatchObject({ problem: { code: 'needs', inputs: ['mass of W1'] } });
});
