import { byId } from '../../base/by-id';
import { memoByIdentity } from '../../base/memo-by-identity';
import { reuseList } from '../../base/same-fields';
import type { Part } from '../../model/parts/part';
import type { Project } from '../../model/project';
import type { Connector } from '../../model/connector';

/**
 * Records of what is bought for the harness, in the order of the project: what its objects name, but for connectors that
 * come with their equipment and what is fitted to these. What a collection names is remembered as long as it stays.
 */
export function boughtParts(project: Project): readonly Part[] {
  const named = [
    ofConnectors(project.connectors),
    partsOf(project.contacts),
    partsOf(project.wires),
    sealsAndTerminals(project.wires),
    partsOf(project.cables),
    partsOf(project.splices),
    partsOf(project.fuses),
    partsOf(project.coverings),
    partsOf(project.ties),
    partsOf(project.fixings),
    partsOf(project.labels),
  ];
  const list = project.parts.filter((p) => named.some((set) => set.has(p.id)));
  const bought = reuseList(lists.get(project.parts), list);
  lists.set(project.parts, bought);
  return bought;
}

const lists = new WeakMap<readonly Part[], readonly Part[]>();

type Names = ReadonlySet<string>;

// Asked after every edit, of collections with ten thousand objects: plain loops, nothing made but the set.
const partsOf = memoByIdentity((list: readonly { readonly part?: string | undefined }[]): Names => {
  const out = new Set<string>();
  for (const { part } of list) if (part !== undefined) out.add(part);
  return out;
});

const ofConnectors = memoByIdentity((connectors: readonly Connector[]): Names => {
  const mine = connectors.filter((c) => c.supply === 'harness');
  return new Set(
    mine.flatMap((c) => [
      c.part,
      ...c.accessories.map((a) => a.part),
      ...c.cavities.flatMap((e) => e.plug ?? []),
    ]),
  );
});

const sealsAndTerminals = memoByIdentity((wires: Project['wires']): Names => {
  const out = new Set<string>();
  for (const w of wires)
    for (const end of w.ends) {
      const part = end.at === 'cavity' ? end.seal : end.at === 'free' ? end.terminal : undefined;
      if (part !== undefined) out.add(part);
    }
  return out;
});

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
