import type { CavityUse, EndInCavity } from './harness';

/** The ends in a cavity that come and go together: those of one contact, and each bare end by itself. */
export function contactsIn(cavity: Pick<CavityUse, 'ends'>): readonly (readonly EndInCavity[])[] {
  const groups = new Map<string, EndInCavity[]>();
  for (const e of cavity.ends) {
    const key = e.end.contact?.id ?? `${e.wire.wire.id} ${e.index}`;
    groups.set(key, [...(groups.get(key) ?? []), e]);
  }
  return [...groups.values()];
}
