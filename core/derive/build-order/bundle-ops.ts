import { byId } from '../../base/by-id';
import { compareNatural } from '../../base/stable-order';
import { partOfKind } from '../../model/parts/part';
import type { Covering, Segment } from '../../model/topology';
import type { Harness, ResolvedWire } from '../harness';
import type { BuildOp, OpNeed, OpObject } from './build-op';
import { sidesOf, stretchOf, type WireEndAt } from './covered-ends';
import { closingOf, endOf, opId } from './op-ids';
import { groupNeeds } from './prepare-ops';

/** Something that encloses a bundle and can only come on from an end. */
export interface SlidOn {
  readonly id: string;
  readonly what: string;
  readonly place: string;
  readonly part: string | null;
  readonly objects: readonly OpObject[];
  readonly wires: readonly ResolvedWire[];
  /** Operations after which it no longer goes on from the side that was chosen. */
  readonly closedBy: readonly string[];
  /** How far it lies from the chosen ends: segments to go, then millimetres; for things on the same wires. */
  readonly depth: number;
}

/** Tape is wrapped at the end; everything else is threaded. A conduit that is split may go on later all the same. */
export const isSlidOn = (form: string | undefined): boolean => form !== 'tape';

/** Coverings and grommets that are threaded, each with the side from which it comes. */
export function slidOnThings(harness: Harness): readonly SlidOn[] {
  const { project, parts } = harness;
  const segments = byId(project.segments);
  const coverings = project.coverings.flatMap((c): SlidOn[] => {
    const record = partOfKind(parts.get(c.part), 'covering');
    if (!isSlidOn(record?.form)) return [];
    const stretch = stretchOf(harness, c);
    const on = stretch.map((s) => s.designator).join(' ');
    const layer = c.layer > 1 ? `, layer ${c.layer}` : '';
    return [
      slid(harness, stretch, {
        id: c.id,
        what: `Slide on ${record?.form ?? 'covering'} ${record?.partNumber ?? 'that is not known'}`,
        place: `${c.designator === undefined ? on : `${c.designator} on ${on}`}${layer}`,
        part: record?.partNumber ?? null,
        objects: [{ type: 'covering', id: c.id }],
        atMm: c.from.atMm,
        layer: c.layer,
      }),
    ];
  });
  const grommets = project.fixings.flatMap((f): SlidOn[] => {
    const record = partOfKind(parts.get(f.part), 'grommet');
    const s = segments.get(f.station.segment);
    if (!record || !s) return [];
    return [
      slid(harness, [s], {
        id: f.id,
        what: `Slide on grommet ${record.partNumber}`,
        place: f.designator ?? s.designator,
        part: record.partNumber,
        objects: [{ type: 'segment', id: s.id }],
        atMm: f.station.atMm,
        layer: 0,
      }),
    ];
  });
  return [...coverings, ...grommets].sort((a, b) => compareNatural(a.id, b.id));
}

interface Thing extends Pick<SlidOn, 'id' | 'what' | 'place' | 'part' | 'objects'> {
  readonly atMm: number;
  readonly layer: number;
}

/** The side with fewer connectors and splices is the one from which it is threaded. */
function slid(harness: Harness, stretch: readonly Segment[], thing: Thing): SlidOn {
  const [near, far] = sidesOf(harness, stretch);
  const holders = (side: readonly WireEndAt[]): number =>
    new Set(
      side.map(({ wire, end }) => {
        const e = endOf(wire, end).end;
        return e.at === 'cavity' ? e.connector : e.at === 'splice' ? e.splice : wire.wire.id;
      }),
    ).size;
  const chosen = holders(far) < holders(near) ? far : near;
  const { atMm, layer, ...rest } = thing;
  return {
    ...rest,
    wires: chosen.map((c) => c.wire),
    closedBy: [...new Set(chosen.flatMap(({ wire, end }) => closingOf(wire, end) ?? []))],
    depth: depthOf(chosen[0], stretch, atMm, chosen === near) * 100 - layer,
  };
}

/** Larger the farther the thing lies from the chosen end: whole segments count most, then the place on the segment. */
function depthOf(
  at: WireEndAt | undefined,
  stretch: readonly Segment[],
  atMm: number,
  isNear: boolean,
): number {
  const [first] = stretch;
  if (!at || !first) return 0;
  const order = at.end === 0 ? at.wire.segments : [...at.wire.segments].reverse();
  const along = isNear ? atMm : -atMm;
  return order.findIndex((s) => stretch.includes(s)) * 1e6 + along;
}

/** One operation for each thing; what lies farther from the ends goes on first. */
export function slideOps(things: readonly SlidOn[]): BuildOp[] {
  const sets = things.map((t) => new Set(t.closedBy));
  return things.map((t, i): BuildOp => {
    const first = things.filter((o, j) => j !== i && mustPrecede(o, t, sets[j]!, sets[i]!));
    return {
      id: opId.slide(t.id),
      stage: 'slide-on-bundle',
      gather: t.what,
      what: t.what,
      place: t.place,
      objects: t.objects,
      parts: [{ part: t.part, quantity: 1 }],
      needs: [
        ...t.wires.map((w) => ({
          op: opId.cut(w.wire.id),
          because: 'every wire that runs through it must be there',
        })),
        ...t.wires.flatMap(groupNeedsOnce),
        ...first.map((o) => ({
          op: opId.slide(o.id),
          because: 'what lies farther from the ends goes on first',
        })),
      ],
    };
  });
}

const groupNeedsOnce = (w: ResolvedWire): OpNeed[] =>
  groupNeeds(w).map((n) => ({ ...n, because: 'it lies over the finished group' }));

function mustPrecede(o: SlidOn, t: SlidOn, outer: ReadonlySet<string>, inner: ReadonlySet<string>): boolean {
  if (outer.size === 0 || inner.size === 0 || ![...inner].every((c) => outer.has(c))) return false;
  if (outer.size > inner.size) return true;
  return o.depth > t.depth || (o.depth === t.depth && compareNatural(o.id, t.id) < 0);
}

/** Slides that must be done before an operation closes an end. */
export function slidesBefore(things: readonly SlidOn[]): ReadonlyMap<string, readonly OpNeed[]> {
  const out = new Map<string, OpNeed[]>();
  for (const t of things)
    for (const closing of t.closedBy) {
      const need = {
        op: opId.slide(t.id),
        because: 'nothing slides on over a housing, a splice or a terminal',
      };
      const list = out.get(closing);
      if (list) list.push(need);
      else out.set(closing, [need]);
    }
  return out;
}

/** Where each covering is: what is fixed after laying. */
export const coveringName = (c: Covering, stretch: readonly Segment[]): string =>
  c.designator ?? stretch.map((s) => s.designator).join(' ');
