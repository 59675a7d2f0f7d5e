import { z } from 'zod';
import { Id } from '../model/ids';
import { ContactPart } from '../model/parts/contact';
import { command } from './command';
import { draftObject, missing, objectIn } from './shared/draft-object';
import { dropContact } from './shared/drop-contact';
import { embedPart } from './shared/embed-part';

/** Crimps another contact on a wire end, or none. A crimp that two wires share is changed for both. */
export const contactSet = command({
  id: 'contact.set',
  label: 'Change contact',
  args: z.strictObject({
    wire: Id,
    end: z.union([z.literal(0), z.literal(1)]),
    part: ContactPart.nullable(),
  }),
  refuse(project, { wire, end }) {
    const gone = missing(project, 'wires', [wire], 'wire');
    if (gone) return gone;
    return objectIn(project, 'wires', wire)?.ends[end].at === 'cavity'
      ? null
      : 'This end is in no cavity: it takes no contact.';
  },
  run(draft, { wire: id, end: index, part }, { newId }, project) {
    const before = objectIn(project, 'wires', id)?.ends[index];
    const end = draftObject(draft, project, 'wires', id).ends[index];
    if (end.at !== 'cavity' || before?.at !== 'cavity') return;
    if (!part) {
      if (before.contact) dropContact(draft, project, before.contact, { wire: id, end: index });
      delete end.contact;
      return;
    }
    const partId = embedPart(draft, project, part);
    if (part.stripLengthMm !== undefined) end.stripLengthMm = part.stripLengthMm;
    if (before.contact) {
      draftObject(draft, project, 'contacts', before.contact).part = partId;
      return;
    }
    const contact = { id: newId(), part: partId };
    draft.contacts.push(contact);
    end.contact = contact.id;
  },
});
