import type { Draft } from 'immer';
import type { Part, PartKind } from '../../model/parts/part';
import type { TinyDraft } from '../../model/tiny';

/** A further part of an example, like one that is there but for some fields. Gives its id. */
export function addPartLike<K extends PartKind>(
  t: TinyDraft,
  kind: K,
  like: string,
  change: Partial<Extract<Part, { kind: K }>> & { partNumber: string },
): string {
  const id = t.newId();
  t.project.parts.push({ ...t.part(kind, like), ...change, id } as Draft<Part>);
  return id;
}

/** Gives the contact at an end of a wire another part. */
export function setContact(t: TinyDraft, wire: string, end: 0 | 1, partNumber: string): void {
  const at = t.wire(wire).ends[end];
  const contact = t.project.contacts.find((c) => at.at === 'cavity' && c.id === at.contact);
  if (contact) contact.part = t.part('contact', partNumber).id;
}
