import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface SleeveLength extends Answer {
  readonly sleeveMm: number;
}

const TAKE_UP: CalcSource = {
  title: 'Common practice: a braid shortens as it widens, a heat-shrink as it shrinks; share by its maker',
  verified: true,
};

const inputs = z.strictObject({
  lengthMm: field(z.number().nonnegative(), 'Length to cover', 'mm'),
  takeUp: field(z.number().min(0).max(2).default(0), 'Take-up (share of the length)'),
  endsMm: field(z.number().nonnegative().default(0), 'Extra for both ends', 'mm'),
});

/** Length to cut a tube, sleeve or braid to: run x (1 + take-up) + ends. The take-up is the maker's, not computed. */
export const sleeveLength = calculation<typeof inputs, SleeveLength>({
  id: 'sleeve-length',
  title: 'Length of a sleeve',
  about: 'Tube, sleeve or braid for a run, with what it loses in length.',
  inputs,
  outputs: { sleeveMm: { label: 'Sleeve', unit: 'mm' } },
  sources: [TAKE_UP],
  run({ lengthMm, takeUp, endsMm }) {
    return answer({
      sleeveMm: lengthMm * (1 + takeUp) + endsMm,
      working: {
        formula: 'sleeve = length x (1 + take-up) + ends',
        figures: [
          figure('Length to cover', lengthMm, 'mm'),
          figure('Take-up', takeUp),
          figure('Ends', endsMm, 'mm'),
        ],
        sources: [TAKE_UP],
        notes: [],
      },
    });
  },
});
