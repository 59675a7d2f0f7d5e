import { byId } from '../base/by-id';
import { compareNatural } from '../base/stable-order';
import type { Part } from '../model/parts/part';
import type { Label } from '../model/topology';
import { bundleMembers, bundleOf, thickestMm, wireDiameterMm } from './bundle';
import type { ConnectorUse, Harness, ResolvedWire } from './harness';

export type LabelPart = Extract<Part, { kind: 'label' }>;

/**
 * Diameter of what a label goes round, mm: the wire, the cable, all wires of a connector laid as a bundle without covering,
 * or the run at its station. Undefined where it is not known.
 */
export function labelAroundMm(harness: Harness, on: Label['on']): number | undefined {
  switch (on.at) {
    case 'wire-end': {
      const wire = harness.wireById.get(on.wire);
      return wire && wireDiameterMm(wire);
    }
    case 'cable-end': {
      const part = harness.parts.get(byId(harness.project.cables).get(on.cable)?.part ?? '');
      return part?.kind === 'cable' ? part.odMm : undefined;
    }
    case 'connector': {
      const use = harness.connectorById.get(on.connector);
      return use && bundleOf({ diametersMm: bundleMembers(wiresOf(use)).map((m) => m.diameterMm) })?.laidMm;
    }
    case 'station': {
      const use = harness.segments.find((s) => s.segment.id === on.station.segment);
      return use && thickestMm(use, on.station.atMm, on.station.atMm);
    }
  }
}

const wiresOf = (use: ConnectorUse): ResolvedWire[] => [
  ...new Set(use.cavities.flatMap((c) => c.ends.map((e) => e.wire))),
];

/** The label for the thinnest bundles that still goes round this one; none where nothing is stated or fits. */
export function labelPartFor(parts: readonly Part[], aroundMm: number | undefined): LabelPart | undefined {
  if (aroundMm === undefined) return undefined;
  return parts
    .flatMap((p) => (p.kind === 'label' && (p.bundleMaxMm ?? 0) >= aroundMm ? [p] : []))
    .sort(
      (a, b) => (a.bundleMaxMm ?? 0) - (b.bundleMaxMm ?? 0) || compareNatural(a.partNumber, b.partNumber),
    )[0];
}
