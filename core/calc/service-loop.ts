import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface ServiceLoop extends Answer {
  readonly slackMm: number;
}

const SLACK: CalcSource = {
  title: 'FAA AC 43.13-1B, 11-118: slack for two re-terminations, for drip loops and for motion',
  verified: false,
};

const inputs = z.strictObject({
  stripLengthMm: field(z.number().positive(), 'Strip length of the contact', 'mm'),
  crimpLengthMm: field(z.number().nonnegative().default(5), 'Lost with a cut-off crimp', 'mm'),
  reterminations: field(z.int().nonnegative().default(2), 'Re-terminations'),
  motionMm: field(z.number().nonnegative().default(0), 'For motion and drip loop', 'mm'),
});

/**
 * Slack to leave at one end: re-terminations x (strip length + what is cut off with the old crimp) + motion. The length of
 * a cut-off crimp depends on the contact; the default is common practice for small contacts.
 */
export const serviceLoop = calculation<typeof inputs, ServiceLoop>({
  id: 'service-loop',
  title: 'Service loop',
  about: 'Slack at one end for crimping again, and for motion.',
  inputs,
  outputs: { slackMm: { label: 'Slack', unit: 'mm' } },
  sources: [SLACK],
  run(input) {
    return answer({
      slackMm: input.reterminations * (input.stripLengthMm + input.crimpLengthMm) + input.motionMm,
      working: {
        formula: 'slack = re-terminations x (strip length + crimp) + motion',
        figures: [
          figure('Re-terminations', input.reterminations),
          figure('Strip length', input.stripLengthMm, 'mm'),
          figure('Crimp', input.crimpLengthMm, 'mm'),
          figure('Motion', input.motionMm, 'mm'),
        ],
        sources: [SLACK],
        notes: [],
      },
    });
  },
});
