import { z } from 'zod';
import type { Part } from '../model/parts/part';
import { Id } from '../model/ids';
import type { Project } from '../model/project';
import { command } from './command';
import { draftObject, objectIn, removeObjects } from './shared/draft-object';
import { candidateParts, embedPart } from './shared/embed-part';
import { endsAt, type Place } from './shared/ends-at';
import { contactFor } from './shared/wire-target';

/**
 * Puts all wire ends of a cavity into one crimp. The contact is one that is approved for the combination where
 * there is one; else the first that is there stays, and the rules say that the combination is not approved.
 */
export const contactShare = command({
  id: 'contact.share',
  label: 'Crimp together',
  args: z.strictObject({ place: z.strictObject({ connector: Id, cavity: z.string() }) }),
  refuse(project, { place }, { catalogue }) {
    const ends = endsAt(project, place);
    if (ends.length < 2) return 'Fewer than two wires end in this cavity.';
    return partFor(project, place, candidateParts(project, catalogue))
      ? null
      : 'No contact is there, and none fits these wires together.';
  },
  run(draft, { place }, { newId, catalogue }, project) {
    const ends = endsAt(project, place);
    const part = partFor(project, place, candidateParts(project, catalogue));
    if (!part || part.kind !== 'contact') return;
    const old = new Set(ends.flatMap((e) => (e.contact ? [e.contact] : [])));
    const contact = { id: newId(), part: embedPart(draft, project, part) };
    removeObjects(draft, project, 'contacts', old);
    draft.contacts.push(contact);
    for (const { wire, index } of ends) {
      const end = draftObject(draft, project, 'wires', wire).ends[index];
      if (end.at !== 'cavity') continue;
      end.contact = contact.id;
      if (part.stripLengthMm !== undefined) end.stripLengthMm = part.stripLengthMm;
    }
  },
});

function partFor(project: Project, place: Place, candidates: readonly Part[]): Part | undefined {
  const ends = endsAt(project, place);
  const conductors = ends.flatMap((e) => (e.conductor ? [e.conductor] : []));
  const approved =
    conductors.length === ends.length
      ? contactFor(project, { at: 'cavity', ...place }, conductors, candidates)
      : null;
  const there = ends.find((e) => e.contact)?.contact;
  return approved ?? objectIn(project, 'parts', objectIn(project, 'contacts', there ?? '')?.part ?? '');
}
