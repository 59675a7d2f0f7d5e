import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { ANNULAR_RING_MM, THROUGH_HOLE } from './data/through-hole';

export interface LeadHole extends Answer {
  /** Largest diameter of the lead: the diagonal of a square or rectangular one. */
  readonly leadMaxMm: number;
  readonly holeMinMm: number;
  readonly holeMaxMm: number;
  readonly padMm: number;
}

const inputs = z.strictObject({
  shape: field(z.enum(['round', 'square', 'rectangular']).default('round'), 'Shape of the lead'),
  sideMm: field(z.number().positive(), 'Diameter or side', 'mm'),
  otherSideMm: field(z.number().positive().optional(), 'Other side (rectangular)', 'mm'),
  toleranceMm: field(z.number().nonnegative().default(0), 'Tolerance, plus and minus', 'mm'),
  level: field(z.enum(['A', 'B', 'C']).default('B'), 'Producibility level'),
});

/**
 * Hole and pad for a solder tail: least finished hole = largest lead + 0.25, 0.20 or 0.15 mm, pad = hole + 2 x 0.05 + 0.6,
 * 0.5 or 0.4 mm for the producibility levels A, B and C. These levels are no product classes. The largest hole is measured
 * from the smallest lead (from memory).
 */
export const leadHole = calculation<typeof inputs, LeadHole>({
  id: 'lead-hole',
  title: 'Hole and pad of a solder tail',
  about: 'Finished hole and pad for a through-hole lead.',
  inputs,
  outputs: {
    leadMaxMm: { label: 'Largest lead', unit: 'mm' },
    holeMinMm: { label: 'Least hole', unit: 'mm' },
    holeMaxMm: { label: 'Largest hole', unit: 'mm' },
    padMm: { label: 'Pad', unit: 'mm' },
  },
  sources: [THROUGH_HOLE.source],
  run({ shape, sideMm, otherSideMm, toleranceMm, level }) {
    if (shape === 'rectangular' && otherSideMm === undefined)
      return { ok: false, problem: { code: 'needs', inputs: ['otherSideMm'] } };
    const across = (tolerance: number): number =>
      shape === 'round'
        ? sideMm + tolerance
        : Math.hypot(sideMm + tolerance, (shape === 'square' ? sideMm : otherSideMm!) + tolerance);
    const row = THROUGH_HOLE.rows.find((r) => r.level === level)!;
    const leadMaxMm = across(toleranceMm);
    const holeMinMm = leadMaxMm + row.holeOverLeadMm;
    return answer({
      leadMaxMm,
      holeMinMm,
      holeMaxMm: across(-toleranceMm) + row.holeOverLeadMaxMm,
      padMm: holeMinMm + 2 * ANNULAR_RING_MM + row.padAllowanceMm,
      working: {
        formula: 'hole = largest lead + x; pad = hole + 2 x ring + allowance',
        figures: [
          figure('Largest lead', leadMaxMm, 'mm'),
          figure('x', row.holeOverLeadMm, 'mm'),
          figure('Ring', ANNULAR_RING_MM, 'mm'),
          figure('Allowance', row.padAllowanceMm, 'mm'),
        ],
        sources: [THROUGH_HOLE.source],
        notes: ['Levels A, B and C are producibility levels, not product classes.'],
      },
    });
  },
});
