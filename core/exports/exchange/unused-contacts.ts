import type { Harness } from '../../derive/harness';
import type { ExchangeReport } from './exchange-report';
import type { Junction } from './junctions';

/** Tells of contacts that sit in no cavity and on no wire: the parts list does not count them, and no file has them. */
export function reportUnusedContacts(
  harness: Harness,
  junctions: readonly Junction[],
  report: ExchangeReport,
): void {
  const used = new Set(junctions.flatMap((j) => (j.at === 'cavity' && j.contact ? [j.contact.id] : [])));
  for (const contact of harness.project.contacts)
    if (!used.has(contact.id))
      report.lose(
        `contact ${harness.parts.get(contact.part)?.partNumber ?? contact.id}`,
        'it is on no wire and in no cavity: not written',
        { type: 'contact', id: contact.id },
      );
}
