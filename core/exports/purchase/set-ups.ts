import { compareNatural } from '../../base/stable-order';
import { memoByIdentity } from '../../base/memo-by-identity';
import { crimpsOf } from '../../derive/crimps';
import type { Harness, ResolvedWire } from '../../derive/harness';
import { wireSizeText } from '../../model/wire-size';

/** Wires that are crimped together into a part, as text: for each the tool is set anew. */
export type SetUp = string;

/**
 * By part record of contacts, splices and terminals: the different wires that are crimped into them. Contacts without a wire
 * need no set-up.
 */
export const setUpsOf = memoByIdentity((harness: Harness): ReadonlyMap<string, readonly SetUp[]> => {
  const found = new Map<string, Set<SetUp>>();
  const note = (part: string | undefined, wires: readonly ResolvedWire[]): void => {
    if (part === undefined || wires.length === 0) return;
    const set = found.get(part) ?? new Set<SetUp>();
    set.add(wires.map(wireName).sort(compareNatural).join(' + '));
    found.set(part, set);
  };
  for (const use of harness.connectors)
    for (const cavity of use.cavities)
      for (const crimp of crimpsOf(cavity))
        note(
          crimp.part.id,
          crimp.ends.map((e) => e.wire),
        );
  const atSplice = new Map<string, ResolvedWire[]>();
  for (const w of harness.wires)
    for (const { end, splice } of [w.from, w.to]) {
      if (splice) atSplice.set(splice.id, [...(atSplice.get(splice.id) ?? []), w]);
      if (end.at === 'free') note(end.terminal, [w]);
    }
  for (const splice of harness.project.splices) note(splice.part, atSplice.get(splice.id) ?? []);
  return new Map([...found].map(([part, set]) => [part, [...set].sort(compareNatural)]));
});

function wireName({ part, conductor, wire }: ResolvedWire): string {
  if (part) return wire.core ? `core of ${part.partNumber}` : part.partNumber;
  return conductor?.size ? wireSizeText(conductor.size) : 'a wire without a record';
}
