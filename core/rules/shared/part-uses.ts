import { memoByIdentity } from '../../base/memo-by-identity';
import type { Connector, Contact } from '../../model/connector';
import type { PartKind } from '../../model/parts/part';
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

/** Every place in a project where a part belongs. What an object names is worked out once per object. */
export function* partUsesOf(project: Project): Generator<PartUse> {
  for (const c of project.connectors) yield* ofConnector(c);
  for (const c of project.contacts) yield ofContact(c);
  for (const w of project.wires) yield* ofWire(w);
  for (const c of project.cables) yield use({ type: 'cable', id: c.id }, '', c.part, 'cable');
  for (const s of project.splices) yield use({ type: 'splice', id: s.id }, '', s.part, 'splice');
  for (const f of project.fuses) yield use({ type: 'fuse', id: f.id }, '', f.part, 'fuse');
  for (const c of project.coverings) yield use({ type: 'covering', id: c.id }, '', c.part, 'covering');
  for (const t of project.ties)
    yield use({ type: 'segment', id: t.station.segment }, 'tie on ', t.part, 'tie');
  for (const l of project.labels)
    if (l.part !== undefined) yield use(labelled(l), `label "${l.text}" on `, l.part, 'label');
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

const ofContact = memoByIdentity((c: Contact): PartUse =>
  use({ type: 'contact', id: c.id }, 'contact at ', c.part, 'contact'),
);

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
