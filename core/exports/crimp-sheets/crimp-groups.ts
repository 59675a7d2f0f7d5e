import { memoByIdentity } from '../../base/memo-by-identity';
import { compareNatural } from '../../base/stable-order';
import { crimpsOf } from '../../derive/crimps';
import { crimpToolFor, type CrimpTool } from '../../derive/crimp-tool';
import type { Harness, ResolvedWire } from '../../derive/harness';

import type { ContactPart } from '../../model/parts/contact';
import { partOfKind, type Part } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';

export type CrimpedPart = ContactPart | Extract<Part, { kind: 'terminal' | 'splice' }>;

/** One crimp of the harness: where it is, and the wires in it. */
export interface CrimpPlace {
  readonly text: string;
  readonly object: ObjectRef;
  readonly wires: readonly ResolvedWire[];
}

/** Crimps that are made alike: same contact, same wires, same tool. */
export interface CrimpGroup {
  readonly part: CrimpedPart;
  /** One wire of each part that goes into the crimp, in the order of the part numbers. */
  readonly wires: readonly ResolvedWire[];
  readonly tool: CrimpTool | undefined;
  readonly places: readonly CrimpPlace[];
}

/** Every crimp in the harness once, gathered by what is needed to make it; by part number, then wire. */
export const crimpGroups = memoByIdentity((harness: Harness): readonly CrimpGroup[] => {
  const groups = new Map<string, { part: CrimpedPart; wires: readonly ResolvedWire[]; tool: CrimpTool | undefined; places: CrimpPlace[] }>(); // prettier-ignore
  const put = (part: CrimpedPart, place: CrimpPlace): void => {
    const wires = [...place.wires].sort((a, b) => compareNatural(wireName(a), wireName(b)));
    const [first] = wires;
    const tool =
      part.kind === 'contact' && first && wires.length === 1
        ? crimpToolFor(harness.project, part, first.conductor, first.part?.partNumber)
        : part.kind === 'contact'
          ? crimpToolFor(harness.project, part, undefined, undefined)
          : undefined;
    const key = [part.id, tool?.partNumber ?? '', tool?.die ?? '', ...wires.map(wireName)].join('|');
    const group = groups.get(key);
    if (group) group.places.push(place);
    else groups.set(key, { part, wires, tool, places: [place] });
  };
  for (const use of harness.connectors)
    for (const cavity of use.cavities)
      for (const crimp of crimpsOf(cavity))
        if (crimp.ends.length > 0)
          put(crimp.part, {
            text: `${use.resolved.connector.designator}:${cavity.cavity}`,
            object: { type: 'cavity', id: use.resolved.connector.id, cavity: cavity.cavity },
            wires: crimp.ends.map((e) => e.wire),
          });
  for (const splice of harness.project.splices) {
    const part = partOfKind(harness.parts.get(splice.part ?? ''), 'splice');
    const wires = harness.wires.filter((w) => w.from.splice === splice || w.to.splice === splice);
    if (part && wires.length > 0)
      put(part, { text: splice.designator, object: { type: 'splice', id: splice.id }, wires });
  }
  for (const wire of harness.wires)
    for (const { end } of [wire.from, wire.to]) {
      const part =
        end.at === 'free' ? partOfKind(harness.parts.get(end.terminal ?? ''), 'terminal') : undefined;
      if (part && end.at === 'free')
        put(part, {
          text: `${wire.wire.designator} at ${end.text ?? 'its free end'}`,
          object: { type: 'wire', id: wire.wire.id },
          wires: [wire],
        });
    }
  return [...groups.values()]
    .map((g) => ({ ...g, places: g.places.sort((a, b) => compareNatural(a.text, b.text)) }))
    .sort(
      (a, b) =>
        KINDS.indexOf(a.part.kind) - KINDS.indexOf(b.part.kind) ||
        compareNatural(a.part.partNumber, b.part.partNumber) ||
        compareNatural(a.wires.map(wireName).join(' '), b.wires.map(wireName).join(' ')),
    );
});

const KINDS: readonly CrimpedPart['kind'][] = ['contact', 'terminal', 'splice'];

/** Part number of a wire; a core by its cable and name, since each may be another conductor. */
export const wireName = ({ part, wire }: ResolvedWire): string =>
  part ? (wire.core ? `${part.partNumber} core ${wire.core.name}` : part.partNumber) : 'not chosen';
