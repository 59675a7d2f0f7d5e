import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { reportMating } from './shared/report-mating';

export const mateInterface: Rule<'mate'> = {
  meta: {
    id: 'mate-interface',
    revision: 1,
    severity: 'major',
    summary: 'Two halves that are mated have the same interface, ways, rows and pitch.',
    why:
      'Halves of different interfaces do not latch, or touch only in part. A pitch of 2.50 mm against 2.54 mm looks the ' +
      'same and adds up over the row until contacts are bent or forced apart.',
    source: 'common practice: only halves that their makers state for each other are mated',
    message: '{{a}} does not mate with {{b}}: {{reasons}}',
    unknown: 'Whether {{a}} mates with {{b}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check: (mate, report) => reportMating(mate, ['interface', 'ways', 'pitch'], report),
  examples: () => ({
    good: [
      { name: 'two halves of one interface', project: tiny() },
      {
        name: 'one way: neither rows nor pitch matter',
        project: tiny((t) => {
          t.project.wires = t.project.wires.filter((w) => w.designator === 'W1');
          for (const part of [
            t.part('housing', 'H-SOCKET'),
            t.part('housing', 'H-PIN'),
            t.part('header', 'HEADER'),
          ]) {
            part.ways = 1;
            delete part.rows;
            delete part.pitchMm;
          }
        }),
      },
    ],
    bad: [
      {
        name: 'another interface',
        project: tiny((t) => void (t.part('header', 'HEADER').interface = 'F2')),
        expect: ['X1–X3'],
      },
      {
        name: 'one way more',
        project: tiny((t) => void (t.part('header', 'HEADER').ways = 4)),
        expect: ['X1–X3'],
      },
      {
        name: 'two rows against one',
        project: tiny((t) => void (t.part('header', 'HEADER').rows = 2)),
        expect: ['X1–X3'],
      },
      {
        name: '2.50 mm against 2.54 mm',
        project: tiny((t) => {
          for (const number of ['H-SOCKET', 'H-PIN']) t.part('housing', number).pitchMm = 2.5;
          t.part('header', 'HEADER').pitchMm = 2.54;
        }),
        expect: ['X1–X3'],
      },
      {
        name: 'a known difference decides although the pitch is not stated',
        project: tiny((t) => {
          t.part('header', 'HEADER').interface = 'F2';
          delete t.part('header', 'HEADER').pitchMm;
        }),
        expect: ['X1–X3'],
      },
    ],
    unknown: [
      {
        name: 'interface not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').interface),
        expect: ['X1–X3'],
      },
      {
        name: 'pitch not stated',
        project: tiny((t) => void delete t.part('housing', 'H-PIN').pitchMm),
        expect: ['X2–X4'],
      },
    ],
  }),
};
