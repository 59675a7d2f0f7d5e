import { netOfWire } from '../../derive/nets-of';
import type { Harness, ResolvedWire } from '../../derive/harness';
import type { Colour } from '../../model/colour';
import type { Signal } from '../../model/electrical';

/** The wire's own colour, else that of its core in the cable. */
export function colourOfWire({ wire, part }: ResolvedWire): Colour | undefined {
  const core = part?.kind === 'cable' ? part.cores.find((c) => c.name === wire.core?.name) : undefined;
  return wire.colour ?? core?.colour;
}

/** What a wire carries: the signal it is named after, else those of its net. */
export const signalsOfWire = (harness: Harness, wire: ResolvedWire): readonly Signal[] =>
  wire.signal ? [wire.signal] : (netOfWire(harness.nets, wire)?.signals ?? []);
