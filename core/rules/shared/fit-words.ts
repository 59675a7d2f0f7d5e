import type { Fit } from '../../derive/contact-fit';
import type { EndInCavity } from '../../derive/harness';
import type { Part } from '../../model/parts/part';
import type { Evidence, Need } from '../finding';
import { partRef, partSource, wireRef } from '../refs';

/** The records that a fit was decided between. Wires in the order in which the fit was asked about them. */
export interface FitBetween {
  readonly housing?: Part;
  readonly contact?: Part;
  readonly ends?: readonly EndInCavity[];
}

/** The values that a fit was decided on, with the record that each was taken from. */
export function fitEvidence(fit: Fit, between: FitBetween): Evidence[] {
  return fit.facts.map((f) => {
    const end = between.ends?.[f.wire ?? 0];
    const part = f.of === 'wire' ? end?.wire.part : between[f.of];
    return {
      label: f.of === 'wire' && end ? `${f.label} of ${end.wire.wire.designator}` : f.label,
      value: f.value,
      ...(f.unit ? { unit: f.unit } : {}),
      source: part ? partSource(part) : 'project',
    };
  });
}

/** The fields that a fit lacks, each with the record to fill in. */
export function fitNeeds(fit: Fit, between: FitBetween): Need[] {
  if (fit.verdict !== 'unknown') return [];
  return fit.needs.map((n) => {
    const part = n.of === 'wire' ? between.ends?.[n.wire ?? 0]?.wire.part : between[n.of];
    if (!part) return { what: n.what, field: n.field };
    return { what: `${n.what} of ${part.partNumber}`, at: partRef(part), field: n.field };
  });
}

/** For wires of which nothing is known: a part has to be chosen first, or a core that the cable has. */
export function wirePartNeeds(ends: readonly EndInCavity[]): Need[] {
  return ends
    .filter((e) => !e.wire.conductor)
    .map(({ wire }) => ({
      what: `${wire.wire.core ? 'core' : 'part'} of wire ${wire.wire.designator}`,
      at: wireRef(wire),
      field: wire.wire.core ? 'core' : 'part',
    }));
}
