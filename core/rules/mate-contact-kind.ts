import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { reportMating } from './shared/report-mating';

export const mateContactKind: Rule<'mate'> = {
  meta: {
    id: 'mate-contact-kind',
    revision: 1,
    severity: 'major',
    summary: 'Of two halves that are mated one carries pins and the other sockets.',
    why: 'Pins against pins are bent, sockets against sockets do not touch: the circuit stays open.',
    source: 'common practice: a pin contact enters a socket contact',
    message: 'The contacts of {{a}} do not mate with those of {{b}}: {{reasons}}',
    unknown: 'Whether the contacts of {{a}} and {{b}} mate cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check: (mate, report) => reportMating(mate, ['contact-kind'], report),
  examples: () => ({
    good: [{ name: 'pins in sockets', project: tiny() }],
    bad: [
      {
        name: 'sockets on sockets',
        project: tiny((t) => void (t.part('header', 'HEADER').contactKind = 'socket')),
        expect: ['X1–X3'],
      },
      {
        name: 'pins on pins, although plug meets receptacle',
        project: tiny((t) => void (t.part('housing', 'H-SOCKET').contactKind = 'pin')),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
    unknown: [
      {
        name: 'contact kind not stated; the body form does not tell it',
        project: tiny((t) => void delete t.part('header', 'HEADER').contactKind),
        expect: ['X1–X3'],
      },
    ],
  }),
};
