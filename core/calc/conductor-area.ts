import { z } from 'zod';
import type { Result } from '../base/result';
import { WireSize, wireSizeText } from '../model/wire-size';
import { awgAreaMm2 } from './awg';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import type { CalcProblem } from './calc-problem';
import { strandAreaMm2 } from './strand-area';

export interface ConductorArea extends Answer {
  readonly areaMm2: number;
  readonly circularMils: number;
  /** The wire's own record, its strands, or only its designation. */
  readonly basis: 'catalogue' | 'stranding' | 'designation';
}

/** A circular mil is the area of a circle of one thousandth of an inch, mm2. */
const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;

const B258: CalcSource = {
  title: 'ASTM B258: d = 0.127 mm x 92^((36 - n)/39), unrounded',
  verified: true,
};
const STRANDS: CalcSource = {
  title: 'Sum of the round strands (as MIL-DTL-29606 table III-A)',
  verified: true,
};

const inputs = z.strictObject({
  size: field(WireSize.optional(), 'Wire size'),
  areaMm2: field(z.number().positive().optional(), 'Metal area from the wire record', 'mm2'),
  strands: field(z.int().positive().optional(), 'Number of strands'),
  strandDiameterMm: field(z.number().positive().optional(), 'Diameter of one strand', 'mm'),
});

/**
 * Metal area of a conductor, mm2: from its record, else from its strands, else from its designation. A stranded AWG size
 * is usually larger than the solid one (19 strands of "20 AWG" are 1216 circular mils against 1020) and can be smaller,
 * so an area from the designation alone is an estimate and is marked.
 */
export const conductorArea = calculation<typeof inputs, ConductorArea>({
  id: 'conductor-area',
  title: 'Metal area of a conductor',
  about: 'From the wire record, else from the strands, else from the designation (solid wire).',
  inputs,
  outputs: {
    areaMm2: { label: 'Metal area', unit: 'mm2' },
    circularMils: { label: 'Circular mils', unit: 'cmil' },
    basis: { label: 'Basis', unit: '' },
  },
  sources: [B258, STRANDS],
  run({ size, areaMm2, strands, strandDiameterMm }) {
    const result = (
      area: number,
      basis: ConductorArea['basis'],
      formula: string,
      source: CalcSource,
      notes: readonly string[],
    ): Result<ConductorArea, CalcProblem> =>
      answer({
        areaMm2: area,
        circularMils: area / MM2_PER_CIRCULAR_MIL,
        basis,
        working: {
          formula,
          figures: [
            ...(size ? [figure('Size', wireSizeText(size))] : []),
            ...(strands ? [figure('Strands', strands)] : []),
            ...(strandDiameterMm ? [figure('Strand diameter', strandDiameterMm, 'mm')] : []),
          ],
          sources: [source],
          notes,
        },
      });
    if (areaMm2 !== undefined)
      return result(areaMm2, 'catalogue', 'area of the record', { title: 'wire record', verified: true }, []);
    if (strands !== undefined && strandDiameterMm !== undefined)
      return result(
        strandAreaMm2({ strands, strandDiameterMm }),
        'stranding',
        'strands x pi/4 x d^2',
        STRANDS,
        [],
      );
    if (!size) return { ok: false, problem: { code: 'needs', inputs: ['size, areaMm2, or the strands'] } };
    const note = ['The designation alone: the conductor itself may differ by 20 %.'];
    return size.system === 'mm2'
      ? result(
          size.areaMm2,
          'designation',
          'area of the designation',
          { title: 'IEC 60228 nominal area', verified: true },
          note,
        )
      : result(awgAreaMm2(size.gauge), 'designation', 'pi/4 x (0.127 x 92^((36 - n)/39))^2', B258, note);
  },
});
