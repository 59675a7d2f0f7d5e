import { tiny } from '../model/tiny';
import type { WireEnd } from '../model/wire';
import { cavityName, cavityRef, connectorRef, partSource, wireRef } from './refs';
import type { Rule } from './rule';
import { fitContact } from './shared/fit-contact';

export const contactMissing: Rule<'cavity'> = {
  meta: {
    id: 'contact-missing',
    revision: 1,
    severity: 'major',
    summary: 'Every wire that ends in a connector is held there by a contact in a housing.',
    why: 'A wire without a contact is not held and touches nothing. The contact is then missing from the parts list and from the crimp sheets too.',
    source: 'common practice',
    message: '{{wire}} ends in {{cavity}} without a contact: {{reason}}',
    unknown: 'Whether {{wire}} needs a contact at {{cavity}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check(cavity, report) {
    const { connector, part } = cavity.connector;
    for (const end of cavity.ends) {
      const at = [cavityRef(cavity), wireRef(end.wire)];
      const data = { wire: end.wire.wire.designator, cavity: cavityName(cavity) };
      if (part?.kind === 'header')
        report.fail({
          at,
          data: {
            ...data,
            reason: `${part.partNumber} is a header, a wire needs a housing that mates with it`,
          },
          evidence: [{ label: 'contacts of the header', value: 'built in', source: partSource(part) }],
        });
      else if (end.end.contact) report.pass();
      else if (part)
        report.fail({
          at,
          data: { ...data, reason: 'none is chosen' },
          evidence: [
            { label: `contact of ${data.wire} at ${data.cavity}`, value: 'none', source: 'project' },
          ],
          fix: fitContact(cavity),
        });
      else {
        const what = `housing record of ${connector.designator}`;
        report.cannotVerify({
          at,
          data,
          needs: [{ what, at: connectorRef(cavity.connector), field: 'part' }],
        });
      }
    }
  },
  examples: () => ({
    good: [
      { name: 'a contact on every end', project: tiny() },
      {
        name: 'a free end needs none',
        project: tiny((t) => {
          t.wire('W1').ends[1] = { at: 'free', position: { x: 60, y: 0 } };
        }),
      },
    ],
    bad: [
      {
        name: 'a wire without a contact',
        project: tiny((t) => dropContact(t.wire('W2').ends[0])),
        expect: ['X1:2'],
      },
      {
        name: 'a wire that ends in a header',
        project: tiny((t) => {
          t.wire('W1').ends[0] = { at: 'cavity', connector: t.connector('X3').id, cavity: '1' };
        }),
        expect: ['X3:1'],
      },
    ],
    unknown: [
      {
        name: 'the connector names a record that is no housing',
        project: tiny((t) => {
          dropContact(t.wire('W1').ends[1]);
          t.connector('X2').part = t.part('secondary-lock', 'LOCK').id;
        }),
        expect: ['X2:1'],
      },
    ],
  }),
};

const dropContact = (end: WireEnd): void => {
  if (end.at === 'cavity') delete end.contact;
};
