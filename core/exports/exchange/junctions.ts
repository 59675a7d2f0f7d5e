import { byId } from '../../base/by-id';
import type { CavityUse, EndInCavity, Harness, ResolvedWire } from '../../derive/harness';
import type { Contact } from '../../model/connector';
import type { Part } from '../../model/parts/part';
import type { Splice, WireEnd } from '../../model/wire';
import { cavityName } from '../../rules/refs';

/** A wire end that is joined at a junction. */
export interface JoinedEnd {
  readonly wire: ResolvedWire;
  readonly index: 0 | 1;
  readonly end: WireEnd;
}

interface Common {
  /** Stays the same from export to export: the contact, the splice, or the wire and its end. */
  readonly key: readonly string[];
  readonly name: string;
  readonly ends: readonly JoinedEnd[];
}

/**
 * Where wire ends meet something: a cavity with its contact (one junction a crimp), a splice, a terminal, or nothing. The
 * cavity may be one that the part does not have (`exists`).
 */
export type Junction =
  | (Common & { readonly at: 'cavity'; readonly cavity: CavityUse; readonly contact: Contact | undefined })
  | (Common & { readonly at: 'splice'; readonly splice: Splice })
  | (Common & { readonly at: 'terminal'; readonly terminal: Part; readonly node: string | undefined })
  | (Common & { readonly at: 'open'; readonly node: string | undefined });

/** Every junction of a harness: connector by connector, then splices, then ends that lie free. */
export function junctionsOf(harness: Harness): readonly Junction[] {
  const out: Junction[] = [];
  for (const use of harness.connectors)
    for (const cavity of use.cavities) out.push(...inCavity(harness, cavity));
  const atSplice = new Map<string, JoinedEnd[]>(harness.project.splices.map((s) => [s.id, []]));
  for (const wire of harness.wires)
    for (const index of [0, 1] as const) {
      const end = wire.wire.ends[index];
      if (end.at === 'splice') atSplice.get(end.splice)?.push({ wire, index, end });
      if (end.at !== 'free') continue;
      const terminal = harness.parts.get(end.terminal ?? '');
      const open = openEnd(wire, index);
      out.push(terminal ? { ...open, at: 'terminal', terminal } : open);
    }
  for (const splice of harness.project.splices)
    out.push({
      at: 'splice',
      key: [splice.id],
      name: splice.designator,
      splice,
      ends: atSplice.get(splice.id) ?? [],
    });
  return out;
}

/** One junction for each contact in a cavity, with wires or as a spare, and one for each end that has none. */
function inCavity(harness: Harness, cavity: CavityUse): Junction[] {
  const name = cavityName(cavity);
  const byContact = new Map<string, { contact: Contact; ends: JoinedEnd[] }>();
  const bare: Junction[] = [];
  for (const e of cavity.ends) {
    const contact = e.end.contact;
    const known = contact && byContact.get(contact.id);
    if (known) known.ends.push(joined(e));
    else if (contact) byContact.set(contact.id, { contact, ends: [joined(e)] });
    else
      bare.push({
        at: 'cavity',
        key: [e.wire.wire.id, String(e.index)],
        name,
        cavity,
        contact,
        ends: [joined(e)],
      });
  }
  const spare = byId(harness.project.contacts).get(cavity.entry?.contact ?? '');
  if (spare && !byContact.has(spare.id)) byContact.set(spare.id, { contact: spare, ends: [] });
  return [
    ...[...byContact.values()].map(({ contact, ends }): Junction => ({
      at: 'cavity',
      key: [contact.id],
      name,
      cavity,
      contact,
      ends,
    })),
    ...bare,
  ];
}

const joined = (e: EndInCavity): JoinedEnd => ({ wire: e.wire, index: e.index, end: e.end.end });

function openEnd(wire: ResolvedWire, index: 0 | 1): Extract<Junction, { at: 'open' }> {
  const end = wire.wire.ends[index];
  const name = `${wire.wire.designator} ${index === 0 ? 'from' : 'to'}`;
  return {
    at: 'open',
    key: [wire.wire.id, String(index)],
    name,
    ends: [{ wire, index, end }],
    node: end.at === 'free' ? end.node : undefined,
  };
}
