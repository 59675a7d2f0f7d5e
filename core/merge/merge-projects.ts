import { byId } from '../base/by-id';
import { objectsRemove } from '../commands/objects-remove';
import { issuesOf } from '../model/parse-json';
import type { Issue } from '../model/problem';
import { COLLECTIONS, type Collection, Project } from '../model/project';
import { referenceIssues, referencesOf } from '../model/references';
import { produce } from 'immer';
import { type Choices, type Conflict, Meeting, type Side } from './conflict';
import { sameValue } from './same-value';
import { threeWay } from './three-way';

export type Merge =
  | { readonly status: 'merged'; readonly project: Project }
  /** Nothing is decided for the user: the merge is asked for again with a choice for each. */
  | { readonly status: 'conflicts'; readonly conflicts: readonly Conflict[] }
  /** The changes cannot stand together even so; both sides stay as they are. */
  | { readonly status: 'refused'; readonly issues: readonly Issue[] };

type WithId = { readonly id: string };
type Lists = Readonly<Record<Collection, readonly WithId[]>>;
interface States {
  readonly base: Project;
  readonly mine: Project;
  readonly theirs: Project;
}

/** What is only named by others and does no harm alone comes back without a question. */
const QUIET: ReadonlySet<Collection> = new Set<Collection>(['parts', 'contacts']);

/**
 * Two states of a project that were made from `base`, put together by the ids of their objects. What only one side
 * changed is taken; where both changed the same value, the choice of that conflict is taken, or asked for. The result is a
 * whole project or none.
 */
export function mergeProjects(
  base: Project,
  mine: Project,
  theirs: Project,
  choices: Choices = new Map(),
): Merge {
  const states = { base, mine, theirs };
  const meeting = new Meeting(choices);
  const lists = Object.fromEntries(
    COLLECTIONS.map((c) => [c, mergedCollection(c, states, meeting)]),
  ) as unknown as Lists;
  const own = threeWay(
    { collection: 'project', id: base.id },
    ownOf(base),
    ownOf(mine),
    ownOf(theirs),
    meeting,
  );
  const { project, remove } = withWhatIsNamed({ ...own, ...lists } as unknown as Project, states, meeting);
  if (meeting.open.length > 0) return { status: 'conflicts', conflicts: meeting.open };
  const args = { ids: [...remove] };
  const result =
    remove.length === 0
      ? project
      : produce(project, (draft) => objectsRemove.run(draft, args, NOTHING_NEEDED, project));
  const parsed = Project.safeParse(result);
  if (!parsed.success) return { status: 'refused', issues: issuesOf(parsed.error) };
  const issues = referenceIssues(parsed.data);
  return issues.length > 0 ? { status: 'refused', issues } : { status: 'merged', project: parsed.data };
}

const NOTHING_NEEDED = {
  catalogue: [],
  newId: (): string => {
    throw new Error('Taking objects away needs no id.');
  },
};

function ownOf(project: Project): Readonly<Record<string, unknown>> {
  const lists = new Set<string>(COLLECTIONS);
  return Object.fromEntries(Object.entries(project).filter(([key]) => !lists.has(key)));
}

/** Objects in the order of mine, then what theirs added. */
function mergedCollection(collection: Collection, states: States, meeting: Meeting): readonly WithId[] {
  const [base, mine, theirs] = [states.base[collection], states.mine[collection], states.theirs[collection]];
  if (mine === theirs || base === theirs) return mine;
  if (base === mine) return theirs;
  const [was, here, there] = [byId<WithId>(base), byId<WithId>(mine), byId<WithId>(theirs)];
  return [...new Set([...here.keys(), ...there.keys()])].flatMap((id): readonly WithId[] => {
    const [b, m, t] = [was.get(id), here.get(id), there.get(id)];
    if (b && m && t)
      return [threeWay({ collection, id }, { ...b }, { ...m }, { ...t }, meeting) as unknown as WithId];
    if (sameValue(b, t)) return m ? [m] : [];
    if (sameValue(b, m)) return t ? [t] : [];
    const taken = meeting.take({ collection, id, field: null, base: b, mine: m, theirs: t });
    return taken ? [taken as WithId] : [];
  });
}

/**
 * An object that one side took away and the other still names: back it comes, or goes with all that hangs on it, by
 * choice.
 */
function withWhatIsNamed(
  merged: Project,
  states: States,
  meeting: Meeting,
): { readonly project: Project; readonly remove: readonly string[] } {
  const remove: string[] = [];
  let project = merged;
  for (;;) {
    const back = new Map<Collection, WithId[]>();
    const seen = new Set<string>();
    for (const { collection, id } of referencesOf(project)) {
      if (seen.has(id) || byId<WithId>(project[collection]).has(id)) continue;
      seen.add(id);
      const [mine, theirs] = [find(states.mine, collection, id), find(states.theirs, collection, id)];
      const base = find(states.base, collection, id);
      const object = mine ?? theirs ?? base;
      if (!object) continue;
      back.set(collection, [...(back.get(collection) ?? []), object]);
      const side: Side | null = QUIET.has(collection)
        ? mine
          ? 'mine'
          : 'theirs'
        : meeting.sideOf({ collection, id, field: null, base, mine, theirs });
      if (side !== null && !(side === 'mine' ? mine : theirs) && !QUIET.has(collection)) remove.push(id);
    }
    if (back.size === 0) return { project, remove };
    project = {
      ...project,
      ...Object.fromEntries([...back].map(([c, objects]) => [c, [...project[c], ...objects]])),
    };
  }
}

const find = (project: Project, collection: Collection, id: string): WithId | undefined =>
  byId<WithId>(project[collection]).get(id);
