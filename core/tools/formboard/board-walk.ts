import { memoByIdentity } from '../../base/memo-by-identity';
import { compareNatural } from '../../base/stable-order';
import { nameOfDatum } from '../../derive/formboard/dimension-values';
import type { Harness } from '../../derive/harness';
import { partIn } from '../../derive/harness';
import type { Project } from '../../model/project';
import type { Stop } from '../walk';

const byName = <T extends { readonly designator: string }>(list: readonly T[]): readonly T[] =>
  [...list].sort((a, b) => compareNatural(a.designator, b.designator));

/** What lies on a segment, along it: coverings, ties, clamps, grommets and labels. */
export function thingsOnSegment(
  project: Project,
  segment: string,
): readonly (Stop & { readonly atMm: number })[] {
  const numberOf = (id: string): string => partIn(project, id)?.partNumber ?? 'part not known';
  const out: (Stop & { readonly atMm: number })[] = [];
  for (const c of project.coverings)
    if (c.from.segment === segment || c.to.segment === segment)
      out.push({
        key: c.id,
        text: `covering ${c.designator ?? numberOf(c.part)}`,
        atMm: c.from.segment === segment ? c.from.atMm : c.to.atMm,
      });
  for (const t of project.ties)
    if (t.station.segment === segment)
      out.push({ key: t.id, text: `tie ${numberOf(t.part)}`, atMm: t.station.atMm });
  for (const f of project.fixings)
    if (f.station.segment === segment)
      out.push({
        key: f.id,
        text: `${partIn(project, f.part)?.kind ?? 'fixing'} ${f.designator ?? ''}`.trim(),
        atMm: f.station.atMm,
      });
  for (const l of project.labels)
    if (l.on.at === 'station' && l.on.station.segment === segment)
      out.push({ key: l.id, text: `label ${l.text}`, atMm: l.on.station.atMm });
  return out.sort((a, b) => a.atMm - b.atMm);
}

/** The walk over the formboard: each node with what stands there, each segment with what lies on it, then dimensions. */
export const boardStops = memoByIdentity((harness: Harness): readonly Stop[] => {
  const { project } = harness;
  const out: Stop[] = [];
  for (const n of byName(project.nodes)) {
    out.push({ key: n.id, text: n.designator });
    for (const c of byName(project.connectors.filter((c) => c.node === n.id)))
      out.push({ key: c.id, text: c.designator });
    for (const s of byName(project.splices.filter((s) => s.node === n.id)))
      out.push({ key: s.id, text: s.designator });
  }
  for (const s of byName(project.segments)) {
    out.push({ key: s.id, text: s.designator });
    out.push(...thingsOnSegment(project, s.id));
  }
  const seen = new Set<string>();
  for (const d of project.dimensions) {
    const [first, last] = [d.datums[0], d.datums.at(-1)];
    if (first && last)
      out.push({
        key: d.id,
        text: `dimension ${nameOfDatum(project, first)} to ${nameOfDatum(project, last)}`,
      });
  }
  // A covering over several segments is met once.
  return out.filter((s) => !seen.has(s.key) && seen.add(s.key));
});

/** The next stop after the selected one; null past the ends, so that the keyboard can leave the board. */
export function walkBoard(harness: Harness, selection: ReadonlySet<string>, step: 1 | -1): Stop | null {
  const stops = boardStops(harness);
  const current = [...selection].at(-1);
  const at = stops.findIndex((s) => s.key === current);
  return stops[at >= 0 ? at + step : step > 0 ? 0 : stops.length - 1] ?? null;
}
