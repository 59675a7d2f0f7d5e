import { contactKindFit } from '../derive/contact-fit';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { setContact } from './shared/example-parts';
import { judgeContacts } from './shared/judge-fit';

export const contactKind: Rule<'cavity'> = {
  meta: {
    id: 'contact-kind',
    revision: 1,
    severity: 'major',
    summary: 'Pin contacts sit in housings for pins, socket contacts in housings for sockets.',
    why: 'A contact of the wrong kind does not latch in the cavity, and two of one kind never touch when the halves are mated: the circuit stays open or the pins stub and bend.',
    source:
      'common practice; the kind is a field of its own and is never taken from the words plug or receptacle',
    message: '{{contact}} in {{cavity}} is a {{measured}} contact; the housing takes {{limit}} contacts',
    unknown:
      'Whether {{contact}} in {{cavity}} is of the right kind cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check: (cavity, report) => judgeContacts(cavity, report, contactKindFit),
  examples: () => ({
    good: [{ name: 'sockets in the housing for sockets, pins in the housing for pins', project: tiny() }],
    bad: [
      {
        name: 'a pin contact in a housing for sockets',
        project: tiny((t) => setContact(t, 'W1', 0, 'C-PIN')),
        expect: ['X1:1'],
      },
      {
        name: 'a spare socket contact in a housing for pins',
        project: tiny((t) => {
          const id = t.newId();
          t.project.contacts.push({ id, part: t.part('contact', 'C-SOCKET').id });
          t.connector('X2').cavities = [{ cavity: '3', state: 'spare-contact', contact: id }];
        }),
        expect: ['X2:3'],
      },
    ],
    unknown: [
      {
        name: 'the contact record does not say what it is',
        project: tiny((t) => delete t.part('contact', 'C-PIN').contactKind),
        expect: ['X2:1', 'X2:2'],
      },
    ],
  }),
};
