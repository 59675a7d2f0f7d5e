import { labelCarrier } from '../../derive/label-carrier';
import { byId } from '../../base/by-id';
import { following } from '../../base/following';
import { resultsBeside, type Beside } from '../../base/results-beside';
import { lineageOf } from '../../derive/lineage';
import type { Connector, Contact } from '../../model/connector';
import type { Fuse } from '../../model/electrical';
import type { PartKind } from '../../model/parts/part';
import type { Collection, Project } from '../../model/project';
import type { Covering, Label, Tie } from '../../model/topology';
import type { Cable, Splice, Wire } from '../../model/wire';
import type { ObjectRef } from '../finding';

/** A record that an object names, or ought to. */
export interface PartUse {
  readonly at: ObjectRef;
  /** What the record is for, where the object is not the thing itself: "seal of". */
  readonly role: string;
  readonly part: string | undefined;
  /** Kinds that would do; any would where the list is empty. */
  readonly kinds: readonly PartKind[];
}

/** What the objects of each collection name. */
const USES = {
  connectors: ofConnector,
  contacts: ofContact,
  wires: ofWire,
  cables: (c: Cable) => [use({ type: 'cable', id: c.id }, '', c.part, 'cable')],
  splices: (s: Splice) => [use({ type: 'splice', id: s.id }, '', s.part, 'splice')],
  fuses: (f: Fuse) => [use({ type: 'fuse', id: f.id }, '', f.part, 'fuse')],
  coverings: (c: Covering) => [use({ type: 'covering', id: c.id }, '', c.part, 'covering')],
  ties: (t: Tie) => [use({ type: 'segment', id: t.station.segment }, 'tie on ', t.part, 'tie')],
  labels: (l: Label) =>
    l.part === undefined ? [] : [use(labelCarrier(l.on), `label "${l.text}" on `, l.part, 'label')],
} as const satisfies { readonly [C in Collection]?: (item: Project[C][number]) => readonly PartUse[] };

/** What is amiss in a collection, beside its objects and without those that are in order. */
interface Amiss {
  readonly beside: Beside<object, readonly PartUse[]>;
  readonly all: readonly PartUse[];
}

const tables = following<Project, readonly Amiss[]>(
  (project) => NAMING.map((collection) => amissIn(project, collection, undefined)),
  (table, before, after) =>
    NAMING.map((collection, i) => {
      const sameParts = before.parts === after.parts;
      const was = table[i];
      if (was && sameParts && before[collection] === after[collection]) return was;
      return amissIn(after, collection, sameParts ? was : undefined);
    }),
);

const NAMING = Object.keys(USES) as readonly (keyof typeof USES)[];

/** Every place in a project where a part belongs and none of the right kind is. */
export const partsAmiss = (project: Project): readonly PartUse[] =>
  tables(lineageOf(project), project).flatMap((c) => c.all);

const IN_ORDER: readonly PartUse[] = [];

function amissIn(project: Project, collection: keyof typeof USES, before: Amiss | undefined): Amiss {
  const parts = byId(project.parts);
  const usesOf = USES[collection] as (item: object) => readonly PartUse[];
  const beside = resultsBeside<object, readonly PartUse[]>(project[collection], before?.beside, (item) => {
    const amiss = usesOf(item).filter((u) => {
      const part = u.part === undefined ? undefined : parts.get(u.part);
      return !part || (u.kinds.length > 0 && !u.kinds.includes(part.kind));
    });
    return amiss.length > 0 ? amiss : IN_ORDER;
  });
  const all: PartUse[] = [];
  for (const found of beside.results) if (found !== IN_ORDER) all.push(...found);
  return { beside, all };
}

const use = (
  at: ObjectRef,
  role: string,
  part: string | undefined,
  ...kinds: readonly PartKind[]
): PartUse => ({ at, role, part, kinds });

function ofConnector(c: Connector): readonly PartUse[] {
  const at: ObjectRef = { type: 'connector', id: c.id };
  const plugs = c.cavities.flatMap((e) =>
    e.plug === undefined
      ? []
      : [use({ type: 'cavity', id: c.id, cavity: e.cavity }, 'plug in ', e.plug, 'cavity-plug')],
  );
  return [
    use(at, '', c.part, 'housing', 'header'),
    ...c.accessories.map((a) => use(at, 'accessory of ', a.part)),
    ...plugs,
  ];
}

function ofContact(c: Contact): readonly PartUse[] {
  return [use({ type: 'contact', id: c.id }, 'contact at ', c.part, 'contact')];
}

function ofWire(w: Wire): readonly PartUse[] {
  const at: ObjectRef = { type: 'wire', id: w.id };
  const uses = w.core ? [] : [use(at, '', w.part, 'wire')];
  for (const end of w.ends) {
    if (end.at === 'cavity' && end.seal !== undefined) uses.push(use(at, 'seal of ', end.seal, 'wire-seal'));
    if (end.at === 'free' && end.terminal !== undefined)
      uses.push(use(at, 'terminal of ', end.terminal, 'terminal'));
  }
  return uses;
}
