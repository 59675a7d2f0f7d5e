import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface Inrush extends Answer {
  readonly peakA: number;
  readonly pulseA2s: number;
  /** Pulse I2t over the allowed share of the fuse's melting I2t; above 1 the fuse ages or opens. */
  readonly fuseShare: number | undefined;
  /** Peak over what the contact stands; above 1 it is too much. */
  readonly contactShare: number | undefined;
}

const INTEGRAL: CalcSource = {
  title: 'integral of I2 over the pulse; V2 C/(2 R) for a capacitor behind a resistance',
  verified: true,
};
const SHARE: CalcSource = {
  title: 'common practice: about a fifth of the melting I2t for very many pulses',
  verified: false,
};

const inputs = z.strictObject({
  peakA: field(z.number().positive().optional(), 'Peak current (rectangular pulse)', 'A'),
  durationS: field(z.number().positive().optional(), 'Its duration', 's'),
  supplyV: field(z.number().positive().optional(), 'Supply voltage (capacitor)', 'V'),
  capacitanceUf: field(z.number().positive().optional(), 'Capacitance that is charged', 'uF'),
  loopOhm: field(z.number().positive().optional(), 'Resistance of the charging loop', 'ohm'),
  fuseMeltingA2s: field(z.number().positive().optional(), 'Melting I2t of the fuse', 'A2s'),
  allowedShare: field(
    z.number().positive().max(1).default(0.2),
    'Share of the melting I2t that a pulse may have',
  ),
  contactPeakMaxA: field(z.number().positive().optional(), 'Peak current of the contact', 'A'),
});

/**
 * Inrush against contact and fuse. A pulse of given height and length, or a capacitor charged through the resistance of the
 * loop (peak V/R, decaying; inductance only makes the peak smaller).
 */
export const inrush = calculation<typeof inputs, Inrush>({
  id: 'inrush',
  title: 'Inrush current',
  about: 'Peak and I2t of a pulse or of a charging capacitor, against contact and fuse.',
  inputs,
  outputs: {
    peakA: { label: 'Peak', unit: 'A' },
    pulseA2s: { label: 'I2t of the pulse', unit: 'A2s' },
    fuseShare: { label: 'Pulse over allowed share of melting I2t', unit: '' },
    contactShare: { label: 'Peak over contact limit', unit: '' },
  },
  sources: [INTEGRAL, SHARE],
  run(i) {
    const charging = i.supplyV !== undefined && i.capacitanceUf !== undefined && i.loopOhm !== undefined;
    const pulse = i.peakA !== undefined && i.durationS !== undefined;
    if (!pulse && !charging)
      return {
        ok: false,
        problem: { code: 'needs', inputs: ['peakA and durationS, or supplyV, capacitanceUf and loopOhm'] },
      };
    const peakA = pulse ? i.peakA! : i.supplyV! / i.loopOhm!;
    const pulseA2s = pulse
      ? i.peakA! ** 2 * i.durationS!
      : (i.supplyV! ** 2 * i.capacitanceUf! * 1e-6) / (2 * i.loopOhm!);
    return answer({
      peakA,
      pulseA2s,
      fuseShare: i.fuseMeltingA2s === undefined ? undefined : pulseA2s / (i.fuseMeltingA2s * i.allowedShare),
      contactShare: i.contactPeakMaxA === undefined ? undefined : peakA / i.contactPeakMaxA,
      working: {
        formula: pulse ? 'I2t = peak^2 x duration' : 'peak = V/R; I2t = V^2 C/(2 R)',
        figures: [
          figure('Peak', peakA, 'A'),
          figure('I2t', pulseA2s, 'A2s'),
          ...(i.fuseMeltingA2s === undefined
            ? []
            : [figure('Melting I2t', i.fuseMeltingA2s, 'A2s'), figure('Allowed share', i.allowedShare)]),
        ],
        sources: i.fuseMeltingA2s === undefined ? [INTEGRAL] : [INTEGRAL, SHARE],
        notes: [],
      },
    });
  },
});
