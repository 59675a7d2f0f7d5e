import { ELECTRICAL_LIMITS } from './electrical';
import { HANDLING_LIMITS } from './handling';
import { limitSetOf } from './limit-ids';
import { SEPARATION_LIMITS } from './separation';

const practice = (value: number, source = 'common practice') => ({ value, source, verified: false });
const notAsked = { value: 0, source: 'common practice: agreed for each project', verified: false };

/** The limit set a new project starts with. Every value may be changed in the project. */
export const GENERAL_LIMITS = limitSetOf({
  name: 'General',
  revision: '1',
  limits: {
    'strip-length-tolerance': practice(0.5, 'common practice, where the contact states none'),
    'tail-protrusion-min': practice(0.5, 'common practice: the lead end shows in the solder'),
    'tail-protrusion-max': practice(2.3, 'common practice: trimmed tails stand out about 1.5 to 2.3 mm'),
    'pitch-error-max': practice(0.1, 'common practice: play of contacts in their cavities'),
    'bend-radius-factor': {
      value: 5,
      source:
        'IPC/WHMA-A-620, table 14-1: unshielded cables and larger wire; by way of a public discussion of August 2016',
      verified: true,
    },
    'first-bend-straight': practice(25, 'common practice: wires leave a housing straight'),
    'tie-spacing-max': practice(300, 'common practice: a tie every 200 to 300 mm'),
    'untied-length-max': notAsked,
    'service-loop-min': notAsked,
    'service-loop-reterminations': notAsked,
    'cut-length-minus': {
      value: 0,
      source: 'IPC/WHMA-A-620, table 11-1: no length may be short',
      edition: 'B, final draft of February 2012',
      verified: true,
    },
    'length-slack-max': notAsked,
    'length-tolerance-share': practice(
      0.2,
      'common practice: a fifth of the default tolerance is about what cutting and laying hold',
    ),
    'untwist-max': {
      value: 100,
      source: 'NASA-STD-8739.4, table 11-2: ordinary circuits',
      edition: 'change 6, 2011',
      verified: true,
    },
    'untwist-max-quiet': {
      value: 20,
      source: 'NASA-STD-8739.4, table 11-2: sensitive circuits',
      edition: 'change 6, 2011',
      verified: true,
    },
    ...ELECTRICAL_LIMITS,
    ...HANDLING_LIMITS,
    ...SEPARATION_LIMITS,
  },
  tables: {
    ampacity: 'ac-43-13-table-11-9',
    'material-group': 'IIIa',
    'pull-force': 'iec-60352-2',
  },
});
