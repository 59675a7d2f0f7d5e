import type { ContactPart } from '../model/parts/contact';
import { wireSizeText, type WireSize } from '../model/wire-size';

type CrimpSpec = NonNullable<ContactPart['crimps']>[number];

/** The specification of a contact for that very wire, else the one for its size and any wire. */
export function crimpSpecFor(
  contact: ContactPart,
  size: WireSize,
  wirePart: string | undefined,
): CrimpSpec | undefined {
  const ofSize = (contact.crimps ?? []).filter((c) => wireSizeText(c.size) === wireSizeText(size));
  return ofSize.find((c) => c.wirePart === wirePart) ?? ofSize.find((c) => c.wirePart === undefined);
}
