import { compareNatural } from '../../base/stable-order';
import { memoByIdentity } from '../../base/memo-by-identity';
import type { MachineEnd, SetUp } from '../../calc/set-ups/set-up';
import { crimpsOf } from '../../derive/crimps';
import { crimpToolFor } from '../../derive/crimp-tool';
import { labelTextAt } from '../../derive/end-labels';
import type { Harness, ResolvedEnd, ResolvedWire } from '../../derive/harness';
import { limitValue } from '../../derive/wire-ampacity';
import { colourText } from '../../model/colour';

/** One end of a lead as it is prepared. Null: not known, and named in `remarks`. */
export interface CutEnd {
  readonly place: string;
  readonly stripMm: number | null;
  readonly stripToleranceMm: number | null;
  /** Contact, or terminal of a free end. */
  readonly contact: string | null;
  readonly seal: string | null;
  readonly tool: string | null;
  readonly label: string | null;
  /** What the machine must hold for it. */
  readonly machine: MachineEnd;
  readonly remarks: readonly string[];
}

/** One wire or core as it is cut. */
export interface CutJob {
  readonly wire: ResolvedWire;
  /** From and to. */
  readonly ends: readonly [CutEnd, CutEnd];
  readonly setUp: SetUp;
}

/** Every wire of the model once, by designator: the order in which a list without thought is worked. */
export const cutJobs = memoByIdentity((harness: Harness): readonly CutJob[] => {
  const shared = sharedCrimps(harness);
  return [...harness.wires]
    .sort((a, b) => compareNatural(a.wire.designator, b.wire.designator))
    .map((wire): CutJob => {
      const ends = [0, 1].map((index) => endOf(harness, wire, index as 0 | 1, shared)) as [CutEnd, CutEnd];
      const colour = wire.wire.colour ? colourText(wire.wire.colour) : '';
      const spool = wire.wire.core
        ? `cable ${wire.wire.core.cable}`
        : `${wire.part?.partNumber ?? `not chosen ${wire.wire.id}`} ${colour}`;
      return { wire, ends, setUp: { spool, a: ends[0].machine, b: ends[1].machine } };
    });
});

function endOf(
  harness: Harness,
  wire: ResolvedWire,
  index: 0 | 1,
  shared: ReadonlyMap<string, readonly string[]>,
): CutEnd {
  const end: ResolvedEnd = index === 0 ? wire.from : wire.to;
  const stripMm = end.end.stripLengthMm ?? null;
  const remarks: string[] = stripMm === null ? ['strip length not stated'] : [];
  const base = {
    stripMm,
    stripToleranceMm:
      end.contactPart?.stripToleranceMm ??
      limitValue(harness.project.limitSet, 'strip-length-tolerance') ??
      null,
    label: labelTextAt(harness.project.labels, wire.wire.id, index) ?? null,
    remarks,
  };
  const strip = stripMm === null ? undefined : String(stripMm);
  switch (end.end.at) {
    case 'splice':
      return {
        ...base,
        place: end.splice?.designator ?? '?',
        contact: null,
        seal: null,
        tool: null,
        machine: { strip },
      };
    case 'free': {
      const terminal = harness.parts.get(end.end.terminal ?? '')?.partNumber;
      if (terminal !== undefined) remarks.push('tool of the terminal not stated');
      return {
        ...base,
        place: end.end.text ?? 'free end',
        contact: terminal ?? null,
        seal: null,
        tool: null,
        machine: { strip, applicator: terminal },
      };
    }
    case 'cavity': {
      const part = end.contactPart;
      const isHousing = end.connector?.part?.kind !== 'header';
      const tool = part && crimpToolFor(harness.project, part, wire.conductor, wire.part?.partNumber);
      const others = (shared.get(end.contact?.id ?? '') ?? []).filter((d) => d !== wire.wire.designator);
      const seal = end.seal?.partNumber;
      if (!part && isHousing) remarks.push('contact not chosen');
      if (part && !tool) remarks.push('tool not stated');
      if (tool && !tool.onList) remarks.push(`${tool.partNumber} is not on the tool list`);
      if (others.length > 0)
        remarks.push(`shares its contact with ${others.join(', ')}: crimped together after cutting`);
      return {
        ...base,
        place: `${end.connector?.connector.designator ?? '?'}:${end.end.cavity}`,
        contact: part?.partNumber ?? null,
        seal: seal ?? null,
        tool: tool?.partNumber ?? null,
        machine:
          others.length > 0
            ? { strip, seal }
            : { strip, seal, applicator: part && `${tool?.partNumber ?? ''} ${part.partNumber}` },
      };
    }
  }
}

/** Designators of the wires of each contact that holds more than one. */
function sharedCrimps(harness: Harness): ReadonlyMap<string, readonly string[]> {
  const out = new Map<string, readonly string[]>();
  for (const use of harness.connectors)
    for (const cavity of use.cavities)
      for (const crimp of crimpsOf(cavity))
        if (crimp.contact && crimp.ends.length > 1)
          out.set(crimp.contact.id, crimp.ends.map((e) => e.wire.wire.designator)); // prettier-ignore
  return out;
}
