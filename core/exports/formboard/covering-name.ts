import { roundTo } from '../../model/length-text';
import type { CoveringUse } from '../../derive/harness';

/** What a covering is and how much of it lies here: "heat-shrink TUBE-6, layer 1". */
export function coveringName({ covering, part, fromMm, toMm }: CoveringUse): string {
  return [
    covering.designator,
    part ? `${part.form} ${part.partNumber},` : 'covering without a record,',
    `${roundTo(toMm - fromMm, 1)} mm,`,
    `layer ${covering.layer}`,
  ]
    .filter(Boolean)
    .join(' ');
}
