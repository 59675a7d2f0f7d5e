import { following } from '../base/following';
import { listDifference } from '../base/list-difference';
import type { Project } from '../model/project';
import { lineageOf } from './lineage';

/** Collections whose objects are named beside each other: what is built in, and the formboard. */
export const NAMED_TOGETHER = [
  ['equipment', 'connectors', 'cables', 'wires', 'groups', 'splices', 'fuses', 'coverings', 'fixings'],
  ['nodes', 'segments'],
] as const satisfies readonly (readonly (keyof Project)[])[];

/** How many objects of one set bear each designator. */
export interface DesignatorCounts {
  readonly counts: ReadonlyMap<string, number>;
  /** Designators of more than one object. */
  readonly shared: ReadonlySet<string>;
}

class Counts implements DesignatorCounts {
  readonly counts = new Map<string, number>();
  readonly shared = new Set<string>();

  add(name: string, more: 1 | -1): void {
    const count = (this.counts.get(name) ?? 0) + more;
    if (count > 0) this.counts.set(name, count);
    else this.counts.delete(name);
    if (count > 1) this.shared.add(name);
    else if (count === 1) this.shared.delete(name);
  }
}

type Named = { readonly designator?: string | undefined };

function count(into: Counts, list: readonly Named[], more: 1 | -1): void {
  for (const { designator } of list) if (designator !== undefined) into.add(designator, more);
}

const tables = following(
  (project: Project) =>
    NAMED_TOGETHER.map((set) => {
      const counts = new Counts();
      for (const collection of set) count(counts, project[collection], 1);
      return counts;
    }),
  (sets, before, after) => {
    for (const [i, set] of NAMED_TOGETHER.entries())
      for (const collection of set) {
        if (before[collection] === after[collection]) continue;
        const { gone, fresh } = listDifference<Named>(before[collection], after[collection]);
        const counts = sets[i] as Counts;
        count(counts, gone, -1);
        count(counts, fresh, 1);
      }
    return sets;
  },
);

/** The designators of a project, by the sets of `NAMED_TOGETHER`. Good until another project of its lineage is asked about. */
export const designatorCounts = (project: Project): readonly DesignatorCounts[] =>
  tables(lineageOf(project), project);
