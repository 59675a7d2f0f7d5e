import { contactKindFit } from '../derive/contact-fit';
import { crimpsOf } from '../derive/crimps';
import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { crimpNames, crimpRefs } from './shared/crimp-data';
import { setContact } from './shared/example-parts';
import { fitContact } from './shared/fit-contact';
import { fitEvidence, fitNeeds } from './shared/fit-words';

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
  check(cavity, report) {
    const housing = cavity.connector.part;
    if (housing?.kind !== 'housing') return;
    for (const crimp of crimpsOf(cavity)) {
      const fit = contactKindFit(housing, crimp.part);
      const between = { housing, contact: crimp.part };
      const base = { at: crimpRefs(cavity, crimp), evidence: fitEvidence(fit, between) };
      const { wires: _, ...names } = crimpNames(cavity, crimp);
      if (fit.verdict === 'fits') report.pass();
      else if (fit.verdict === 'unknown')
        report.cannotVerify({ ...base, data: names, needs: fitNeeds(fit, between) });
      else
        for (const { measured, limit } of fit.reasons)
          report.fail({
            ...base,
            data: { ...names, measured, limit },
            fix: crimp.contact && fitContact(cavity),
          });
    }
  },
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
