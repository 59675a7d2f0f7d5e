import { cutLength, roundUpMm } from '@latchwork/core/calc/cut-length';
import { lengthStack, stackOf, type StackElement } from '@latchwork/core/calc/length-stack';
import { lengthTolerance } from '@latchwork/core/calc/length-tolerance';
import { runCalculation } from '@latchwork/core/calc/calculation';
import { pitchDiameterMm, twistFactor, twistTakeUp } from '@latchwork/core/calc/twist-take-up';
import { tapeLengthMm } from '@latchwork/core/calc/tape-length';
import { packCircles } from '@latchwork/core/calc/packing/pack-circles';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueOf } from './published/check';

const length = fc.double({ min: 1, max: 20_000, noNaN: true });
const small = fc.double({ min: 0, max: 50, noNaN: true });

describe('the take-up of twisted wires', () => {
  // Trap of the reference file: the outside diameter taken as radius quadruples the extra length.
  it('takes the wire diameter as the diameter of the circle of centres, not as its radius', () => {
    expect(pitchDiameterMm([1.2, 1.2])).toBe(1.2);
    const extra = (d: number): number => twistFactor(d, 20) - 1;
    expect(extra(2.4) / extra(1.2)).toBeGreaterThan(3.9);
    expect(extra(pitchDiameterMm([1.2, 1.2]))).toBeCloseTo(0.01761, 5);
  });

  it('runs the centres on a circle that a ring of touching wires has', () => {
    for (const n of [3, 4, 5])
      expect(pitchDiameterMm(Array<number>(n).fill(1))).toBeCloseTo(
        2 * packCircles(Array<number>(n).fill(0.5)).radius - 1,
        6,
      );
    expect(pitchDiameterMm(Array<number>(7).fill(1))).toBeCloseTo(2, 6);
    expect(pitchDiameterMm([1, 2])).toBe(1.5);
    expect(pitchDiameterMm([1])).toBe(0);
  });

  it('grows with length and diameter, and falls with the lay', () => {
    fc.assert(
      fc.property(length, fc.double({ min: 0.3, max: 5, noNaN: true }), fc.double({ min: 5, max: 100, noNaN: true }), (l, d, lay) => {
        const takeUp = (more: { l?: number; d?: number; lay?: number }): number =>
          valueOf(twistTakeUp.run({ pitchDiameterMm: more.d ?? d, layMm: more.lay ?? lay, lengthMm: more.l ?? l })).takeUpMm;
        const here = takeUp({});
        expect(here).toBeGreaterThan(0);
        expect(takeUp({ l: 2 * l })).toBeGreaterThan(here);
        expect(takeUp({ d: 2 * d })).toBeGreaterThan(here);
        expect(takeUp({ lay: 2 * lay })).toBeLessThan(here);
      }),
    ); // prettier-ignore
  });

  it('names what it needs', () => {
    expect(runCalculation(twistTakeUp, { layMm: 20 })).toMatchObject({
      ok: false,
      problem: { code: 'needs' },
    });
  });
});

describe('a cut length', () => {
  it('grows with the route, is never shorter than the sum and less than one step longer', () => {
    fc.assert(
      fc.property(length, small, small, fc.constantFrom(1, 5, 10), (routeMm, fromAllowanceMm, extraMm, stepMm) => {
        const run = (route: number) =>
          valueOf(cutLength.run({ routeMm: route, fromAllowanceMm, toAllowanceMm: -0.5, serviceLoopMm: 0, takeUpMm: 0, extraMm, stepMm }));
        const { cutMm, exactMm } = run(routeMm);
        expect(cutMm).toBeGreaterThanOrEqual(exactMm - 1e-6);
        expect(cutMm).toBeLessThan(exactMm + stepMm);
        expect(run(routeMm + 7).cutMm).toBeGreaterThanOrEqual(cutMm);
      }),
    ); // prettier-ignore
  });

  it('does not grow by a step through binary rounding', () => {
    expect(roundUpMm(0.1 + 0.2, 0.3)).toBeCloseTo(0.3, 12);
    expect(roundUpMm(330, 1)).toBe(330);
    expect(roundUpMm(330.001, 1)).toBe(331);
    expect(Object.is(roundUpMm(-0.2, 1), 0)).toBe(true);
  });

  it('refuses allowances that take off more than there is', () => {
    const result = runCalculation(cutLength, { routeMm: 10, fromAllowanceMm: -20 });
    expect(result).toMatchObject({ ok: false, problem: { code: 'out-of-range' } });
  });
});

describe('the tolerance of a length', () => {
  // Traps of the reference file: one-sided, and a jump from 150 mm to 375 mm at 7.5 m.
  it('is never short, and jumps behind 7.5 m', () => {
    const at = (lengthMm: number) => valueOf(lengthTolerance.run({ lengthMm }));
    expect(at(7500)).toMatchObject({ minMm: 7500, plusMm: 150, minusMm: 0 });
    expect(at(7500.001).plusMm).toBeCloseTo(375, 3);
    fc.assert(
      fc.property(length, length, (a, b) => {
        expect(at(a).minMm).toBe(a);
        expect(at(Math.max(a, b)).maxMm).toBeGreaterThanOrEqual(at(Math.min(a, b)).maxMm);
      }),
    );
  });
});

describe('a chain of lengths', () => {
  const element = fc.record({ nominalMm: length, plusMm: small, minusMm: small });
  const chain = fc.array(element, { minLength: 1, maxLength: 12 });

  it('by root sum square lies within the worst case, and equals it for one length', () => {
    fc.assert(
      fc.property(chain, (elements) => {
        const s = stackOf(elements);
        expect(s.rssMinMm).toBeGreaterThanOrEqual(s.worstMinMm - 1e-6);
        expect(s.rssMaxMm).toBeLessThanOrEqual(s.worstMaxMm + 1e-6);
        if (elements.length > 1) return;
        expect(s.rssMinMm).toBeCloseTo(s.worstMinMm, 6);
        expect(s.rssMaxMm).toBeCloseTo(s.worstMaxMm, 6);
      }),
    );
  });

  it('adds up from point to point, either way round', () => {
    fc.assert(
      fc.property(chain, fc.nat(12), (elements, cut) => {
        const at = Math.min(cut, elements.length);
        const run = (fromPoint: number, toPoint: number) =>
          valueOf(lengthStack.run({ elements, fromPoint, toPoint }));
        const whole = run(0, elements.length);
        expect(run(0, at).worstMaxMm + run(at, elements.length).worstMaxMm).toBeCloseTo(whole.worstMaxMm, 5);
        expect(run(at, 0).nominalMm).toBeCloseTo(run(0, at).nominalMm, 9);
        expect(run(at, at).worstMaxMm).toBe(0);
      }),
    );
  });

  it('says where the path ends', () => {
    const elements: StackElement[] = [{ nominalMm: 1, plusMm: 0, minusMm: 0 }];
    expect(runCalculation(lengthStack, { elements, toPoint: 2 })).toMatchObject({ ok: false });
  });
});

// A helical wrap laid flat is a parallelogram: its area is the area of the tape that shows.
it('tape covers the surface it is wound on', () => {
  fc.assert(
    fc.property(length, fc.double({ min: 2, max: 60, noNaN: true }), fc.double({ min: 0, max: 0.8, noNaN: true }), (l, d, overlap) => {
      const tape = tapeLengthMm({ diameterMm: d, lengthMm: l, widthMm: 19, overlap });
      expect((tape * 19 * (1 - overlap)) / (Math.PI * d * l)).toBeCloseTo(1, 9);
    }),
  ); // prettier-ignore
});
