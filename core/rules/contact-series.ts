import { contactSeriesFit } from '../derive/contact-fit';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { addPartLike, setContact } from './shared/example-parts';
import { judgeContacts } from './shared/judge-fit';

export const contactSeries: Rule<'cavity'> = {
  meta: {
    id: 'contact-series',
    revision: 1,
    severity: 'major',
    summary: 'A contact is of a series that its housing accepts.',
    why: 'A contact of a foreign series may go in, but its lance finds no edge to hold on to: it backs out when the halves are mated or under vibration.',
    source: 'common practice: housing and contact are approved as a pair by their maker',
    message: '{{contact}} in {{cavity}} is of series {{measured}}; the housing accepts {{limit}}',
    unknown:
      'Whether the series of {{contact}} latches in {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check: (cavity, report) => judgeContacts(cavity, report, contactSeriesFit),
  examples: () => ({
    good: [
      { name: 'series E3 in housings for E3', project: tiny() },
      {
        name: 'one of several accepted series',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').acceptedSeries = ['E2', 'E3'];
        }),
      },
    ],
    bad: [
      {
        name: 'a contact of a larger series',
        project: tiny((t) => {
          addPartLike(t, 'contact', 'C-SOCKET', { partNumber: 'C-SOCKET-E5', series: 'E5' });
          setContact(t, 'W2', 0, 'C-SOCKET-E5');
        }),
        expect: ['X1:2'],
      },
    ],
    unknown: [
      {
        name: 'the housing does not say what it accepts',
        project: tiny((t) => delete t.part('housing', 'H-PIN').acceptedSeries),
        expect: ['X2:1', 'X2:2'],
      },
      {
        name: 'the contact does not say its series',
        project: tiny((t) => delete t.part('contact', 'C-SOCKET').series),
        expect: ['X1:1', 'X1:2'],
      },
    ],
  }),
};
