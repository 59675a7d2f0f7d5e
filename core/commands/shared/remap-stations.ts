import type { Draft } from 'immer';
import type { Project } from '../../model/project';
import type { Datum, Station } from '../../model/topology';
import { draftObject } from './draft-object';

/** Where a station comes to lie. `end` tells of a covering which of its ends it is, seen along the segment. */
export type MoveStation = (station: Station, end?: 'low' | 'high') => Station;

/** Gives everything that stands on the named segments its new station. */
export function remapStations(
  draft: Draft<Project>,
  project: Project,
  segments: ReadonlySet<string>,
  move: MoveStation,
): void {
  const on = (s: Station): boolean => segments.has(s.segment);
  for (const c of project.coverings) {
    if (!on(c.from) && !on(c.to)) continue;
    const target = draftObject(draft, project, 'coverings', c.id);
    const within = c.from.segment === c.to.segment;
    const rising = c.from.atMm <= c.to.atMm;
    if (on(c.from)) target.from = move(c.from, within ? (rising ? 'low' : 'high') : undefined);
    if (on(c.to)) target.to = move(c.to, within ? (rising ? 'high' : 'low') : undefined);
  }
  for (const collection of ['ties', 'fixings'] as const)
    for (const o of project[collection])
      if (on(o.station)) draftObject(draft, project, collection, o.id).station = move(o.station);
  for (const l of project.labels)
    if (l.on.at === 'station' && on(l.on.station))
      draftObject(draft, project, 'labels', l.id).on = { at: 'station', station: move(l.on.station) };
  const stands = (d: Datum): boolean => d.at === 'station' && on(d.station);
  for (const d of project.dimensions)
    if (d.datums.some(stands))
      draftObject(draft, project, 'dimensions', d.id).datums = d.datums.map((datum) =>
        datum.at === 'station' && on(datum.station) ? { at: 'station', station: move(datum.station) } : datum,
      );
}

/** Gives the pinned paths that hold one of the segments another course. */
export function remapPaths(
  draft: Draft<Project>,
  project: Project,
  segments: ReadonlySet<string>,
  change: (path: readonly string[], wire: Project['wires'][number]) => readonly string[],
): void {
  for (const w of project.wires)
    if (w.path?.some((s) => segments.has(s)))
      draftObject(draft, project, 'wires', w.id).path = [...change(w.path, w)];
}
