import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface TailProtrusion extends Answer {
  readonly protrusionMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
}

/**
 * How far a solder tail stands out of the far side of the board, mm: tail length below the seating plane, less the gap
 * under the body, less the board. Negative when it ends in the hole. Plain geometry.
 */
export const tailProtrusionMm = (given: {
  readonly tailLengthMm: number;
  readonly standOffMm: number;
  readonly boardThicknessMm: number;
}): number => given.tailLengthMm - given.standOffMm - given.boardThicknessMm;

const GEOMETRY: CalcSource = {
  title: 'Plain geometry: protrusion = tail - stand-off - board',
  verified: true,
};

const inputs = z.strictObject({
  tailLengthMm: field(z.number().positive(), 'Tail below the seating plane', 'mm'),
  standOffMm: field(z.number().nonnegative(), 'Stand-off', 'mm'),
  boardThicknessMm: field(z.number().positive(), 'Board thickness', 'mm'),
  tailToleranceMm: field(z.number().nonnegative().default(0), 'Tolerance of the tail, plus and minus', 'mm'),
  boardTolerance: field(
    z.number().min(0).max(0.5).default(0),
    'Tolerance of the board (share of its thickness)',
  ),
});

/**
 * Protrusion of a solder tail with its spread by worst case. Boards are commonly made to plus and minus 10 % of their
 * thickness (common practice). Negative: the tail ends in the hole.
 */
export const tailProtrusion = calculation<typeof inputs, TailProtrusion>({
  id: 'tail-protrusion',
  title: 'Protrusion of solder tails',
  about: 'How far the tails of a header stand out of the far side of the board.',
  inputs,
  outputs: {
    protrusionMm: { label: 'Protrusion', unit: 'mm' },
    leastMm: { label: 'Least, worst case', unit: 'mm' },
    mostMm: { label: 'Most, worst case', unit: 'mm' },
  },
  sources: [GEOMETRY],
  run(input) {
    const protrusionMm = tailProtrusionMm(input);
    const spreadMm = input.tailToleranceMm + input.boardTolerance * input.boardThicknessMm;
    return answer({
      protrusionMm,
      leastMm: protrusionMm - spreadMm,
      mostMm: protrusionMm + spreadMm,
      working: {
        formula: 'protrusion = tail - stand-off - board; -/+ (tail tolerance + board tolerance)',
        figures: [
          figure('Tail', input.tailLengthMm, 'mm'),
          figure('Stand-off', input.standOffMm, 'mm'),
          figure('Board', input.boardThicknessMm, 'mm'),
          figure('Spread', spreadMm, 'mm'),
        ],
        sources: [GEOMETRY],
        notes: [],
      },
    });
  },
});
