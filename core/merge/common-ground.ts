import { byId } from '../base/by-id';
import { COLLECTIONS, type Project } from '../model/project';
import { sameValue } from './same-value';

type WithId = { readonly id: string };

/**
 * What two states have in common, to merge from where the state that both come from is not known: what only one has is
 * taken as added, and whatever differs is asked about. Nothing can get lost by that, only be asked once too often.
 */
export function commonGround(mine: Project, theirs: Project): Project {
  const lists = COLLECTIONS.map((c) => {
    const there = byId<WithId>(theirs[c]);
    return [c, (mine[c] as readonly WithId[]).filter((o) => sameValue(o, there.get(o.id)))];
  });
  const own = Object.entries(mine).filter(([key, value]) => sameValue(value, theirs[key as keyof Project]));
  return { ...Object.fromEntries(own), ...Object.fromEntries(lists) } as Project;
}
