import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { packCircles } from './packing/pack-circles';

export interface TwistTakeUp extends Answer {
  readonly factor: number;
  /** Straight length of each wire before twisting. */
  readonly wireLengthMm: number;
  readonly takeUpMm: number;
  readonly pitchDiameterMm: number;
}

const HELIX: CalcSource = {
  title: 'Length of a helix; The Math Forum, "Length of two twisted copper wires", 16 November 1998',
  verified: true,
};

/** Length of wire per length of twisted run: sqrt(1 + (pi Dp/lay)^2), Dp being the DIAMETER of the circle of centres. */
export const twistFactor = (pitchDiameterMm: number, layMm: number): number =>
  Math.hypot(layMm, Math.PI * pitchDiameterMm) / layMm;

/**
 * Diameter of the circle on which the centres of the outermost wires run, mm. Two wires: the mean of their diameters, as
 * they turn about their point of touch; up to five: d/sin(pi/n), a ring of the largest; more: the packed bundle less the
 * largest wire. Zero for a wire alone.
 */
export function pitchDiameterMm(wireDiametersMm: readonly number[]): number {
  const n = wireDiametersMm.length;
  if (n < 2) return 0;
  if (n === 2) return (wireDiametersMm[0]! + wireDiametersMm[1]!) / 2;
  const largest = Math.max(...wireDiametersMm);
  if (n <= 5) return largest / Math.sin(Math.PI / n);
  return 2 * packCircles(wireDiametersMm.map((d) => d / 2)).radius - largest;
}

const inputs = z.strictObject({
  wireDiametersMm: field(
    z.array(z.number().positive()).min(2).optional(),
    'Outside diameter of each wire',
    'mm',
  ),
  pitchDiameterMm: field(
    z.number().nonnegative().optional(),
    'Circle of the wire centres, else from the wires',
    'mm',
  ),
  layMm: field(z.number().positive(), 'Lay: length of one turn', 'mm'),
  lengthMm: field(z.number().nonnegative().default(1000), 'Twisted length', 'mm'),
});

/**
 * Take-up of twisted wires: L x sqrt(lay^2 + (pi Dp)^2)/lay. For a pair of touching wires Dp is the wire's outside
 * diameter. It adds to the cut length and to the resistance, not to the finished length. Holds for a constant lay.
 */
export const twistTakeUp = calculation<typeof inputs, TwistTakeUp>({
  id: 'twist-take-up',
  title: 'Take-up of twisted wires',
  about: 'Extra length that each wire needs because it runs as a helix.',
  inputs,
  outputs: {
    factor: { label: 'Take-up factor', unit: '' },
    wireLengthMm: { label: 'Length of each wire', unit: 'mm' },
    takeUpMm: { label: 'Take-up', unit: 'mm' },
    pitchDiameterMm: { label: 'Circle of the wire centres', unit: 'mm' },
  },
  sources: [HELIX],
  run({ wireDiametersMm, pitchDiameterMm: given, layMm, lengthMm }) {
    if (given === undefined && !wireDiametersMm)
      return { ok: false, problem: { code: 'needs', inputs: ['wireDiametersMm or pitchDiameterMm'] } };
    const pitch = given ?? pitchDiameterMm(wireDiametersMm!);
    const factor = twistFactor(pitch, layMm);
    return answer({
      factor,
      wireLengthMm: lengthMm * factor,
      takeUpMm: lengthMm * (factor - 1),
      pitchDiameterMm: pitch,
      working: {
        formula: 'wire = L x sqrt(lay^2 + (pi x Dp)^2)/lay',
        figures: [
          figure('Circle of the wire centres Dp', pitch, 'mm'),
          figure('Lay', layMm, 'mm'),
          figure('Twisted length L', lengthMm, 'mm'),
          figure('Factor', factor),
        ],
        sources: [HELIX],
        notes: ['Counts the whole length as twisted; the untwisted ends need a little less.'],
      },
    });
  },
});
