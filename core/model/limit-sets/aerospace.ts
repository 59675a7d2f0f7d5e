import { AEROSPACE_ELECTRICAL_LIMITS } from './electrical';
import { AEROSPACE_HANDLING_LIMITS } from './handling';
import { limitSetOf } from './limit-ids';
import { SEPARATION_LIMITS } from './separation';

const practice = (value: number, source = 'common practice') => ({ value, source, verified: false });

const aircraft = (paragraph: string, value: number, verified: boolean) => ({
  value,
  source: `FAA AC 43.13-1B, ${paragraph}`,
  edition: '8 September 1998',
  verified,
});

const space = (place: string, value: number, verified = true) => ({
  value,
  source: `NASA-STD-8739.4, ${place}`,
  edition: 'change 6, 2011',
  verified,
});

/** Limits for aircraft and space work from two public documents; where these are silent, common practice. */
export const AEROSPACE_LIMITS = limitSetOf({
  name: 'Aerospace',
  revision: '1',
  limits: {
    'strip-length-tolerance': practice(0.5, 'common practice, where the contact states none'),
    'tail-protrusion-min': practice(0.5, 'common practice: the lead end shows in the solder'),
    'tail-protrusion-max': practice(2.3, 'common practice: trimmed tails stand out about 1.5 to 2.3 mm'),
    'pitch-error-max': practice(0.1, 'common practice: play of contacts in their cavities'),
    'bend-radius-factor': aircraft('11-96: wire group or bundle', 10, false),
    'first-bend-straight': practice(25, 'common practice: wires leave a housing straight'),
    'tie-spacing-max': aircraft('11-158: ties where supports are more than 12 inches apart', 304.8, true),
    'untied-length-max': aircraft('11-158: ties where supports are more than 12 inches apart', 304.8, true),
    'service-loop-min': practice(0, 'not asked for as a length; see the number of re-terminations'),
    'service-loop-reterminations': aircraft('11-118: slack for two re-terminations', 2, false),
    'cut-length-minus': practice(0, 'common practice: no wire may be short'),
    'length-slack-max': practice(0, 'common practice: agreed for each project'),
    'length-tolerance-share': practice(
      0.2,
      'common practice: a fifth of the default tolerance is about what cutting and laying hold',
    ),
    'untwist-max': space('table 11-2: ordinary circuits', 100),
    'untwist-max-quiet': space('table 11-2: sensitive circuits', 20),
    ...AEROSPACE_ELECTRICAL_LIMITS,
    ...AEROSPACE_HANDLING_LIMITS,
    ...SEPARATION_LIMITS,
  },
  tables: {
    ampacity: 'ac-43-13-table-11-9',
    'material-group': 'IIIa',
    'pull-force': 'nasa-8739-4',
  },
});
