import { bundleMembers, bundleOf } from '../../derive/bundle';
import type { SegmentUse } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import type { Evidence, Need } from '../finding';
import { wireRef } from '../refs';
import { fact, partNeed } from './evidence';

/** Diameters are shown to a hundredth of a millimetre; no wire is known better. */
export const shownMm = (mm: number): number => roundTo(mm, 2);

/** How thick the wires of a segment are, and where the number comes from. */
export function bundleFact(use: SegmentUse): Evidence[] {
  const label = `bundle of ${use.diametersMm.length} in ${use.segment.designator}`;
  const laidMm = bundleOf(use)?.laidMm;
  const shown = laidMm === undefined ? undefined : shownMm(laidMm);
  return fact(label, shown, 'packed circles of the wires, as laid by hand', 'mm');
}

/** What keeps the outside diameter from being known: records without a diameter, coverings without a wall. */
export function diameterNeeds(use: SegmentUse, layer = Infinity): Need[] {
  const needs = bundleMembers(use.wires).flatMap((m): Need[] => {
    if (m.diameterMm !== undefined) return [];
    if (m.without.length > 0) return m.without.map((p) => partNeed(p, 'odMm', 'outside diameter'));
    return m.wires
      .filter((w) => !w.conductor)
      .map((w) => ({ what: `record of ${w.wire.designator}`, at: wireRef(w), field: 'part' }));
  });
  const walls = use.coverings.flatMap(({ covering, part }): Need[] =>
    part && part.wallMm === undefined && covering.layer < layer ? [partNeed(part, 'wallMm', 'wall')] : [],
  );
  const seen = new Set<string>();
  return [...needs, ...walls].filter((n) => !seen.has(n.what) && seen.add(n.what));
}
