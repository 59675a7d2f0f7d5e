import { pitchDiameterMm } from '../calc/twist-take-up';
import type { Conductor } from '../model/parts/wire';
import type { Group } from '../model/wire';

/** How the wires of a group are twisted. Both numbers are needed for the take-up; `needs` names what is missing. */
export interface Twist {
  readonly layMm: number | undefined;
  /** Circle on which the centres of the outermost wires run. */
  readonly pitchDiameterMm: number | undefined;
  readonly needs: readonly string[];
}

export const isTwisted = (group: Group | undefined): group is Group =>
  group?.form === 'twisted' || group?.form === 'twisted-shielded';

/** The twist of a group from its lay and the outside diameters of all its wires (nominal, else largest). */
export function twistOf(group: Group, conductors: readonly (Conductor | undefined)[]): Twist {
  const diameters = conductors.map((c) => c?.odMm ?? c?.odMaxMm);
  const known = diameters.flatMap((d) => (d === undefined ? [] : [d]));
  const complete = known.length === diameters.length;
  return {
    layMm: group.layMm,
    pitchDiameterMm: complete ? pitchDiameterMm(known) : undefined,
    needs: [
      ...(group.layMm === undefined ? [`lay of ${group.designator}`] : []),
      ...(complete ? [] : [`outside diameter of every wire of ${group.designator}`]),
    ],
  };
}
