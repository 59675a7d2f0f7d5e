import { memoByIdentity } from '../../base/memo-by-identity';
import { conductorArea } from '../../calc/conductor-area';
import type { ResolvedWire } from '../../derive/harness';
import type { Conductor } from '../../model/parts/wire';
import type { Need } from '../finding';
import { partRef, wireRef } from '../refs';

/** Metal area of a wire, mm2: stated, else by its strands, else by its gauge; undefined without a record. */
export const metalAreaMm2 = ({ conductor }: ResolvedWire): number | undefined =>
  conductor && areaOf(conductor);

const areaOf = memoByIdentity((conductor: Conductor): number | undefined => {
  const area = conductorArea.run({
    size: conductor.size,
    areaMm2: conductor.areaMm2,
    strands: conductor.stranding?.strands,
    strandDiameterMm: conductor.stranding?.strandDiameterMm,
  });
  return area.ok ? area.value.areaMm2 : undefined;
});

export const metalAreaNeed = (w: ResolvedWire): Need => ({
  what: `metal area of ${w.wire.designator}`,
  at: w.part ? partRef(w.part) : wireRef(w),
  field: w.part ? 'areaMm2' : 'part',
});
