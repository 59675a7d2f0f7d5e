import { memoByIdentity } from '../base/memo-by-identity';
import type { Contact } from '../model/connector';
import type { ContactPart } from '../model/parts/contact';
import type { Conductor } from '../model/parts/wire';
import type { CavityUse, EndInCavity } from './harness';

/** One contact in a cavity with the wire ends that share its crimp, in wire order; none for a spare contact. */
export interface Crimp {
  readonly contact: Contact | undefined;
  readonly part: ContactPart;
  readonly ends: readonly EndInCavity[];
}

/** The contacts of a cavity. Ends without a contact, and contacts whose record is of another kind, are left out. */
export const crimpsOf = memoByIdentity((cavity: CavityUse): readonly Crimp[] => {
  const byContact = new Map<string, { contact: Contact; part: ContactPart; ends: EndInCavity[] }>();
  for (const e of cavity.ends) {
    const { contact, contactPart: part } = e.end;
    if (!contact || !part) continue;
    const crimp = byContact.get(contact.id);
    if (crimp) crimp.ends.push(e);
    else byContact.set(contact.id, { contact, part, ends: [e] });
  }
  const spare: Crimp[] = cavity.spare ? [{ contact: undefined, part: cavity.spare, ends: [] }] : [];
  return [...byContact.values(), ...spare];
});

/** What is known of the wires of a crimp; null when of one of them nothing is. */
export function conductorsOf(crimp: Crimp): readonly Conductor[] | null {
  const conductors = crimp.ends.flatMap((e) => (e.wire.conductor ? [e.wire.conductor] : []));
  return conductors.length === crimp.ends.length ? conductors : null;
}
