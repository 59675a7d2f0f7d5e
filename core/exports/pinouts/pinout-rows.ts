import { byId } from '../../base/by-id';
import type { CavityState, CavityUse, ConnectorUse, Harness, ResolvedMate } from '../../derive/harness';
import { facePlaces } from '../../derive/face-places';
import { colourText } from '../../model/colour';
import { wireSizeText } from '../../model/wire-size';
import { cavityRef, wireRef } from '../../rules/refs';
import type { Cell, Column, RowOf } from '../table';

export const PINOUT_COLUMNS = [
  { key: 'connector', title: 'Connector' },
  { key: 'part', title: 'Part number' },
  { key: 'keying', title: 'Keying' },
  { key: 'cavity', title: 'Cavity' },
  { key: 'state', title: 'State' },
  { key: 'signal', title: 'Signal' },
  { key: 'wire', title: 'Wire' },
  { key: 'colour', title: 'Colour' },
  { key: 'size', title: 'Size' },
  { key: 'contact', title: 'Contact' },
  { key: 'contactKind', title: 'Contact kind' },
  { key: 'sealOrPlug', title: 'Seal or plug' },
  { key: 'to', title: 'Other end' },
  { key: 'mate', title: 'Mates with' },
  { key: 'mateCavity', title: 'Cavity of the mate' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type PinoutKey = (typeof PINOUT_COLUMNS)[number]['key'];

/** States in the words of the sheet. "Undeclared" is an open point, not a state to build to. */
export const STATE_WORDS: Readonly<Record<CavityState, string>> = {
  wired: 'wired',
  plugged: 'plugged',
  'spare-contact': 'spare contact',
  empty: 'empty by intent',
  blocked: 'blocked',
  undeclared: 'undeclared',
};

/** One row per cavity, in the order of the numbers. */
export function pinoutRows(harness: Harness, use: ConnectorUse): readonly RowOf<PinoutKey>[] {
  const assumed = use.resolved.part ? facePlaces(use.resolved.part, 'mating-face').assumed : [];
  return use.cavities.map((c) => ({
    cells: cellsOf(harness, use, c, assumed),
    objects: [cavityRef(c), ...c.ends.map((e) => wireRef(e.wire))],
  }));
}

function cellsOf(
  harness: Harness,
  use: ConnectorUse,
  c: CavityUse,
  assumed: readonly string[],
): Record<PinoutKey, Cell> {
  const { connector, part } = use.resolved;
  const contacts = contactsIn(c);
  const mate = mateOf(harness, use, c.cavity);
  const several = <T>(of: (end: CavityUse['ends'][number]) => T | undefined): string | null => {
    const texts = c.ends.map((e) => of(e) ?? '?');
    return texts.length > 0 && texts.some((t) => t !== '?') ? [...new Set(texts)].join(' + ') : null;
  };
  return {
    connector: connector.designator,
    part: part?.partNumber ?? null,
    keying: part?.keying ?? null,
    cavity: c.cavity,
    state: STATE_WORDS[c.state],
    signal: several((e) => e.wire.signal?.name) ?? c.signal?.name ?? null,
    wire: c.ends.map((e) => e.wire.wire.designator).join(' + ') || null,
    colour: several((e) => e.wire.wire.colour && colourText(e.wire.wire.colour)),
    size: several((e) => e.wire.conductor && wireSizeText(e.wire.conductor.size)),
    contact: contacts.map((p) => p.partNumber).join(' + ') || null,
    contactKind: contacts[0]?.contactKind ?? (c.ends.length > 0 ? (part?.contactKind ?? null) : null),
    sealOrPlug: several((e) => e.end.seal?.partNumber) ?? c.plug?.partNumber ?? null,
    to: c.ends.map(otherEnd).join(' + ') || null,
    mate: mate?.designator ?? null,
    mateCavity: mate?.cavity ?? null,
    remarks: remarksOf(use, c, mate, assumed).join('; ') || null,
  };
}

/** Contact records in the cavity, each once: those of the wires, else that of a spare contact. */
function contactsIn(c: CavityUse) {
  const wired = c.ends.flatMap((e) => (e.end.contactPart ? [e.end.contactPart] : []));
  return [...new Set(wired.length > 0 ? wired : c.spare ? [c.spare] : [])];
}

function otherEnd({ wire, index }: CavityUse['ends'][number]): string {
  const other = index === 0 ? wire.to : wire.from;
  switch (other.end.at) {
    case 'cavity':
      return `${other.connector?.connector.designator ?? '?'}:${other.end.cavity}`;
    case 'splice':
      return other.splice?.designator ?? '?';
    case 'free':
      return other.end.text ?? 'free end';
  }
}

interface MateCell {
  readonly designator: string;
  readonly cavity: string | null;
  readonly sure: boolean;
}

function mateOf(harness: Harness, use: ConnectorUse, cavity: string): MateCell | undefined {
  const mates = use.mates.flatMap((m) => byMateId(harness).get(m.id) ?? []);
  const [mate] = mates;
  if (!mate) return undefined;
  const isA = mate.a.resolved.connector.id === use.resolved.connector.id;
  const map = isA ? mate.map.fromA : mate.map.fromB;
  return {
    designator: (isA ? mate.b : mate.a).resolved.connector.designator,
    cavity: map.get(cavity) ?? null,
    sure: mate.map.source !== 'unknown',
  };
}

const index = new WeakMap<readonly ResolvedMate[], ReadonlyMap<string, ResolvedMate>>();
function byMateId({ mates }: Harness): ReadonlyMap<string, ResolvedMate> {
  let map = index.get(mates);
  if (!map) index.set(mates, (map = new Map(mates.map((m) => [m.mate.id, m]))));
  return map;
}

function remarksOf(
  use: ConnectorUse,
  c: CavityUse,
  mate: MateCell | undefined,
  assumed: readonly string[],
): string[] {
  const { connector, part } = use.resolved;
  const remarks: string[] = [];
  if (c.state === 'undeclared') remarks.push('state not declared');
  if (!part) remarks.push('part of the connector not known');
  if (!c.exists) remarks.push(`${part?.partNumber ?? 'the part'} has no such cavity`);
  const takesContacts = part?.kind === 'housing';
  if (takesContacts && c.ends.some((e) => !e.end.contactPart)) remarks.push('contact not chosen');
  if (c.state === 'spare-contact' && !c.spare) remarks.push('spare contact not chosen');
  if (c.state === 'plugged' && !c.plug) remarks.push('plug not chosen');
  if (part?.kind === 'housing' && part.sealed && c.ends.some((e) => !e.end.seal))
    remarks.push('wire seal not chosen');
  for (const e of c.ends) {
    const name = e.wire.wire.designator;
    if (!e.wire.part) remarks.push(`wire part of ${name} not chosen`);
    else if (!e.wire.wire.colour) remarks.push(`colour of ${name} not chosen`);
    if (!e.wire.signal) remarks.push(`signal of ${name} not named`);
  }
  if (!mate && !connector.unmated) remarks.push('mate not known');
  if (mate && mate.cavity === null) remarks.push('cavity of the mate not known');
  else if (mate && !mate.sure) remarks.push('cavity of the mate assumed');
  if (assumed.length > 0) remarks.push(`assumed: ${assumed.join(', ')}`);
  return remarks;
}

/** Part numbers of what is fitted to a connector. */
export function fittedParts(harness: Harness, use: ConnectorUse): readonly string[] {
  const parts = byId(harness.project.parts);
  return use.resolved.connector.accessories.map((a) => {
    const name = parts.get(a.part)?.partNumber ?? 'part not known';
    return a.quantity === 1 ? name : `${a.quantity} x ${name}`;
  });
}
