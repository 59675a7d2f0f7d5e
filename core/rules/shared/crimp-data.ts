import type { Crimp } from '../../derive/crimps';
import type { CavityUse } from '../../derive/harness';
import type { ObjectRef } from '../finding';
import { cavityName, cavityRef, contactRef, wireRef } from '../refs';

/** The objects of a crimp: cavity, contact, wires. */
export const crimpRefs = (cavity: CavityUse, crimp: Crimp): ObjectRef[] => [
  cavityRef(cavity),
  ...(crimp.contact ? [contactRef(crimp.contact)] : []),
  ...crimp.ends.map((e) => wireRef(e.wire)),
];

/** Names of a crimp for a sentence. */
export const crimpNames = (
  cavity: CavityUse,
  crimp: Crimp,
): { readonly cavity: string; readonly contact: string; readonly wires: string } => ({
  cavity: cavityName(cavity),
  contact: crimp.part.partNumber,
  wires: crimp.ends.map((e) => e.wire.wire.designator).join(' and '),
});
