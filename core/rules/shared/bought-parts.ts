import { byId } from '../../base/by-id';
import { following } from '../../base/following';
import { listDifference } from '../../base/list-difference';
import { memoByIdentity } from '../../base/memo-by-identity';
import { reuseList } from '../../base/same-fields';
import { lineageOf } from '../../derive/lineage';
import type { Part } from '../../model/parts/part';
import type { Project } from '../../model/project';

/** Collections whose objects name what is bought. */
const BUYING = [
  'connectors', 'contacts', 'wires', 'cables', 'splices', 'fuses', 'coverings', 'ties', 'labels',
] as const satisfies readonly (keyof Project)[]; // prettier-ignore

/** How many objects name each part, and the records of these. */
interface Bought {
  readonly counts: Map<string, number>;
  list: readonly Part[];
}

const tables = following(
  (project: Project): Bought => {
    const counts = new Map<string, number>();
    for (const collection of BUYING) for (const object of project[collection]) count(counts, object, 1);
    return { counts, list: project.parts.filter((p) => counts.has(p.id)) };
  },
  (bought, before, after) => {
    const { counts } = bought;
    for (const collection of BUYING) {
      if (before[collection] === after[collection]) continue;
      const { gone, fresh } = listDifference<Buying>(before[collection], after[collection]);
      for (const object of gone) count(counts, object, -1);
      for (const object of fresh) count(counts, object, 1);
    }
    bought.list = reuseList(
      bought.list,
      after.parts.filter((p) => counts.has(p.id)),
    );
    return bought;
  },
);

/**
 * Records of what is bought for the harness, in the order of the project: what its objects name, but for connectors that
 * come with their equipment and what is fitted to these.
 */
export const boughtParts = (project: Project): readonly Part[] => tables(lineageOf(project), project).list;

type Buying = Project[(typeof BUYING)[number]][number];

function count(counts: Map<string, number>, object: Buying, more: 1 | -1): void {
  const add = (part: string | undefined): void => {
    if (part === undefined) return;
    const n = (counts.get(part) ?? 0) + more;
    if (n > 0) counts.set(part, n);
    else counts.delete(part);
  };
  if ('supply' in object && object.supply !== 'harness') return;
  add(object.part);
  if ('accessories' in object) for (const a of object.accessories) add(a.part);
  if ('cavities' in object) for (const c of object.cavities) add(c.plug);
  if (!('ends' in object)) return;
  for (const end of object.ends)
    add(end.at === 'cavity' ? end.seal : end.at === 'free' ? end.terminal : undefined);
}

/** Records of tools that a project holds: its tool list. */
export const toolsByNumber = memoByIdentity(
  (parts: readonly Part[]): ReadonlyMap<string, Extract<Part, { kind: 'tool' }>> =>
    new Map(parts.flatMap((p) => (p.kind === 'tool' ? [[p.partNumber, p] as const] : []))),
);

/** The record of a part by its number, of that maker first. */
export function recordByNumber(project: Project, partNumber: string, maker: string): Part | undefined {
  const same = [...byId(project.parts).values()].filter((p) => p.partNumber === partNumber);
  return same.find((p) => p.maker === maker) ?? same[0];
}
