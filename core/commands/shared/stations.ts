import { byId } from '../../base/by-id';
import { segmentLengthMm } from '../../derive/route';
import type { Project } from '../../model/project';
import type { Station } from '../../model/topology';
import { missing, objectIn } from './draft-object';

/** Rounding of a length that was shown is no place beyond the end. */
const HAIR_MM = 0.01;

/** Length of a segment as routes count it, mm; 0 where there is none of that id. */
export function usedLengthMm(project: Project, segment: string): number {
  const found = objectIn(project, 'segments', segment);
  return found ? segmentLengthMm(found, byId(project.nodes)) : 0;
}

/** Why nothing can be at one of the stations, or null. */
export function noStation(project: Project, ...stations: readonly (Station | undefined)[]): string | null {
  const asked = stations.filter((s) => s !== undefined);
  const gone = missing(project, 'segments', asked.map((s) => s.segment), 'segment'); // prettier-ignore
  if (gone) return gone;
  for (const { segment, atMm } of asked) {
    const lengthMm = usedLengthMm(project, segment);
    if (atMm <= lengthMm + HAIR_MM) continue;
    const name = objectIn(project, 'segments', segment)?.designator;
    return `${name} is ${shown(lengthMm)} mm long; ${shown(atMm)} mm lies beyond its end.`;
  }
  return null;
}

const shown = (mm: number): string => String(Math.round(mm * 10) / 10);
