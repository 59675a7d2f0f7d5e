import { entriesByKey } from '../derive/changes-of';
import type { Conflict, Meeting } from './conflict';
import { isObject, sameValue } from './same-value';

type Fields = Readonly<Record<string, unknown>>;
type About = Pick<Conflict, 'collection' | 'id'>;

/** Lists whose entries go by their place: the first end of a wire and the second. */
const BY_PLACE: ReadonlySet<string> = new Set(['wires ends']);

/** Lists that are only ever added to: what both sides appended is kept. */
const APPENDED: ReadonlySet<string> = new Set(['decisions uses', 'decisions approvals']);

/**
 * One object out of three states of it. A field that one side left alone is taken from the other; entries of a list are
 * told apart by what names them; any other value is taken as a whole, so that nothing is made which neither side wrote.
 */
export const threeWay = (
  about: About,
  base: Fields,
  mine: Fields,
  theirs: Fields,
  meeting: Meeting,
): Fields => mergedFields(about, '', base, mine, theirs, meeting);

/** `within` leads to the object from the one that it is about: "cavities[3]." */
function mergedFields(
  about: About,
  within: string,
  base: Fields,
  mine: Fields,
  theirs: Fields,
  meeting: Meeting,
): Fields {
  const fields = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
  return Object.fromEntries(
    fields.flatMap((field) => {
      const at = { ...about, field: within + field };
      const value = valueOf(at, base[field], mine[field], theirs[field], meeting);
      return value === undefined ? [] : [[field, value]];
    }),
  );
}

function valueOf(
  about: About & { readonly field: string },
  base: unknown,
  mine: unknown,
  theirs: unknown,
  meeting: Meeting,
): unknown {
  if (sameValue(mine, theirs) || sameValue(base, theirs)) return mine;
  if (sameValue(base, mine)) return theirs;
  if (APPENDED.has(`${about.collection} ${about.field}`)) {
    const both = appended(base ?? [], mine, theirs);
    if (both) return both;
  }
  if (BY_PLACE.has(`${about.collection} ${about.field}`)) return byPlace(about, base, mine, theirs, meeting);
  const lists = keyedLists(base, mine, theirs);
  return lists ? mergedList(about, ...lists, meeting) : meeting.take({ ...about, base, mine, theirs });
}

function appended(base: unknown, mine: unknown, theirs: unknown): readonly unknown[] | null {
  if (!Array.isArray(base) || !Array.isArray(mine) || !Array.isArray(theirs)) return null;
  const begins = (list: readonly unknown[]): boolean => sameValue(list.slice(0, base.length), base);
  return begins(mine) && begins(theirs) ? [...mine, ...theirs.slice(base.length)] : null;
}

function byPlace(
  about: About & { readonly field: string },
  base: unknown,
  mine: unknown,
  theirs: unknown,
  meeting: Meeting,
): unknown {
  if (!Array.isArray(base) || !Array.isArray(mine) || !Array.isArray(theirs))
    return meeting.take({ ...about, base, mine, theirs });
  return mine.map((item, i) =>
    valueOf({ ...about, field: `${about.field}[${i}]` }, base[i], item, theirs[i], meeting),
  );
}

type Entries = ReadonlyMap<string, unknown>;

function keyedLists(...lists: readonly unknown[]): [Entries, Entries, Entries] | null {
  const maps = lists.map((list) => (Array.isArray(list) ? entriesByKey(list) : null));
  const [base, mine, theirs] = maps;
  return base && mine && theirs ? [base, mine, theirs] : null;
}

/** Entries in the order of mine, then what theirs added. */
function mergedList(
  about: About & { readonly field: string },
  base: Entries,
  mine: Entries,
  theirs: Entries,
  meeting: Meeting,
): readonly unknown[] {
  return [...new Set([...mine.keys(), ...theirs.keys()])].flatMap((key) => {
    const [was, here, there] = [base.get(key), mine.get(key), theirs.get(key)];
    const at = { ...about, field: `${about.field}[${key}]` };
    const value =
      isObject(was) && isObject(here) && isObject(there)
        ? mergedFields(about, `${at.field}.`, was, here, there, meeting)
        : valueOf(at, was, here, there, meeting);
    return value === undefined ? [] : [value];
  });
}
