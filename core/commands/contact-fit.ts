import { z } from 'zod';
import type { Part } from '../model/parts/part';
import { Id } from '../model/ids';
import type { ContactPart } from '../model/parts/contact';
import type { Project } from '../model/project';
import { command } from './command';
import { draftObject, objectIn } from './shared/draft-object';
import { candidateParts, embedPart } from './shared/embed-part';
import { endsAt, type Place } from './shared/ends-at';
import { contactFor, housingAt } from './shared/wire-target';

/** Chooses the contact that fits the housing and the wires of each place, and strips the wires for it. */
export const contactFit = command({
  id: 'contact.fit',
  label: 'Choose contact that fits',
  args: z.strictObject({ places: z.array(z.strictObject({ connector: Id, cavity: z.string() })).min(1) }),
  refuse(project, { places }, { catalogue }) {
    const candidates = candidateParts(project, catalogue);
    for (const place of places) {
      const name = `${objectIn(project, 'connectors', place.connector)?.designator ?? '?'}:${place.cavity}`;
      if (!housingAt(project, { at: 'cavity', ...place })) return `${name} is not a cavity of a housing.`;
      if (endsAt(project, place).length === 0) return `No wire ends in ${name}.`;
      if (groupsAt(project, place).length > 1)
        return `${name} holds more than one crimp; put the wires into one, or move one out.`;
      if (!choose(project, place, candidates))
        return `No contact in the project or the catalogues fits ${name} and its wire.`;
    }
    return null;
  },
  run(draft, { places }, { newId, catalogue }, project) {
    const candidates = candidateParts(project, catalogue);
    for (const place of places) {
      const part = choose(project, place, candidates);
      const ends = endsAt(project, place);
      if (!part || ends.length === 0) continue;
      const partId = embedPart(draft, project, part);
      const [known] = groupsAt(project, place);
      const contact = known ?? newId();
      if (known) draftObject(draft, project, 'contacts', known).part = partId;
      else draft.contacts.push({ id: contact, part: partId });
      for (const { wire, index } of ends) {
        const end = draftObject(draft, project, 'wires', wire).ends[index];
        if (end.at !== 'cavity') continue;
        end.contact = contact;
        if (part.stripLengthMm !== undefined) end.stripLengthMm = part.stripLengthMm;
      }
    }
  },
});

/** The different crimps in a cavity; a wire without a contact counts only when there is another wire. */
function groupsAt(project: Project, place: Place): string[] {
  const ends = endsAt(project, place);
  const named = [...new Set(ends.flatMap((e) => (e.contact ? [e.contact] : [])))];
  const bare = ends.filter((e) => !e.contact).length;
  return bare > 0 && ends.length > 1 ? [...named, 'bare', ...(named.length ? [] : ['bare'])] : named;
}

function choose(project: Project, place: Place, candidates: readonly Part[]): ContactPart | null {
  const conductors = endsAt(project, place).map((e) => e.conductor);
  const known = conductors.filter((c) => c !== undefined);
  return known.length === conductors.length
    ? contactFor(project, { at: 'cavity', ...place }, known, candidates)
    : null;
}
