import { ampacity } from '@latchwork/core/calc/ampacity';
import { airAt, standardPressurePa } from '@latchwork/core/calc/heat/air';
import { cylinderLossWPerM } from '@latchwork/core/calc/heat/cylinder-loss';
import { bundleFactor5088, countFactorNec } from '@latchwork/core/calc/bundle-factor';
import { bundleHeat } from '@latchwork/core/calc/bundle-heat';
import type { CalcProblem } from '@latchwork/core/calc/calc-problem';
import { circuit } from '@latchwork/core/calc/circuit';
import { clearance } from '@latchwork/core/calc/clearance';
import { conductorArea } from '@latchwork/core/calc/conductor-area';
import { conductorResistance } from '@latchwork/core/calc/conductor-resistance';
import { contactDerating } from '@latchwork/core/calc/contact-derating';
import { contactHeating } from '@latchwork/core/calc/contact-heating';
import { contactRating } from '@latchwork/core/calc/contact-rating';
import { creepage, groupOfCti } from '@latchwork/core/calc/creepage';
import { fuseAgainstWires } from '@latchwork/core/calc/fuse-against-wires';
import { inrush } from '@latchwork/core/calc/inrush';
import { shortCircuit } from '@latchwork/core/calc/short-circuit';
import { skippedPositions } from '@latchwork/core/calc/skipped-positions';
import { voltageDrop } from '@latchwork/core/calc/voltage-drop';
import type { Result } from '@latchwork/core/base/result';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const value = <T>(r: Result<T, CalcProblem>): T => {
  if (!r.ok) throw new Error(JSON.stringify(r.problem));
  return r.value;
};
const code = (r: Result<unknown, CalcProblem>): string | undefined => (r.ok ? undefined : r.problem.code);
const awg = (gauge: number) => ({ system: 'awg', gauge }) as const;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('conductors', () => {
  it('the catalogue value wins over the computed one, and each says what it is', () => {
    const r = conductorResistance.inputs.parse({ areaMm2: 1, catalogueOhmPerKm: 19.5 });
    expect(value(conductorResistance.run(r))).toMatchObject({ at20OhmPerKm: 19.5, basis: 'catalogue' });
    expect(value(conductorResistance.run({ ...r, catalogueOhmPerKm: undefined })).basis).toBe('computed');
    expect(code(conductorResistance.run({ ...r, catalogueOhmPerKm: undefined, areaMm2: undefined }))).toBe(
      'needs',
    );
  });
  it('trap: a stranded "20 AWG" is not the solid one', () => {
    const solid = value(conductorArea.run({ size: awg(20) }));
    const stranded = value(conductorArea.run({ size: awg(20), strands: 19, strandDiameterMm: 8 * 0.0254 }));
    expect(stranded.circularMils).toBeCloseTo(1216, 6);
    expect(stranded.areaMm2 / solid.areaMm2).toBeGreaterThan(1.15);
    expect([solid.basis, stranded.basis]).toEqual(['designation', 'stranding']);
  });
  it('trap: 75 C values are 22 % above 20 C values', () => {
    const at = (temperatureC: number) =>
      value(conductorResistance.run(conductorResistance.inputs.parse({ areaMm2: 1, temperatureC }))).ohmPerKm;
    expect(at(75) / at(20)).toBeCloseTo(309.5 / 254.5, 12);
  });
  it('resistance grows with length and temperature and falls with area', () => {
    const at = (areaMm2: number, lengthMm: number, temperatureC: number) =>
      value(conductorResistance.run(conductorResistance.inputs.parse({ areaMm2, lengthMm, temperatureC })))
        .ohm;
    fc.assert(
      fc.property(number(0.05, 50), number(1, 1e5), number(-40, 150), number(1.001, 3), (a, l, t, k) => {
        expect(at(a, l * k, t)).toBeGreaterThan(at(a, l, t));
        expect(at(a * k, l, t)).toBeLessThan(at(a, l, t));
        expect(at(a, l, t + k)).toBeGreaterThan(at(a, l, t));
      }),
    );
  });
  it('circular mils and mm2 round trip', () => {
    fc.assert(
      fc.property(number(0.01, 200), (areaMm2) => {
        const { circularMils } = value(conductorArea.run({ areaMm2 }));
        expect(circularMils * (Math.PI / 4) * 0.0254 ** 2).toBeCloseTo(areaMm2, 9);
      }),
    );
  });
});

describe('voltage drop', () => {
  const base = voltageDrop.inputs.parse({
    currentA: 20,
    ohmPerKm: 4.13,
    lengthMm: 11_887,
    lengthIs: 'total-path',
  });
  it('trap: a one-way length counts twice, a total path once', () => {
    const once = value(voltageDrop.run(base)).dropV;
    expect(value(voltageDrop.run({ ...base, lengthIs: 'one-way-two-wire' })).dropV).toBeCloseTo(2 * once, 12);
  });
  it('the longest length gives exactly the allowed drop, joints included', () => {
    fc.assert(
      fc.property(number(0.1, 30), number(1, 300), number(0, 0.01), number(20, 120), (currentA, ohmPerKm, jointsOhm, temperatureC) => {
        const i = { ...base, currentA, ohmPerKm, jointsOhm, temperatureC, limitV: 1 };
        const { longestMm } = value(voltageDrop.run(i));
        expect(value(voltageDrop.run({ ...i, lengthMm: longestMm! })).dropV).toBeCloseTo(1, 9);
      }),
    ); // prettier-ignore
  });
  it('grows with length, current and temperature', () => {
    fc.assert(
      fc.property(number(0.1, 30), number(1, 1e5), number(20, 120), number(1.001, 3), (currentA, lengthMm, temperatureC, k) => {
        const at = (more: object) => value(voltageDrop.run({ ...base, currentA, lengthMm, temperatureC, ...more })).dropV;
        expect(at({ lengthMm: lengthMm * k })).toBeGreaterThan(at({}));
        expect(at({ currentA: currentA * k })).toBeGreaterThan(at({}));
        expect(at({ temperatureC: temperatureC + k })).toBeGreaterThan(at({}));
      }),
    ); // prettier-ignore
  });
  it('agrees with the circuit solution of the same path', () => {
    const solved = value(
      circuit.run({
        sources: [{ id: 'G', positive: 'a', negative: '0', voltageV: 28, innerOhm: 0 }],
        branches: [{ id: 'w', from: 'a', to: 'b', ohm: (4.13 * 11.887) / 1000 }],
        loads: [{ id: 'e', from: 'b', to: '0', draws: 'current', currentA: 20 }],
      }),
    );
    expect(28 - solved.lowestLoadV!).toBeCloseTo(value(voltageDrop.run(base)).dropV, 9);
  });
});

describe('the circuit by name', () => {
  it('names the loads that a supply cannot drive', () => {
    const solved = value(
      circuit.run({
        sources: [{ id: 'G', positive: 'a', negative: '0', voltageV: 5, innerOhm: 0 }],
        branches: [{ id: 'w', from: 'a', to: 'b', ohm: 1 }],
        loads: [{ id: 'e', from: 'b', to: '0', draws: 'current', currentA: 20 }],
      }),
    );
    expect(solved.collapsed).toEqual(['e']);
  });
  it('says what has no solution and where', () => {
    const result = circuit.run({
      sources: [{ id: 'G', positive: 'a', negative: '0', voltageV: 5, innerOhm: 0 }],
      branches: [],
      loads: [{ id: 'e', from: 'a', to: 'open', draws: 'current', currentA: 1 }],
    });
    expect(result.ok ? undefined : result.problem).toEqual({
      code: 'no-solution', reason: 'the current of a load has no way back to its source', objects: ['e'],
    }); // prettier-ignore
  });
});

describe('ampacity', () => {
  const of = (more: object) => ampacity.run(ampacity.inputs.parse({ table: 'ac-43-13-table-11-9', size: awg(20), ratedC: 150, ambientC: 70, wires: 40, loadPercent: 20, ...more })); // prettier-ignore

  it('the conditions of the table stand in the answer', () => {
    expect(value(of({})).conditions).toContain('70 degC ambient, 33 or more wires');
  });
  it('a rating between two columns takes the lower one', () => {
    expect(value(of({ ratedC: 125 })).baseA).toBe(4);
    expect(value(of({ ratedC: 125 })).limitC).toBe(105);
    expect(code(of({ ratedC: 80 }))).toBe('out-of-range');
  });
  it('a colder ambient earns no credit in table 11-9, a hotter one costs', () => {
    expect(value(of({ ambientC: 20 })).currentA).toBe(7);
    expect(value(of({ ambientC: 110 })).currentA).toBeCloseTo(7 * Math.sqrt(40 / 80), 12);
    expect(value(of({ ambientC: 150 })).currentA).toBe(0);
  });
  it('outside its conditions there is no number', () => {
    expect(code(of({ loadPercent: 60 }))).toBe('out-of-range');
    expect(code(of({ loadPercent: undefined }))).toBe('needs');
    expect(code(of({ size: { system: 'mm2', areaMm2: 0.5 } }))).toBe('out-of-range');
    expect(code(of({ size: awg(28) }))).toBe('out-of-range');
    expect(code(of({ table: 'entered-free-air' }))).toBe('needs');
    expect(code(of({ table: 'nec-310-17-free-air', size: awg(14), ratedC: 60, ambientC: 60 }))).toBe(
      'out-of-range',
    );
    expect(code(of({ table: 'entered-free-air', freeAirA: 20, altitudeFt: 30_000 }))).toBe('out-of-range');
    expect(code(of({ table: 'entered-free-air', freeAirA: 20 }))).toBe('out-of-range');
  });
  it('trap: the bundled column and the bundle formula are different rules', () => {
    const column = value(of({ table: 'eee-inst-002', size: awg(12), ratedC: 200, wires: 8 })).currentA;
    const formula = value(of({ table: 'mil-std-975', size: awg(12), ratedC: 200, wires: 8 })).currentA;
    expect([column, formula]).toEqual([11.5, 18.75]);
  });
  it('what was recalled is marked, what was seen is not', () => {
    const verified = (more: object) => value(of(more)).working.sources[0]!.verified;
    expect(verified({})).toBe(true);
    expect(verified({ table: 'nec-310-17-free-air', size: awg(14), ratedC: 90, ambientC: 30 })).toBe(true);
    expect(verified({ table: 'nec-310-17-free-air', size: awg(14), ratedC: 75, ambientC: 30 })).toBe(false);
    expect(verified({ table: 'eee-inst-002', size: awg(22), ratedC: 200 })).toBe(false);
  });
  it('counts conductors as NEC does', () => {
    expect([1, 3, 4, 6, 7, 9, 10, 20, 21, 30, 31, 40, 41, 99].map((n) => countFactorNec(n).factor)).toEqual([
      1, 1, 0.8, 0.8, 0.7, 0.7, 0.5, 0.5, 0.45, 0.45, 0.4, 0.4, 0.35, 0.35,
    ]); // prettier-ignore
  });
  it('never grows with wires, load, ambient or altitude', () => {
    const factor = (n: number, load: number) => value(bundleFactor5088(n, load)).factor;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 18 }), number(0, 99), number(0, 1), (n, load, more) => {
        expect(factor(n + 1, load)).toBeLessThanOrEqual(factor(n, load));
        expect(factor(n, load + more)).toBeLessThanOrEqual(factor(n, load));
      }),
    );
    const at = (table: string, more: object) =>
      value(
        of({
          table,
          size: awg(14),
          ratedC: table === 'ac-43-13-table-11-9' ? 200 : 90,
          freeAirA: 30,
          wires: 9,
          ...more,
        }),
      ).currentA;
    fc.assert(
      fc.property(
        fc.constantFrom('ac-43-13-table-11-9', 'nec-310-17-free-air', 'nec-310-16-raceway'),
        number(-20, 79), number(0, 1), fc.integer({ min: 1, max: 60 }),
        (table, ambientC, more, wires) => {
          expect(at(table, { ambientC: ambientC + more })).toBeLessThanOrEqual(at(table, { ambientC }));
          expect(at(table, { ambientC, wires: wires + 1 })).toBeLessThanOrEqual(at(table, { ambientC, wires }));
        },
      ),
    ); // prettier-ignore
    const high = (altitudeFt: number) => at('entered-free-air', { altitudeFt });
    expect(high(10_000)).toBe(high(20_000));
    expect(high(20_000)).toBeLessThan(high(0));
  });
});

describe('the heat of a bundle', () => {
  const wire = (id: string, currentA: number) => ({
    id,
    ohmPerKm: 53,
    currentA,
    conductorMm: 0.75,
    odMm: 1.2,
  });
  const of = (more: object) => bundleHeat.run(bundleHeat.inputs.parse({ wires: [wire('a', 5), wire('b', 5), wire('c', 0)], diameterMm: 2.6, ambientC: 25, ...more })); // prettier-ignore

  it('uses air as tables have it', () => {
    // 20 C, sea level: k 0.0257 W/(m K), nu 15.1e-6 m2/s, a 21.2e-6 m2/s (engineering tables, from memory).
    const air = airAt(20, 0);
    expect(air.conductivityWPerMK).toBeCloseTo(0.0257, 3);
    expect(air.kinematicViscosityM2PerS * 1e6).toBeCloseTo(15.1, 0);
    expect(air.diffusivityM2PerS * 1e6).toBeCloseTo(21.2, 0);
    // ISO 2533: 11 000 m 22 632 Pa, 18 000 m 7505 Pa.
    expect(standardPressurePa(11_000)).toBeCloseTo(22_632, -1);
    expect(standardPressurePa(18_000)).toBeCloseTo(7505, -1);
  });
  it('loses heat as worked out by hand for a pipe', () => {
    // 0.1 m at 165 C in a room at 23 C, emissivity 0.85. Air at the film, 367 K, from engineering tables (from memory):
    // k 0.0313, nu 22.8e-6, a 32.8e-6, Pr 0.697: Ra 5.07e6, Nu 23.1, h 7.23, 322 W/m; radiation
    // 0.85 x 5.67e-8 x pi x 0.1 x (438.15^4 - 296.15^4) = 441.6 W/m.
    const pipe = { diameterMm: 100, ambientC: 23, heightM: 0 };
    const convection = cylinderLossWPerM({ ...pipe, emissivity: 0, convectionFactor: 1 }, 165);
    const radiation = cylinderLossWPerM({ ...pipe, emissivity: 0.85, convectionFactor: 0 }, 165);
    expect(Math.abs(convection - 322.3) / 322.3).toBeLessThan(0.015);
    expect(Math.abs(radiation - 441.6) / 441.6).toBeLessThan(0.001);
  });
  it('conducts across the bundle, the coverings and the insulation as by hand', () => {
    const b = value(of({ coverings: [{ wallMm: 0.7, conductivityWPerMK: 0.3 }] }));
    const across = b.lossWPerM / (4 * Math.PI * 0.25);
    const covering = (b.lossWPerM * Math.log(2 / 1.3)) / (2 * Math.PI * 0.3);
    const insulation = ((b.lossWPerM / 2) * Math.log(1.2 / 0.75)) / (2 * Math.PI * 0.2);
    expect(b.hottestC - b.surfaceC).toBeCloseTo(across + covering + insulation, 3);
  });
  it('balances: what is lost in the wires leaves the surface, inside the band', () => {
    const b = value(of({}));
    expect(b.lossWPerM).toBeCloseTo((2 * 25 * 0.053 * (234.5 + b.hottestC)) / 254.5, 4);
    expect(b.hottestC).toBeGreaterThan(b.surfaceC);
    expect(b.fromC).toBeLessThan(b.hottestC);
    expect(b.toC).toBeGreaterThan(b.hottestC);
  });
  it('is at ambient without current', () => {
    expect(value(of({ wires: [wire('a', 0)] })).hottestC).toBeCloseTo(25, 4);
  });
  it('the load factor brings the hottest conductor to the limit', () => {
    const f = value(of({ limitC: 105 })).loadFactor!;
    expect(value(of({ wires: [wire('a', 5 * f), wire('b', 5 * f), wire('c', 0)] })).hottestC).toBeCloseTo(
      105,
      2,
    );
  });
  it('grows with current, ambient and height; a tight covering of good conduction helps a thin bundle', () => {
    fc.assert(
      fc.property(number(0.5, 6), number(-20, 60), number(0, 10_000), number(1.01, 1.3), (a, ambientC, heightM, k) => {
        const at = (more: object) => value(of({ wires: [wire('a', a), wire('b', a)], ambientC, heightM, ...more })).hottestC;
        expect(at({ wires: [wire('a', a * k), wire('b', a)] })).toBeGreaterThan(at({}));
        expect(at({ ambientC: ambientC + k })).toBeGreaterThan(at({}));
        expect(at({ heightM: heightM + 1000 })).toBeGreaterThan(at({}));
      }),
      { numRuns: 40 },
    ); // prettier-ignore
    const bare = value(of({})).hottestC;
    expect(value(of({ coverings: [{ wallMm: 1, conductivityWPerMK: 10 }] })).hottestC).toBeLessThan(bare);
    expect(value(of({ coverings: [{ wallMm: 1, conductivityWPerMK: 0.01 }] })).hottestC).toBeGreaterThan(
      bare,
    );
  });
  it('names a bundle that finds no balance, and one without a diameter', () => {
    expect(code(of({ wires: [wire('a', 200), wire('b', 200)] }))).toBe('no-solution');
    expect(code(of({ diameterMm: undefined }))).toBe('needs');
  });
});

describe('short circuit, fuse and inrush', () => {
  const fault = shortCircuit.inputs.parse({ areaMm2: 0.35, startC: 70, limitC: 160, letThroughA2s: 500 });
  it('at I2t = k2 S2 the conductor is exactly at its limit', () => {
    const { withstandA2s } = value(shortCircuit.run(fault));
    expect(value(shortCircuit.run({ ...fault, letThroughA2s: withstandA2s })).temperatureC).toBeCloseTo(
      160,
      9,
    );
    expect(value(shortCircuit.run({ ...fault, letThroughA2s: withstandA2s })).share).toBe(1);
  });
  it('needs a let-through, and a start below the limit', () => {
    expect(code(shortCircuit.run({ ...fault, letThroughA2s: undefined, faultA: 100 }))).toBe('needs');
    expect(code(shortCircuit.run({ ...fault, startC: 160 }))).toBe('out-of-range');
  });
  it('a thicker wire takes more, a hotter start less', () => {
    fc.assert(
      fc.property(number(0.05, 20), number(-20, 150), number(1.01, 3), (areaMm2, startC, k) => {
        const at = (more: object) =>
          value(shortCircuit.run({ ...fault, areaMm2, startC, ...more })).withstandA2s;
        expect(at({ areaMm2: areaMm2 * k })).toBeGreaterThan(at({}));
        expect(at({ startC: startC + k })).toBeLessThan(at({}));
      }),
    );
  });
  it('a fuse is compared with every wire behind it', () => {
    const wires = [{ id: 'trunk', ampacityA: 12 }, { id: 'branch', ampacityA: 4 }, { id: 'same', ampacityA: 7.5 }]; // prettier-ignore
    const f = value(fuseAgainstWires.run({ fuseRatedA: 7.5, wires, loadA: 6, loadMargin: 1.25 }));
    expect(f).toMatchObject({
      unprotected: ['branch'],
      weakest: 'branch',
      weakestA: 4,
      carriesLoad: true,
      loadWithMarginA: 7.5,
    });
    expect(
      value(fuseAgainstWires.run({ fuseRatedA: 7.5, wires, loadA: 6.1, loadMargin: 1.25 })).carriesLoad,
    ).toBe(false);
    expect(value(fuseAgainstWires.run({ fuseRatedA: 4, wires, loadMargin: 1.25 })).unprotected).toEqual([]);
  });
  it('a charging capacitor: peak V/R, and the energy in R fixes I2t', () => {
    // Energy lost in R while charging is C V2/2 = R x integral of I2, whatever R is.
    const i = value(
      inrush.run(inrush.inputs.parse({ supplyV: 24, capacitanceUf: 1000, loopOhm: 0.1, fuseMeltingA2s: 30 })),
    );
    expect(i.peakA).toBeCloseTo(240, 9);
    expect(i.pulseA2s * 0.1).toBeCloseTo((1000e-6 * 24 ** 2) / 2, 12);
    expect(i.fuseShare).toBeCloseTo(2.88 / 6, 9);
    expect(code(inrush.run(inrush.inputs.parse({ peakA: 3 })))).toBe('needs');
  });
});

describe('contacts', () => {
  it('rise and current follow the exponent and the loaded ways', () => {
    const h = contactHeating.inputs.parse({ currentA: 3, ratedA: 3, ambientC: 40 });
    expect(value(contactHeating.run(h)).temperatureC).toBe(70);
    expect(value(contactHeating.run({ ...h, loadedWaysFactor: 0.5 })).riseK).toBe(120);
    fc.assert(
      fc.property(number(0.1, 10), number(1.5, 2), number(1.01, 2), (currentA, exponent, k) => {
        const at = (more: object) =>
          value(contactHeating.run({ ...h, currentA, exponent, ...more })).temperatureC;
        expect(at({ currentA: currentA * k })).toBeGreaterThan(at({}));
        expect(at({ ambientC: 40 + k })).toBeGreaterThan(at({}));
        expect(at({ loadedWaysFactor: 1 / k })).toBeGreaterThan(at({}));
      }),
    );
  });
  it('the derating curve ends at the limiting temperature', () => {
    const d = contactDerating.inputs.parse({ limitC: 105, knownA: 4, knownAtC: 25, ambientC: 105 });
    expect(value(contactDerating.run(d)).deratedA).toBe(0);
    expect(value(contactDerating.run({ ...d, ambientC: 120 })).deratedA).toBe(0);
    expect(code(contactDerating.run({ ...d, knownAtC: 105 }))).toBe('out-of-range');
  });
  it('a rating holds for its conditions and milder ones', () => {
    const ratings = [
      { currentA: 9, loadedWays: 2, areaMm2: 0.8 },
      { currentA: 7, loadedWays: 2, areaMm2: 0.5 },
      { currentA: 5, loadedWays: 12, areaMm2: 0.5 },
    ];
    expect(contactRating(ratings, 2, 0.9)?.currentA).toBe(9);
    expect(contactRating(ratings, 2, 0.6)?.currentA).toBe(7);
    expect(contactRating(ratings, 3, 0.9)?.currentA).toBe(5);
    expect(contactRating(ratings, 13, 0.9)).toBeUndefined();
    expect(contactRating(ratings, 2, 0.35)).toBeUndefined();
    expect(contactRating(ratings, 2, undefined)).toBeUndefined();
    expect(contactRating([{ currentA: 5 }], 8, undefined)).toMatchObject({
      currentA: 5,
      notStated: ['loadedWays', 'areaMm2'],
    });
    expect(contactRating([{ currentA: 5 }, ...ratings], 13, 0.9)).toBeUndefined();
    expect(contactRating([], 1, 1)).toBeUndefined();
  });
});

describe('clearance and creepage', () => {
  const gap = clearance.inputs.parse({ impulseV: 2500, pollutionDegree: 2 });
  const way = creepage.inputs.parse({ voltageV: 48, pollutionDegree: 2, group: 'IIIa' });
  it('takes the next row up', () => {
    expect(value(clearance.run({ ...gap, impulseV: 2501 })).clearanceMm).toBe(2);
    expect(value(creepage.run({ ...way, voltageV: 50.1 })).rowV).toBe(63);
  });
  it('trap: creepage is never less than the clearance', () => {
    expect(value(creepage.run({ ...way, clearanceMm: 1.5 })).creepageMm).toBe(1.5);
    expect(value(creepage.run({ ...way, clearanceMm: 0.2 })).creepageMm).toBe(1.2);
  });
  it('trap: the groups differ from 40 V up', () => {
    const at = (voltageV: number) =>
      (['I', 'II', 'IIIa'] as const).map(
        (group) => value(creepage.run({ ...way, voltageV, group })).creepageMm,
      );
    expect(at(32)).toEqual([0.53, 0.53, 0.53]);
    expect(at(40)).toEqual([0.56, 0.8, 1.1]);
  });
  it('trap: 1.0 kV at pollution degree 2 is 0.2 mm, not 0.25', () => {
    expect(value(clearance.run({ ...gap, impulseV: 1000 })).clearanceMm).toBe(0.2);
  });
  it('altitude multiplies the clearance; below 2000 m there is no credit', () => {
    expect(value(clearance.run({ ...gap, altitudeM: -50 })).clearanceMm).toBe(1.5);
    expect(value(clearance.run({ ...gap, altitudeM: 2001 })).clearanceMm).toBeCloseTo(1.5 * 1.14, 12);
    expect(code(clearance.run({ ...gap, altitudeM: 20_001 }))).toBe('out-of-range');
  });
  it('reinforced: the next preferred impulse, and twice the creepage', () => {
    expect(value(clearance.run({ ...gap, reinforced: true })).impulseV).toBe(4000);
    expect(value(clearance.run({ ...gap, impulseV: 3000, reinforced: true })).impulseV).toBeCloseTo(4800, 9);
    expect(value(creepage.run({ ...way, reinforced: true })).creepageMm).toBe(2.4);
  });
  it('refuses what the tables do not hold', () => {
    expect(code(clearance.run({ ...gap, impulseV: undefined }))).toBe('needs');
    expect(code(clearance.run({ ...gap, impulseV: 12_001 }))).toBe('out-of-range');
    expect(code(creepage.run({ ...way, voltageV: 1001 }))).toBe('out-of-range');
    expect(code(creepage.run({ ...way, voltageV: 700, pollutionDegree: 3, group: 'IIIb' }))).toBe(
      'out-of-range',
    );
    expect(code(creepage.run({ ...way, printedBoard: true, group: 'IIIb' }))).toBe('out-of-range');
  });
  it('never shrinks with voltage, impulse, pollution or altitude', () => {
    fc.assert(
      fc.property(number(1, 900), number(0, 100), fc.constantFrom('I', 'II', 'IIIa'), fc.constantFrom(1, 2), number(0, 15_000), (v, more, group, pd, h) => {
        const along = (voltageV: number, pollutionDegree: 1 | 2 | 3) => value(creepage.run({ ...way, voltageV, pollutionDegree, group: group as 'I' })).creepageMm;
        const through = (more2: object) => value(clearance.run({ ...gap, impulseV: v * 10, altitudeM: h, pollutionDegree: pd as 1, ...more2 })).clearanceMm;
        expect(along(v + more, pd as 1)).toBeGreaterThanOrEqual(along(v, pd as 1));
        expect(along(v, (pd + 1) as 2)).toBeGreaterThanOrEqual(along(v, pd as 1));
        expect(through({ impulseV: v * 10 + more })).toBeGreaterThanOrEqual(through({}));
        expect(through({ altitudeM: h + more })).toBeGreaterThanOrEqual(through({}));
        expect(through({ pollutionDegree: pd + 1 })).toBeGreaterThanOrEqual(through({}));
      }),
    ); // prettier-ignore
  });
  it('the tracking index gives the material group', () => {
    expect([600, 599, 400, 399, 175, 174, 100, 99].map(groupOfCti)).toEqual([
      'I', 'II', 'II', 'IIIa', 'IIIa', 'IIIb', 'IIIb', undefined,
    ]); // prettier-ignore
  });
  it('positions left empty: distance and need agree', () => {
    const of = (skipped: number, neededMm?: number) =>
      value(skippedPositions.run({ pitchMm: 2.54, contactWidthMm: 0.64, skipped, neededMm }));
    expect(of(1).distanceMm).toBeCloseTo(4.44, 12);
    expect(of(0, 4.44).skipNeeded).toBe(1);
    expect(of(0, 4.45).skipNeeded).toBe(2);
    fc.assert(
      fc.property(number(0.5, 10), number(0, 0.4), number(0, 30), (pitchMm, contactWidthMm, neededMm) => {
        const k = value(skippedPositions.run({ pitchMm, contactWidthMm, skipped: 0, neededMm })).skipNeeded!;
        const at = (skipped: number) =>
          value(skippedPositions.run({ pitchMm, contactWidthMm, skipped })).distanceMm;
        expect(at(k)).toBeGreaterThanOrEqual(neededMm - 1e-6);
        if (k > 0) expect(at(k - 1)).toBeLessThan(neededMm);
      }),
    );
  });
});
