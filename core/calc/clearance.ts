import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import {
  ALTITUDE_FACTOR,
  CLEARANCE,
  CLEARANCE_PEAK,
  IEC_60664,
  RATED_IMPULSE,
} from './data/insulation-tables';

export interface Clearance extends Answer {
  readonly clearanceMm: number;
  readonly impulseV: number;
  readonly altitudeFactor: number;
}

const CATEGORIES = ['I', 'II', 'III', 'IV'] as const;

const inputs = z.strictObject({
  lineToNeutralV: field(z.number().positive().optional(), 'Line-to-neutral voltage of the supply', 'V'),
  overvoltageCategory: field(z.enum(CATEGORIES).optional(), 'Overvoltage category'),
  impulseV: field(z.number().positive().optional(), 'Rated impulse voltage (wins over the two above)', 'V'),
  peakV: field(z.number().positive().optional(), 'Steady-state or recurring peak', 'V'),
  pollutionDegree: field(z.union([z.literal(1), z.literal(2), z.literal(3)]), 'Pollution degree'),
  homogeneous: field(z.boolean().default(false), 'Homogeneous field (case B)'),
  altitudeM: field(z.number().default(0), 'Altitude', 'm'),
  reinforced: field(z.boolean().default(false), 'Reinforced insulation'),
});

/**
 * Clearance through air, IEC 60664-1: rated impulse (table F.1 or entered), next row up of table F.2, at least that of table
 * F.8 for a lasting peak, times the altitude factor (next row up; no credit below 2000 m). Reinforced insulation takes the
 * next preferred impulse voltage up, or 1.6 times where there is none (from memory). Case A (inhomogeneous) unless stated.
 */
export const clearance = calculation<typeof inputs, Clearance>({
  id: 'clearance',
  title: 'Clearance',
  about: 'IEC 60664-1 tables F.1, F.2, F.8 and A.2, always the next row up.',
  inputs,
  outputs: {
    clearanceMm: { label: 'Clearance', unit: 'mm' },
    impulseV: { label: 'Impulse voltage', unit: 'V' },
    altitudeFactor: { label: 'Altitude factor', unit: '' },
  },
  sources: [IEC_60664('F.1'), IEC_60664('F.2'), IEC_60664('F.8'), IEC_60664('A.2')],
  run(i) {
    const beyond = (input: string, value: number, range: string) =>
      ({ ok: false, problem: { code: 'out-of-range', input, value, range } }) as const;
    const sources: CalcSource[] = [];
    let impulseV = i.impulseV;
    if (impulseV === undefined) {
      if (i.lineToNeutralV === undefined || i.overvoltageCategory === undefined)
        return {
          ok: false,
          problem: { code: 'needs', inputs: ['impulseV, or lineToNeutralV and overvoltageCategory'] },
        };
      const row = RATED_IMPULSE.find((r) => i.lineToNeutralV! <= r.lineToNeutralV);
      if (!row) return beyond('lineToNeutralV', i.lineToNeutralV, 'table F.1 ends at 1000 V');
      impulseV = row.impulseV[CATEGORIES.indexOf(i.overvoltageCategory)]!;
      sources.push(IEC_60664('F.1'));
    }
    if (i.reinforced) {
      impulseV = reinforcedImpulseV(impulseV);
      sources.push(IEC_60664('F.2', 'reinforced: next preferred impulse, else 1.6 times (from memory)'));
    }
    const row = CLEARANCE.find((r) => impulseV <= r.impulseV);
    if (!row) return beyond('impulseV', impulseV, 'table F.2 ends here at 12 kV');
    const byImpulseMm = (i.homogeneous ? row.caseBMm : row.caseAMm)[i.pollutionDegree - 1]!;
    sources.push(IEC_60664('F.2'));
    let byPeakMm = 0;
    if (i.peakV !== undefined) {
      const peakV = i.peakV * (i.reinforced ? 1.6 : 1);
      const peak = CLEARANCE_PEAK.find((r) => peakV <= r.peakV);
      if (!peak) return beyond('peakV', i.peakV, 'table F.8 ends here at 10 kV');
      byPeakMm = i.homogeneous ? peak.caseBMm : peak.caseAMm;
      sources.push(IEC_60664('F.8'));
    }
    const altitude = ALTITUDE_FACTOR.find((r) => i.altitudeM <= r.altitudeM);
    if (!altitude) return beyond('altitudeM', i.altitudeM, 'table A.2 ends at 20 000 m');
    if (altitude.factor !== 1) sources.push(IEC_60664('A.2'));
    return answer({
      clearanceMm: Math.max(byImpulseMm, byPeakMm) * altitude.factor,
      impulseV,
      altitudeFactor: altitude.factor,
      working: {
        formula: 'd = max(table F.2, table F.8) x altitude factor',
        figures: [
          figure('Impulse voltage', impulseV, 'V'),
          figure('Table F.2', byImpulseMm, 'mm'),
          ...(i.peakV === undefined ? [] : [figure('Table F.8', byPeakMm, 'mm')]),
          figure('Pollution degree', i.pollutionDegree),
          figure('Field', i.homogeneous ? 'homogeneous (B)' : 'inhomogeneous (A)'),
          figure('Altitude factor', altitude.factor),
        ],
        sources,
        notes: ['Next row up; no interpolation.'],
      },
    });
  },
});

const PREFERRED_IMPULSE_V = [330, 500, 800, 1500, 2500, 4000, 6000, 8000, 12000];

function reinforcedImpulseV(impulseV: number): number {
  const at = PREFERRED_IMPULSE_V.indexOf(impulseV);
  return PREFERRED_IMPULSE_V[at + 1] && at >= 0 ? PREFERRED_IMPULSE_V[at + 1]! : 1.6 * impulseV;
}
