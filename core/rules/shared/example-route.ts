import { must } from '../../base/assert-never';
import type { Part } from '../../model/parts/part';
import type { Point } from '../../base/point';
import type { Segment } from '../../model/topology';
import type { TinyDraft } from '../../model/tiny';

type PartOf<K extends Part['kind']> = Extract<Part, { kind: K }>;

const record = (t: TinyDraft, partNumber: string) => ({
  id: t.newId(),
  maker: 'Example Works (invented)',
  partNumber,
  description: partNumber,
});

const segment = (t: TinyDraft): string => must(t.project.segments[0], 'segment').id;

/** Lays a covering on the segment of the tiny project; on all of it unless stations are given. */
export function addCovering(
  t: TinyDraft,
  part: Partial<PartOf<'covering'>>,
  at: { readonly fromMm?: number; readonly toMm?: number; readonly layer?: number } = {},
): void {
  const number = `COVER-${t.project.coverings.length + 1}`;
  const covering = { kind: 'covering' as const, form: 'sleeve' as const, ...record(t, number), ...part };
  t.project.parts.push(covering);
  t.project.coverings.push({
    id: t.newId(),
    designator: `CV${t.project.coverings.length + 1}`,
    part: covering.id,
    from: { segment: segment(t), atMm: at.fromMm ?? 0 },
    to: { segment: segment(t), atMm: at.toMm ?? 300 },
    layer: at.layer ?? 1,
  });
}

/** Ties the segment of the tiny project at the given stations. */
export function addTies(t: TinyDraft, stations: readonly number[], part: Partial<PartOf<'tie'>> = {}): void {
  const tie = { kind: 'tie' as const, ...record(t, 'TIE'), bundleMinMm: 1, bundleMaxMm: 20, ...part };
  t.project.parts.push(tie);
  for (const atMm of stations)
    t.project.ties.push({ id: t.newId(), part: tie.id, station: { segment: segment(t), atMm } });
}

/** Changes the segment of the tiny project: 300 mm from N1 at 0/0 to N2 at 300/0. */
export function editSegment(t: TinyDraft, change: Partial<Segment> & { readonly via?: Point[] }): void {
  Object.assign(must(t.project.segments[0], 'segment'), change);
}

/** Sets a limit of the project. */
export function setLimit(t: TinyDraft, id: string, value: number): void {
  must(
    t.project.limitSet.limits.find((l) => l.id === id),
    `limit ${id}`,
  ).value = value;
}

/** Takes a limit out of the set of the project. */
export function dropLimit(t: TinyDraft, id: string): void {
  t.project.limitSet.limits = t.project.limitSet.limits.filter((l) => l.id !== id);
}
