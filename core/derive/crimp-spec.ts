import type { ContactPart } from '../model/parts/contact';
import { wireSizeText, type WireSize } from '../model/wire-size';

type CrimpSpec = NonNullable<ContactPart['crimps']>[number];

/** The specification of a contact for that very wire, else the one for its size and any wire. */
export function crimpSpecFor(
  contact: ContactPart,
  size: WireSize,
  wirePart: string | undefined,
): CrimpSpec | undefined {
  const ofSize = (contact.crimps ?? []).filter(
    (c) => c.second === undefined && wireSizeText(c.size) === wireSizeText(size),
  );
  return ofSize.find((c) => c.wirePart === wirePart) ?? ofSize.find((c) => c.wirePart === undefined);
}

/** The specification of a contact for two wires of these sizes in one crimp, in either order. */
export function doubleCrimpSpecFor(contact: ContactPart, a: WireSize, b: WireSize): CrimpSpec | undefined {
  const wanted = pairText(a, b);
  return contact.crimps?.find((c) => c.second !== undefined && pairText(c.size, c.second) === wanted);
}

const pairText = (a: WireSize, b: WireSize): string => [wireSizeText(a), wireSizeText(b)].sort().join(' + ');
