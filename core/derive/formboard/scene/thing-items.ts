import { byId } from '../../../base/by-id';
import { thickestMm } from '../../bundle';
import { placeOfStation } from '../segment-path';
import { partIn, type Harness } from '../../harness';
import type { Part } from '../../../model/parts/part';
import type { Label, Station } from '../../../model/topology';
import type { Splice } from '../../../model/wire';
import type { BoardFreeEnd, BoardNode, BoardSegment, BoardSplice, BoardThing } from './board-items';
import { awayFrom } from './node-items';

/** Where a label is drawn whose distance from its connector is not stated, mm. */
const ASSUMED_LABEL_MM = 25;

/** What a thing on a segment is made from, apart from the segment. */
export interface ThingSource {
  readonly id: string;
  readonly kind: BoardThing['kind'];
  readonly name: string;
  readonly part: Part | undefined;
  readonly station: Station;
  readonly slides: boolean;
}

/** All ties, clamps, grommets and labels, each with its station. */
export function thingSources(
  harness: Harness,
  segmentsAt: ReadonlyMap<string, readonly BoardSegment[]>,
): readonly ThingSource[] {
  const { project } = harness;
  const out: ThingSource[] = project.ties.map((t) => ({
    id: t.id,
    kind: 'tie',
    name: '',
    part: partIn(project, t.part),
    station: t.station,
    slides: true,
  }));
  for (const f of project.fixings) {
    const part = partIn(project, f.part);
    const kind = part?.kind === 'grommet' ? 'grommet' : 'clamp';
    out.push({ id: f.id, kind, name: f.designator ?? '', part, station: f.station, slides: true });
  }
  for (const l of project.labels) {
    const station = labelStation(harness, l, segmentsAt);
    if (!station) continue;
    const slides = l.on.at === 'station';
    out.push({ id: l.id, kind: 'label', name: l.text, part: partIn(project, l.part), station, slides });
  }
  return out;
}

/** A label that hangs on a connector lies on the run that leaves its node. */
function labelStation(
  harness: Harness,
  { on, datumDistanceMm }: Label,
  segmentsAt: ReadonlyMap<string, readonly BoardSegment[]>,
): Station | null {
  if (on.at === 'station') return on.station;
  if (on.at !== 'connector') return null;
  const node = byId(harness.project.connectors).get(on.connector)?.node;
  const run = node === undefined ? undefined : segmentsAt.get(node)?.[0];
  if (!run) return null;
  const mm = Math.min(datumDistanceMm ?? ASSUMED_LABEL_MM, run.lengthMm);
  return { segment: run.id, atMm: run.segment.from === node ? mm : run.lengthMm - mm };
}

export function thingItem(t: ThingSource, s: BoardSegment): BoardThing {
  const atMm = Math.min(t.station.atMm, s.lengthMm);
  const around = s.use ? thickestMm(s.use, atMm, atMm) : undefined;
  const { station: _station, ...rest } = t;
  return {
    ...rest,
    segment: s.id,
    atMm,
    ...placeOfStation(s.path, s.lengthMm, atMm),
    aroundMm: around ?? s.outsideMm,
  };
}

export function spliceItem(splice: Splice, node: BoardNode, runs: readonly BoardSegment[]): BoardSplice {
  const [run] = runs;
  const angle = run
    ? placeOfStation(run.path, run.lengthMm, run.segment.from === node.id ? 0 : run.lengthMm).angle
    : 0;
  const clearMm = Math.max(0, ...runs.map((r) => r.outsideMm));
  return { id: splice.id, splice, at: node.at, angle, nameAngle: node.spareAngle, clearMm };
}

/** The open wire ends of the harness by the node that they are at. */
export function openEndsByNode(harness: Harness): ReadonlyMap<string, readonly OpenEnd[]> {
  const out = new Map<string, OpenEnd[]>();
  for (const wire of harness.wires)
    wire.wire.ends.forEach((e, i) => {
      if (e.at !== 'free' || !e.node) return;
      const text = [wire.wire.designator, e.text].filter(Boolean).join(' ');
      const end = { wire, end: i as 0 | 1, text };
      const list = out.get(e.node);
      if (list) list.push(end);
      else out.set(e.node, [end]);
    });
  return out;
}

type OpenEnd = Pick<BoardFreeEnd, 'wire' | 'end' | 'text'>;

const FAN = Math.PI / 8;

/** Open wire ends at their node, fanned out to the side that is free. */
export function freeEndsAt(
  node: BoardNode,
  runs: readonly BoardSegment[],
  ends: readonly OpenEnd[],
): readonly BoardFreeEnd[] {
  const away = awayFrom(node.id, runs);
  const step = Math.min(FAN, Math.PI / Math.max(1, ends.length));
  return ends.map(({ wire, end, text }, i) => ({
    wire,
    end,
    text,
    node: node.id,
    at: node.at,
    angle: away + (i - (ends.length - 1) / 2) * step,
  }));
}
