import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { reportMating } from './shared/report-mating';

export const mateBodyForm: Rule<'mate'> = {
  meta: {
    id: 'mate-body-form',
    revision: 1,
    severity: 'major',
    summary: 'Of two halves that are mated one is the plug and the other the receptacle.',
    why: 'Two plugs meet nose to nose and two receptacles leave a gap: neither pair goes together.',
    source: 'common practice: body form says nothing of the contact kind, each is checked for itself',
    message: '{{a}} does not mate with {{b}}: {{reasons}}',
    unknown: 'Whether the bodies of {{a}} and {{b}} mate cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check: (mate, report) => reportMating(mate, ['body-form'], report),
  examples: () => ({
    good: [
      { name: 'plug in receptacle', project: tiny() },
      {
        name: 'the receptacle may as well be the half with the pins',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').bodyForm = 'plug';
          t.part('housing', 'H-PIN').bodyForm = 'receptacle';
          t.part('header', 'HEADER').bodyForm = 'receptacle';
        }),
      },
    ],
    bad: [
      {
        name: 'receptacle on receptacle',
        project: tiny((t) => void (t.part('header', 'HEADER').bodyForm = 'receptacle')),
        expect: ['X1–X3'],
      },
      {
        name: 'plug on plug',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').bodyForm = 'plug';
        }),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
    unknown: [
      {
        name: 'body form not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').bodyForm),
        expect: ['X1–X3'],
      },
    ],
  }),
};
