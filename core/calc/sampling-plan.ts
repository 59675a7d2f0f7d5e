import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import {
  ACCEPTANCE,
  CODE_LETTERS,
  ISO_2859_1,
  LETTERS,
  LEVELS,
  SAMPLE_SIZES,
  ZERO_LETTER,
  type Aql,
  type Level,
} from './data/sampling';

export interface SamplingPlan extends Answer {
  /** Letter that lot and level lead to. */
  readonly letter: string;
  /** Letter whose plan is used, after the arrows. */
  readonly planLetter: string;
  readonly sampleSize: number;
  /** Nonconforming items in the sample with which the lot is accepted, and from which it is rejected. */
  readonly accept: number;
  readonly reject: number;
  readonly inspection: 'sample' | 'every item';
}

/** Code letter of a lot at an inspection level. Lots from 2 on. */
export function codeLetter(lotSize: number, level: Level): string {
  const row = CODE_LETTERS.find(([largest]) => lotSize <= largest)!;
  return row[1][LEVELS.indexOf(level)]!;
}

/** The plan of a letter after following its arrows: they lead to another letter, its sample size included. */
export function planOf(letter: string, aql: Aql): { letter: string; sampleSize: number; accept: number } {
  const zero = LETTERS.indexOf(ZERO_LETTER[aql]);
  let place = Math.min(Math.max(LETTERS.indexOf(letter), zero), zero + ACCEPTANCE.length - 1);
  if (ACCEPTANCE[place - zero] === 'up') place--;
  if (ACCEPTANCE[place - zero] === 'down') place++;
  return {
    letter: LETTERS[place]!,
    sampleSize: SAMPLE_SIZES[place]!,
    accept: ACCEPTANCE[place - zero] as number,
  };
}

const inputs = z.strictObject({
  lotSize: field(z.int().min(2), 'Lot size'),
  level: field(z.enum(LEVELS).default('II'), 'Inspection level'),
  aql: field(
    z.enum(Object.keys(ZERO_LETTER) as [Aql, ...Aql[]]).default('1.0'),
    'Acceptance quality limit',
    '%',
  ),
});

/**
 * Single sampling plan by attributes under normal inspection. An arrow of the table changes the sample size as well as the
 * numbers. A sample that reaches the lot means that every item is inspected. AQL 0.40 to 6.5 %.
 */
export const samplingPlan = calculation<typeof inputs, SamplingPlan>({
  id: 'sampling-plan',
  title: 'Sampling plan',
  about: 'How many of a lot to inspect, and how many nonconforming ones reject it.',
  inputs,
  outputs: {
    letter: { label: 'Code letter', unit: '' },
    planLetter: { label: 'Letter of the plan', unit: '' },
    sampleSize: { label: 'Sample size', unit: '' },
    accept: { label: 'Accept up to', unit: '' },
    reject: { label: 'Reject from', unit: '' },
    inspection: { label: 'Inspect', unit: '' },
  },
  sources: [ISO_2859_1],
  run({ lotSize, level, aql }) {
    const letter = codeLetter(lotSize, level);
    const plan = planOf(letter, aql);
    const every = plan.sampleSize >= lotSize;
    return answer({
      letter,
      planLetter: plan.letter,
      sampleSize: every ? lotSize : plan.sampleSize,
      accept: plan.accept,
      reject: plan.accept + 1,
      inspection: every ? 'every item' : 'sample',
      working: {
        formula: 'lot and level: code letter; letter and AQL: plan, arrows followed',
        figures: [
          figure('Lot', lotSize),
          figure('Level', level),
          figure('AQL', aql, '%'),
          figure('Sample size of the plan', plan.sampleSize),
        ],
        sources: [ISO_2859_1],
        notes: [
          ...(plan.letter === letter ? [] : [`An arrow leads from letter ${letter} to ${plan.letter}.`]),
          ...(every ? ['The sample of the plan is not smaller than the lot: every item is inspected.'] : []),
        ],
      },
    });
  },
});
