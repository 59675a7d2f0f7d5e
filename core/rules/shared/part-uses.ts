import { byId } from '../../base/by-id';
import { memoByIdentity } from '../../base/memo-by-identity';
import type { Connector, Contact } from '../../model/connector';
import type { Part, PartKind } from '../../model/parts/part';
import type { Project } from '../../model/project';
import type { Label } from '../../model/topology';
import type { Wire } from '../../model/wire';
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

/**
 * Every place in a project where a part belongs and none of the right kind is. What a collection lacks is remembered
 * as long as it and the part records stay, and what an object names as long as the object stays.
 */
export function partsAmiss(project: Project): readonly PartUse[] {
  const { parts } = project;
  return [
    ...amissIn(project.connectors, parts, ofConnector),
    ...amissIn(project.contacts, parts, ofContact),
    ...amissIn(project.wires, parts, ofWire),
    ...amissIn(project.cables, parts, (c) => [use({ type: 'cable', id: c.id }, '', c.part, 'cable')]),
    ...amissIn(project.splices, parts, (s) => [use({ type: 'splice', id: s.id }, '', s.part, 'splice')]),
    ...amissIn(project.fuses, parts, (f) => [use({ type: 'fuse', id: f.id }, '', f.part, 'fuse')]),
    ...amissIn(project.coverings, parts, (c) => [
      use({ type: 'covering', id: c.id }, '', c.part, 'covering'),
    ]),
    ...amissIn(project.ties, parts, (t) => [
      use({ type: 'segment', id: t.station.segment }, 'tie on ', t.part, 'tie'),
    ]),
    ...amissIn(project.fixings, parts, (f) => [
      use({ type: 'segment', id: f.station.segment }, 'fixing on ', f.part, 'clamp', 'grommet'),
    ]),
    ...amissIn(project.labels, parts, (l) =>
      l.part === undefined ? [] : [use(labelled(l), `label "${l.text}" on `, l.part, 'label')],
    ),
  ];
}

const known = new WeakMap<object, { readonly parts: readonly Part[]; readonly amiss: readonly PartUse[] }>();

function amissIn<T extends object>(
  list: readonly T[],
  parts: readonly Part[],
  usesOf: (item: T) => readonly PartUse[],
): readonly PartUse[] {
  const before = known.get(list);
  if (before?.parts === parts) return before.amiss;
  const partById = byId(parts);
  const amiss: PartUse[] = [];
  for (const item of list)
    for (const u of usesOf(item)) {
      const part = u.part === undefined ? undefined : partById.get(u.part);
      if (!part || (u.kinds.length > 0 && !u.kinds.includes(part.kind))) amiss.push(u);
    }
  known.set(list, { parts, amiss });
  return amiss;
}

const use = (
  at: ObjectRef,
  role: string,
  part: string | undefined,
  ...kinds: readonly PartKind[]
): PartUse => ({ at, role, part, kinds });

const ofConnector = memoByIdentity((c: Connector): readonly PartUse[] => {
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
});

const ofContact = memoByIdentity((c: Contact): readonly PartUse[] => [
  use({ type: 'contact', id: c.id }, 'contact at ', c.part, 'contact'),
]);

const ofWire = memoByIdentity((w: Wire): readonly PartUse[] => {
  const at: ObjectRef = { type: 'wire', id: w.id };
  const uses = w.core ? [] : [use(at, '', w.part, 'wire')];
  for (const end of w.ends) {
    if (end.at === 'cavity' && end.seal !== undefined) uses.push(use(at, 'seal of ', end.seal, 'wire-seal'));
    if (end.at === 'free' && end.terminal !== undefined)
      uses.push(use(at, 'terminal of ', end.terminal, 'terminal'));
  }
  return uses;
});

function labelled({ on }: Label): ObjectRef {
  if (on.at === 'wire-end') return { type: 'wire', id: on.wire };
  if (on.at === 'connector') return { type: 'connector', id: on.connector };
  return { type: 'segment', id: on.station.segment };
}
