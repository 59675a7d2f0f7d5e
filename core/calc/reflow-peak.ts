import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { REFLOW_LEAD_FREE, REFLOW_PEAK_TIME_S, REFLOW_TIN_LEAD } from './data/reflow';

export interface ReflowPeak extends Answer {
  readonly classificationC: number;
  /** Longest time within 5 C of it. */
  readonly timeWithin5CS: number;
  /** Classification less the peak of the process; negative where the process is too hot. Absent without a peak. */
  readonly marginC: number | undefined;
}

const inputs = z.strictObject({
  solder: field(z.enum(['lead-free', 'tin-lead']).default('lead-free'), 'Solder'),
  bodyThicknessMm: field(z.number().positive(), 'Thickness of the body', 'mm'),
  bodyVolumeMm3: field(z.number().positive(), 'Volume of the body, without terminals', 'mm3'),
  revision: field(z.enum(['C', 'D']).default('D'), 'Revision of the standard'),
  processPeakC: field(z.number().positive().optional(), 'Peak of the process at the part', 'degC'),
});

/**
 * Temperature for which a part of this size is classified for reflow, and the distance of a process from it. It is a limit
 * of the part, not the profile of a board: the supplier's part bears at least this, the user stays at or below it. A body of
 * exactly 2.5 mm counts as thick in revision C and as middle from D on. The maker's own limit for a header wins.
 */
export const reflowPeak = calculation<typeof inputs, ReflowPeak>({
  id: 'reflow-peak',
  title: 'Reflow classification temperature',
  about: 'By thickness and volume of the body; a limit of the part, not a profile.',
  inputs,
  outputs: {
    classificationC: { label: 'Classification temperature', unit: 'degC' },
    timeWithin5CS: { label: 'Time within 5 C of it, at most', unit: 's' },
    marginC: { label: 'Margin of the process', unit: 'K' },
  },
  sources: [REFLOW_LEAD_FREE.source, REFLOW_TIN_LEAD.source],
  run({ solder, bodyThicknessMm: t, bodyVolumeMm3, revision, processPeakC }) {
    const table = solder === 'lead-free' ? REFLOW_LEAD_FREE : REFLOW_TIN_LEAD;
    const thickAtEdge = solder === 'tin-lead' || revision === 'C';
    const thick = thickAtEdge ? t >= 2.5 : t > 2.5;
    const row = table.rows.find((r) => r.thickness === (t < 1.6 ? 'thin' : thick ? 'thick' : 'middle'))!;
    const classificationC =
      bodyVolumeMm3 < 350 ? row.below350C : bodyVolumeMm3 <= 2000 ? row.to2000C : row.above2000C;
    return answer({
      classificationC,
      timeWithin5CS: REFLOW_PEAK_TIME_S[solder],
      marginC: processPeakC === undefined ? undefined : classificationC - processPeakC,
      working: {
        formula: 'cell of the table by thickness and volume',
        figures: [
          figure('Thickness', t, 'mm'),
          figure('Volume', bodyVolumeMm3, 'mm3'),
          figure('Edition', table.edition),
          ...(processPeakC === undefined ? [] : [figure('Peak of the process', processPeakC, 'degC')]),
        ],
        sources: [table.source],
        notes: ['A limit of the part, not the profile of the board; the limit that the maker states wins.'],
      },
    });
  },
});
