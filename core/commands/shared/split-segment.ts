import type { Draft } from 'immer';
import { must } from '../../base/assert-never';
import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import { placeOfStation, segmentLengths, segmentPath } from '../../derive/formboard/segment-path';
import { viasAround } from '../../derive/formboard/vias-around';
import { nodeOfEnd, nodesOnPath } from '../../derive/formboard/wire-path';
import type { NewId } from '../../model/ids';
import type { Project } from '../../model/project';
import type { Segment, Station } from '../../model/topology';
import { LETTERS, nextDesignator } from './designators';
import { draftObject, missing, objectIn } from './draft-object';
import { remapPaths, remapStations } from './remap-stations';
import { noStation } from './stations';
import { withoutUndefined } from './without-undefined';

/** Nearer to an end than this there is nothing to cut. */
const SHORTEST_MM = 0.1;

export interface SplitNames {
  readonly node?: string | undefined;
  readonly segment?: string | undefined;
  readonly nodeDesignator?: string | undefined;
}

/** Why a segment cannot be cut there, or null. */
export function noSplit(project: Project, station: Station): string | null {
  const reason = noStation(project, station);
  if (reason) return reason;
  const segment = objectIn(project, 'segments', station.segment);
  return segment && endAt(project, station)
    ? `${segment.designator} ends there; there is nothing to split.`
    : null;
}

/** The node at which a station lies, where it lies at an end of its segment. */
export function endAt(project: Project, { segment, atMm }: Station): string | undefined {
  const found = objectIn(project, 'segments', segment);
  if (!found) return undefined;
  const { usedMm } = segmentLengths(found, byId(project.nodes));
  if (atMm < SHORTEST_MM) return found.from;
  return atMm > usedMm - SHORTEST_MM ? found.to : undefined;
}

/** Why an id cannot be given to a new object, or null. */
export const takenId = (
  project: Project,
  collection: 'nodes' | 'segments',
  id: string | undefined,
): string | null =>
  id !== undefined && missing(project, collection, [id], '') === null
    ? `There is an object with id ${id} already.`
    : null;

/**
 * Cuts a segment in two at a station: a new node, and a second segment from there to the end. The first half keeps the id.
 * Everything on the segment stays where it is; a typed length, and the tolerance, are divided in proportion. A drawn curve
 * gets its length typed, since its halves are other curves. Gives the id of the node.
 */
export function splitSegment(
  draft: Draft<Project>,
  project: Project,
  { segment: id, atMm }: Station,
  newId: NewId,
  names: SplitNames = {},
): string {
  const segment = must(objectIn(project, 'segments', id), 'segment');
  const nodes = byId(project.nodes);
  const path = must(segmentPath(segment, nodes), 'nodes of the segment');
  const { usedMm, drawnMm } = segmentLengths(segment, nodes);
  const part = atMm / usedMm;
  const node = names.node ?? newId();
  const rest = names.segment ?? newId();
  draft.nodes.push({
    id: node,
    designator: names.nodeDesignator ?? nextDesignator(LETTERS.nodes, project.nodes),
    position: placeOfStation(path, usedMm, atMm).at,
  });

  const bent = segment.shape === 'curve' && (segment.via?.length ?? 0) > 0;
  const typed = segment.lengthMm !== undefined || bent;
  const [before, behind] = viasAround(segment.via ?? [], path, part * drawnMm);
  const half = (fraction: number, lengthMm: number, via: readonly Point[]): Partial<Segment> => ({
    lengthMm: typed ? lengthMm : undefined,
    via: via.length > 0 ? [...via] : undefined,
    plusMm: segment.plusMm === undefined ? undefined : segment.plusMm * fraction,
    minusMm: segment.minusMm === undefined ? undefined : segment.minusMm * fraction,
  });
  draft.segments.push(
    withoutUndefined({
      ...segment,
      id: rest,
      designator: nextDesignator(LETTERS.segments, project.segments),
      from: node,
      to: segment.to,
      ...half(1 - part, usedMm - atMm, behind),
    }),
  );
  const first = draftObject(draft, project, 'segments', id);
  Object.assign(first, { to: node, ...half(part, atMm, before) });
  for (const key of ['lengthMm', 'via', 'plusMm', 'minusMm'] as const)
    if (first[key] === undefined) delete first[key];

  remapStations(draft, project, new Set([id]), (s, end) => {
    const at = Math.min(s.atMm, usedMm);
    return at > atMm || (at === atMm && end === 'low')
      ? { segment: rest, atMm: at - atMm }
      : { segment: id, atMm: at };
  });
  remapPaths(draft, project, new Set([id]), (old, wire) => {
    const start = nodeOfEnd(project, wire.ends[0]);
    const passed = start === undefined ? null : nodesOnPath(old, start, byId(project.segments));
    return old.flatMap((s, i) => {
      if (s !== id) return [s];
      return passed && passed[i] === segment.to ? [rest, id] : [id, rest];
    });
  });
  return node;
}
