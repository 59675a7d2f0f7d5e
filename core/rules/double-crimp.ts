import { doubleCrimpFit } from '../derive/contact-fit';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { addPartLike } from './shared/example-parts';
import { shareCrimp } from './shared/example-share';
import { judgeCrimps } from './shared/judge-fit';

/** Says whether wires may share a crimp at all; whether their metal fits the barrel is `conductor-range`. */
export const doubleCrimp: Rule<'cavity'> = {
  meta: {
    id: 'double-crimp',
    revision: 1,
    severity: 'major',
    summary: 'Wires share a contact only as a pair of sizes that its maker approves.',
    why: 'Two wires do not settle in a barrel like one of the same area: one may carry the press while the other stays loose, and pulls out later.',
    source:
      'NASA-STD-8739.4 on several conductors in one crimp: combinations approved one by one; common practice',
    message: '{{contact}} at {{cavity}} holds {{measured}} ({{wires}}); approved in one crimp: {{limit}}',
    unknown:
      'Whether {{wires}} may share {{contact}} at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check: (cavity, report) => judgeCrimps(cavity, report, 2, doubleCrimpFit),
  examples: () => ({
    good: [
      { name: 'one wire in every contact', project: tiny() },
      {
        name: 'an approved pair',
        project: tiny((t) => {
          shareCrimp(t);
          t.part('contact', 'C-SOCKET').doubleCrimps = [APPROVED];
        }),
      },
    ],
    bad: [
      {
        name: 'two wires in a contact that is approved for none',
        project: tiny((t) => {
          shareCrimp(t);
          addPartLike(t, 'contact', 'C-SOCKET', {
            partNumber: 'C-SOCKET-PAIR',
            doubleCrimps: [APPROVED],
          });
        }),
        expect: ['X1:1'],
      },
    ],
    unknown: [
      {
        name: 'the contact does not state which pairs are approved',
        project: tiny((t) => {
          shareCrimp(t);
          delete t.part('contact', 'C-SOCKET').doubleCrimps;
        }),
        expect: ['X1:1'],
      },
    ],
  }),
};

const APPROVED: [{ system: 'awg'; gauge: number }, { system: 'awg'; gauge: number }] = [
  { system: 'awg', gauge: 26 },
  { system: 'awg', gauge: 22 },
];
