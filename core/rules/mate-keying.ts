import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { reportMating } from './shared/report-mating';

export const mateKeying: Rule<'mate'> = {
  meta: {
    id: 'mate-keying',
    revision: 1,
    severity: 'major',
    summary: 'Two halves that are mated bear the same keying code; "none" meets "none".',
    why:
      'A half with another key does not enter, or is forced in and shears the key. One without a key enters its ' +
      'neighbours as well and puts the supply where a signal belongs.',
    source:
      'common practice; AC 43.13-1B chapter 11 asks for coded connectors where like ones stand side by side',
    message: 'The keys of {{a}} and {{b}} differ: {{reasons}}',
    unknown: 'Whether the keys of {{a}} and {{b}} agree cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check: (mate, report) => reportMating(mate, ['keying'], report),
  examples: () => ({
    good: [
      { name: 'both without a key', project: tiny() },
      {
        name: 'the same code on both',
        project: tiny((t) => {
          for (const part of [
            t.part('housing', 'H-SOCKET'),
            t.part('housing', 'H-PIN'),
            t.part('header', 'HEADER'),
          ])
            part.keying = 'B';
        }),
      },
    ],
    bad: [
      {
        name: 'a key against none',
        project: tiny((t) => void (t.part('header', 'HEADER').keying = 'A')),
        expect: ['X1–X3'],
      },
      {
        name: 'two different keys',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').keying = 'A';
          t.part('housing', 'H-PIN').keying = 'A';
          t.part('header', 'HEADER').keying = 'B';
        }),
        expect: ['X1–X3'],
      },
    ],
    unknown: [
      {
        name: 'keying not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').keying),
        expect: ['X1–X3'],
      },
    ],
  }),
};
