import type { Draft } from 'immer';
import { must } from '../../base/assert-never';
import { byId } from '../../base/by-id';
import type { Point } from '../../base/point';
import { segmentsByNode } from '../../derive/formboard/board-angle';
import { joinedLine } from '../../derive/formboard/joined-line';
import { segmentLengths } from '../../derive/formboard/segment-path';
import { nameOfEnd, nodeOfEnd } from '../../derive/formboard/wire-path';
import type { Project } from '../../model/project';
import type { Segment } from '../../model/topology';
import { draftObject, missing, objectIn, removeObjects } from './draft-object';
import { remapPaths, remapStations } from './remap-stations';

/** The two segments that meet at a node, as one from `from` to `to`; the first keeps its id and direction. */
interface Pair {
  readonly kept: Segment;
  readonly other: Segment;
  readonly from: string;
  readonly to: string;
  /** The kept segment comes first on the way from `from` to `to`. */
  readonly keptFirst: boolean;
  /** The other segment runs in the direction of the kept one. */
  readonly sameWay: boolean;
}

function pairAt(project: Project, node: string): Pair | undefined {
  const [kept, other, ...more] = segmentsByNode(project.segments).get(node) ?? [];
  if (!kept || !other || more.length > 0 || kept.from === kept.to || other.from === other.to)
    return undefined;
  const keptFirst = kept.to === node;
  const far = other.from === node ? other.to : other.from;
  return {
    kept,
    other,
    from: keptFirst ? kept.from : far,
    to: keptFirst ? far : kept.to,
    keptFirst,
    sameWay: keptFirst === (other.from === node),
  };
}

/** Why the segments at a node cannot become one, or null. */
export function noJoin(project: Project, node: string): string | null {
  const gone = missing(project, 'nodes', [node], 'node');
  if (gone) return gone;
  const name = objectIn(project, 'nodes', node)?.designator;
  const meeting = segmentsByNode(project.segments).get(node) ?? [];
  if (meeting.length !== 2)
    return `${meeting.length === 0 ? 'No' : meeting.length} segment${meeting.length === 1 ? '' : 's'} meet${meeting.length === 1 ? 's' : ''} at ${name}; two are joined where just they meet.`;
  const here = whatSitsOn(project, node);
  if (here.length > 0)
    return `${here.join(', ')} sit${here.length === 1 ? 's' : ''} on ${name}; move ${here.length === 1 ? 'it' : 'them'} first.`;
  const pair = pairAt(project, node);
  if (!pair || pair.from === pair.to)
    return `Joining at ${name} would make a segment that ends where it starts.`;
  const direct = project.segments.find((s) => (s.from === pair.from && s.to === pair.to) || (s.from === pair.to && s.to === pair.from)); // prettier-ignore
  if (direct) return `${direct.designator} joins these nodes already.`;
  if (stylesOf(pair)?.length === 0)
    return `${pair.kept.designator} and ${pair.other.designator} approve no wire style in common.`;
  const turning = project.wires.find((w) => w.path?.some((s, i) => i > 0 && s === w.path?.[i - 1]));
  return turning?.path?.some((s) => s === pair.kept.id || s === pair.other.id)
    ? `The pinned path of ${turning.designator} turns back there.`
    : null;
}

/** Names of what would lose its place with the node. */
function whatSitsOn(project: Project, node: string): readonly string[] {
  const free = project.wires.filter((w) =>
    w.ends.some((e) => e.at === 'free' && nodeOfEnd(project, e) === node),
  );
  return [
    ...project.connectors.filter((c) => c.node === node).map((c) => c.designator),
    ...project.splices.filter((s) => s.node === node).map((s) => s.designator),
    ...free.map(
      (w) => `${nameOfEnd(project, w.ends.find((e) => e.at === 'free') ?? w.ends[0])} of ${w.designator}`,
    ),
  ];
}

/** Styles approved on both; undefined where neither limits them. */
function stylesOf({ kept, other }: Pair): string[] | undefined {
  if (!kept.wireStyles || !other.wireStyles) return kept.wireStyles ?? other.wireStyles;
  return kept.wireStyles.filter((s) => other.wireStyles?.includes(s));
}

/**
 * Makes one segment of the two that meet at a node, and takes the node away. Everything on them stays where it is, and the
 * length is the sum: typed, where one was typed or the drawn line would not be as long.
 */
export function joinSegments(draft: Draft<Project>, project: Project, node: string): void {
  const pair = pairAt(project, node);
  if (!pair) return;
  const { kept, other, keptFirst, sameWay } = pair;
  const nodes = byId(project.nodes);
  const [keptMm, otherMm] = [segmentLengths(kept, nodes).usedMm, segmentLengths(other, nodes).usedMm];
  const sumMm = keptMm + otherMm;
  const wasTyped = kept.lengthMm !== undefined || other.lengthMm !== undefined;
  const place = (id: string): Point => must(nodes.get(id), 'node').position;
  const own = kept.via ?? [];
  const next = sameWay ? (other.via ?? []) : [...(other.via ?? [])].reverse();
  const line = joinedLine(
    [place(pair.from), ...(keptFirst ? own : next)],
    place(node),
    [...(keptFirst ? next : own), place(pair.to)],
    kept.shape === 'curve' || other.shape === 'curve' ? 'curve' : 'straight',
  );
  const sum = (a: number | undefined, b: number | undefined): number | undefined =>
    a === undefined && b === undefined ? undefined : (a ?? 0) + (b ?? 0);
  const both = kept.plusMm !== undefined && other.plusMm !== undefined;
  const least = (a: number | undefined, b: number | undefined): number | undefined =>
    a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);

  const target = draftObject(draft, project, 'segments', kept.id);
  const change: Partial<Segment> = {
    from: pair.from,
    to: pair.to,
    via: line.via.length > 0 ? [...line.via] : undefined,
    shape: kept.shape === 'curve' || other.shape === 'curve' ? 'curve' : kept.shape,
    lengthMm: wasTyped || Math.abs(line.lengthMm - sumMm) > 1e-6 ? sumMm : undefined,
    // A tolerance that only one half states says nothing about the whole.
    plusMm: both ? sum(kept.plusMm, other.plusMm) : undefined,
    minusMm: both ? sum(kept.minusMm, other.minusMm) : undefined,
    lengthLocked: kept.lengthLocked || other.lengthLocked ? true : kept.lengthLocked,
    bendRadiusMm: least(kept.bendRadiusMm, other.bendRadiusMm),
    holeMm: least(kept.holeMm, other.holeMm),
    wireStyles: stylesOf(pair),
  };
  Object.assign(target, change);
  for (const key of Object.keys(change) as (keyof typeof change)[])
    if (target[key] === undefined) delete target[key];

  remapStations(draft, project, new Set([kept.id, other.id]), (s) => {
    if (s.segment === kept.id)
      return { segment: kept.id, atMm: Math.min(s.atMm, keptMm) + (keptFirst ? 0 : otherMm) };
    const along = Math.min(s.atMm, otherMm);
    const forth = sameWay ? along : otherMm - along;
    return { segment: kept.id, atMm: forth + (keptFirst ? keptMm : 0) };
  });
  const whole = new Set([kept.id, other.id]);
  remapPaths(draft, project, whole, (path) =>
    path.flatMap((s, i) => (whole.has(s) ? (i > 0 && whole.has(path[i - 1] ?? '') ? [] : [kept.id]) : [s])),
  );
  for (const d of project.dimensions)
    if (d.datums.some((datum) => datum.at === 'node' && datum.node === node)) {
      const station = { segment: kept.id, atMm: keptFirst ? keptMm : otherMm };
      const target = draftObject(draft, project, 'dimensions', d.id);
      target.datums = target.datums.map((datum) =>
        datum.at === 'node' && datum.node === node ? { at: 'station', station } : datum,
      );
    }
  const gone = new Set([node, other.id]);
  const left = (list: Draft<{ id: string }[]>, at: number): void => void list.splice(at, 1);
  left(
    draft.segments,
    project.segments.findIndex((s) => gone.has(s.id) && s.id === other.id),
  );
  removeObjects(draft, project, 'nodes', gone);
}
