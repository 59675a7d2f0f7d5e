import type { CavityUse } from '../derive/harness';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Fix } from './finding';
import { cavityName, cavityRef, wireRef } from './refs';
import type { Rule } from './rule';
import { fact } from './shared/evidence';

export const cavityShared: Rule<'cavity'> = {
  meta: {
    id: 'cavity-shared',
    revision: 1,
    severity: 'major',
    summary: 'A cavity holds one contact; wires that end in it share that contact.',
    why: 'A second contact does not enter a cavity that is taken, and a wire without one has nothing to hold it.',
    source: 'common practice: one contact to a cavity',
    message: '{{cavity}} holds {{contents}}',
    unknown: 'Whether {{cavity}} holds one contact cannot be verified; not stated: {{needs}}',
  },
  scope: 'cavity',
  check(c, report) {
    const contacts = new Set(c.ends.flatMap((e) => e.end.contact?.id ?? []));
    const loose = c.ends.filter((e) => !e.end.contact).length;
    if (c.entry?.contact) contacts.add(c.entry.contact);
    if (c.ends.length + (c.entry?.contact ? 1 : 0) < 2) return;
    if (contacts.size < 2 && (loose === 0 || c.ends.length < 2)) return report.pass();
    const source = `project, ${cavityName(c)}`;
    report.fail({
      at: [cavityRef(c), ...c.ends.map((e) => wireRef(e.wire))],
      data: { cavity: cavityName(c), contents: contentsText(c.ends.length, contacts.size, loose) },
      evidence: [
        ...fact('wire ends', c.ends.length, source),
        ...fact('contacts', contacts.size, source),
        ...fact('wire ends without a contact', loose, source),
      ],
      fix: fixOf(c),
    });
  },
  examples: () => ({
    good: [
      { name: 'one wire, one contact', project: tiny() },
      {
        name: 'two wires crimped in one contact',
        project: tiny((t) => moveW2(t, (first) => first)),
      },
    ],
    bad: [
      {
        name: 'two contacts in one cavity',
        project: tiny((t) => moveW2(t, (_, own) => own)),
        expect: ['X1:1'],
      },
      {
        name: 'the second wire has no contact',
        project: tiny((t) => moveW2(t, () => undefined)),
        expect: ['X1:1'],
      },
      {
        name: 'a spare contact where a wire ends',
        project: tiny((t) => {
          const id = t.newId();
          t.project.contacts.push({ id, part: t.part('contact', 'C-SOCKET').id });
          t.connector('X1').cavities.push({ cavity: '1', state: 'spare-contact', contact: id });
        }),
        expect: ['X1:1'],
      },
    ],
    unknown: [],
  }),
};

function contentsText(ends: number, contacts: number, loose: number): string {
  const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;
  const without = loose > 0 ? `, ${loose} of them without a contact` : '';
  return `${count(ends, 'wire end')}${without}, and ${count(contacts, 'contact')}`;
}

function fixOf(c: CavityUse): Fix | undefined {
  const connector = c.connector.connector.id;
  if (c.entry?.contact)
    return {
      label: `Take the spare contact out of ${cavityName(c)}`,
      command: 'cavity.set-state',
      args: { connector, cavities: [c.cavity], state: null },
    };
  return {
    label: `Crimp the wires of ${cavityName(c)} in one contact`,
    command: 'contact.share',
    args: { place: { connector, cavity: c.cavity } },
  };
}

/** Puts the first end of W2 into the cavity of W1, with the contact chosen from W1's and its own. */
function moveW2(
  t: TinyDraft,
  choose: (first: string | undefined, own: string | undefined) => string | undefined,
): void {
  const first = t.wire('W1').ends[0];
  const own = t.wire('W2').ends[0];
  if (first.at !== 'cavity' || own.at !== 'cavity') return;
  own.cavity = first.cavity;
  const contact = choose(first.contact, own.contact);
  if (contact === undefined) delete own.contact;
  else own.contact = contact;
}
