import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import { distance } from '../base/point';
import type { Connector } from '../model/connector';
import { isMatingHalf, type MatingHalf, type Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { branchOf, formboardPieces, type Branch } from './branch-reach';
import type { Harness } from './harness';
import { lineageOf } from './lineage';
import { matingObstacles, type UnknownField } from './mating';

/** How far a free end comes, and how far it would have to. Undefined where the formboard does not tell. */
export interface Reach {
  readonly reachMm: number;
  readonly gapMm: number;
  /** Where the distance is taken from and to, by the names of the nodes. */
  readonly from: string;
  readonly to: string;
}

/** A half that enters another than its own. At least one of the two hangs free, and at least one is of the harness. */
export interface WrongJoin {
  readonly free: string;
  readonly into: string;
  readonly reach: Reach | undefined;
  /** Fields of the records without which it is not known whether they mate; nothing known keeps them apart. */
  readonly unknown: readonly UnknownField[];
}

/** Two places where something is plugged, which can be confused. Ids of connectors. */
export interface LookAlikes {
  /** What belongs together; a place to which nothing is plugged has one half. */
  readonly right: readonly [readonly string[], readonly string[]];
  /** Free ends of the second place come first. */
  readonly wrong: readonly WrongJoin[];
}

/** What belongs together: the halves of a mate, or one half that stays without. */
interface Place {
  readonly at: number;
  readonly halves: readonly Half[];
}

interface Half {
  readonly connector: Connector;
  readonly part: MatingHalf;
  readonly isFree: boolean;
  readonly isHarness: boolean;
}

interface Carried extends Pick<Project, 'mates' | 'connectors' | 'parts' | 'nodes' | 'segments'> {
  readonly marginMm: number;
  readonly found: readonly LookAlikes[];
}

/** The last found of each lineage. */
const known = new WeakMap<object, Carried>();

/**
 * Every two places whose halves can be exchanged by mistake, as far as records and formboard tell; in the order of the project.
 * `marginMm` is how far beyond its branch a free end is pulled. Only halves of one arrangement are ever compared. Remembered
 * while connectors, mates, parts and formboard stay as they are; two places of which nothing changed stay the same object.
 */
export function lookAlikesOf({ project }: Pick<Harness, 'project'>, marginMm: number): readonly LookAlikes[] {
  const { mates, connectors, parts, nodes, segments } = project;
  const lineage = lineageOf(project);
  const before = known.get(lineage);
  if (
    before?.marginMm === marginMm &&
    before.mates === mates &&
    sameForMating(before.connectors, connectors) &&
    before.parts === parts &&
    before.nodes === nodes &&
    before.segments === segments
  )
    return before.found;
  const was = new Map(before?.found.map((l) => [keyOf(l), l]));
  const found = findAll(project, marginMm).map((l) => {
    const old = was.get(keyOf(l));
    return old && sameJoins(old.wrong, l.wrong) ? old : l;
  });
  known.set(lineage, { mates, connectors, parts, nodes, segments, marginMm, found });
  return found;
}

/** Two places are confused in one way or, crosswise, in two. */
const keyOf = ({ right, wrong }: LookAlikes): string =>
  [...right.map((ids) => ids.join(' ')), wrong[0]?.free, wrong[0]?.into].join('|');

const sameJoins = (a: readonly WrongJoin[], b: readonly WrongJoin[]): boolean =>
  a.length === b.length &&
  a.every((x, i) => {
    const y = b[i];
    return x.free === y?.free && x.into === y.into && sameReach(x, y) && sameUnknown(x, y);
  });

const sameReach = ({ reach: a }: WrongJoin, { reach: b }: WrongJoin): boolean =>
  a === b || (a?.reachMm === b?.reachMm && a?.gapMm === b?.gapMm && a?.from === b?.from && a?.to === b?.to);

const sameUnknown = ({ unknown: a }: WrongJoin, { unknown: b }: WrongJoin): boolean =>
  a.length === b.length && a.every((u, i) => u.part === b[i]?.part && u.field === b[i]?.field);

/** Where a symbol stands on the diagram, and what is in its cavities, changes nothing here. */
function sameForMating(before: readonly Connector[], after: readonly Connector[]): boolean {
  if (before === after) return true;
  return (
    before.length === after.length &&
    after.every((c, i) => {
      const was = before[i];
      return (
        c === was ||
        (c.id === was?.id &&
          c.part === was.part &&
          c.node === was.node &&
          c.supply === was.supply &&
          c.unmated === was.unmated &&
          c.serviceLoopMm === was.serviceLoopMm)
      );
    })
  );
}

function findAll(project: Project, marginMm: number): readonly LookAlikes[] {
  const places = placesOf(project);
  const reachOf = createReach(project, marginMm);
  const found = new Map<string, { first: Place; second: Place; joins: WrongJoin[] }>();
  for (const [a, b] of pairsOf(places)) {
    const [second, first] = a.place.at > b.place.at ? [a, b] : [b, a];
    const join = joinOf(second, first, reachOf);
    if (!join) continue;
    const i = second.place.halves.indexOf(second.half);
    const k = first.place.halves.indexOf(first.half);
    const key = `${first.place.at} ${second.place.at} ${(i + k) % 2}`;
    const entry = found.get(key);
    if (entry) entry.joins.push(join);
    else found.set(key, { first: first.place, second: second.place, joins: [join] });
  }
  const idsOf = (p: Place): readonly string[] => p.halves.map((h) => h.connector.id);
  return [...found.values()]
    .sort((a, b) => a.second.at - b.second.at || a.first.at - b.first.at)
    .map(({ first, second, joins }) => {
      const late = (j: WrongJoin): number => (idsOf(second).includes(j.free) ? 0 : 1);
      return { right: [idsOf(first), idsOf(second)], wrong: joins.sort((a, b) => late(a) - late(b)) };
    });
}

/** Mates first, then halves that are stated to stay unmated or wait on equipment. */
function placesOf(project: Project): readonly Place[] {
  const parts = byId(project.parts);
  const connectors = byId(project.connectors);
  const mated = new Set<string>();
  const out: Place[] = [];
  const add = (list: readonly (Connector | undefined)[]): void => {
    const halves = list.flatMap((c) => halfOf(c, parts) ?? []);
    if (halves.length > 0) out.push({ at: out.length, halves });
  };
  for (const m of project.mates) {
    if (mated.has(m.a) || mated.has(m.b)) continue;
    mated.add(m.a).add(m.b);
    add([connectors.get(m.a), connectors.get(m.b)]);
  }
  for (const c of project.connectors)
    if (!mated.has(c.id) && (c.unmated === true || c.supply === 'equipment')) add([c]);
  return out;
}

function halfOf(connector: Connector | undefined, parts: ReadonlyMap<string, Part>): Half | undefined {
  const part = connector && parts.get(connector.part);
  if (!connector || !isMatingHalf(part)) return undefined;
  const isFree = part.mounting === undefined || part.mounting === 'free';
  return { connector, part, isFree, isHarness: connector.supply === 'harness' };
}

interface Placed {
  readonly place: Place;
  readonly half: Half;
}

/** Halves of different places with nothing between them that the index can tell: ways, interface, key. */
function* pairsOf(places: readonly Place[]): Generator<readonly [Placed, Placed]> {
  const groups = new Map<string, { like: Half; list: Placed[] }>();
  for (const place of places)
    for (const half of place.halves) {
      const { ways, interface: name, keying, bodyForm, contactKind } = half.part;
      const key = [ways, name, keying, bodyForm, contactKind].join('|');
      const group = groups.get(key);
      if (group) group.list.push({ place, half });
      else groups.set(key, { like: half, list: [{ place, half }] });
    }
  const all = [...groups.values()];
  const byWays = new Map<number, typeof all>();
  for (const g of all) byWays.set(g.like.part.ways, [...(byWays.get(g.like.part.ways) ?? []), g]);
  for (const alike of byWays.values())
    for (const [i, g] of alike.entries())
      for (const other of alike.slice(i)) {
        if (apart(g.like.part, other.like.part)) continue;
        for (const [k, a] of g.list.entries())
          for (const b of g === other ? other.list.slice(k + 1) : other.list)
            if (a.place !== b.place) yield [a, b];
      }
}

/** What of `matingObstacles` can be told without a word: for many groups, each against each. */
function apart(a: MatingHalf, b: MatingHalf): boolean {
  const differ = (x: string | undefined, y: string | undefined): boolean =>
    x !== undefined && y !== undefined && x !== y;
  return (
    differ(a.interface, b.interface) ||
    differ(a.keying, b.keying) ||
    (a.bodyForm !== undefined && a.bodyForm === b.bodyForm) ||
    (a.contactKind !== undefined && a.contactKind === b.contactKind)
  );
}

function joinOf(second: Placed, first: Placed, reachOf: ReachOf): WrongJoin | undefined {
  const halves = [second, first];
  if (!halves.some((h) => h.half.isFree) || !halves.some((h) => h.half.isHarness)) return undefined;
  const moves = second.half.isFree && second.half.isHarness;
  const [free, into] = moves || !first.half.isFree ? [second, first] : [first, second];
  const { obstacles, unknown } = obstaclesBetween(second.half.part)(first.half.part);
  if (obstacles.length > 0) return undefined;
  const reach = reachOf(free, into);
  if (reach && reach.reachMm < reach.gapMm) return undefined;
  return { free: free.half.connector.id, into: into.half.connector.id, reach, unknown };
}

const obstaclesBetween = memoByIdentity((a: MatingHalf) =>
  memoByIdentity((b: MatingHalf) => matingObstacles(a, b)),
);

type ReachOf = (free: Placed, into: Placed) => Reach | undefined;

/**
 * A free end swings about the root of its branch, as far as branch, service loop and margin go. The place that it enters is where
 * the half that belongs there lies; where that one hangs free of its own, both come towards each other.
 */
function createReach(project: Project, marginMm: number): ReachOf {
  const pieceOf = formboardPieces(project.segments);
  const branches = new Map<Half, (Branch & { readonly piece: string }) | undefined>();
  const branch = (half: Half) => {
    let found = branches.get(half);
    if (!found && !branches.has(half)) {
      const own = branchOf(project, half.connector.node);
      found = own && { ...own, piece: pieceOf(own.end.id) };
      branches.set(half, found);
    }
    return found;
  };
  const swingMm = (half: Half, b: Branch): number => b.lengthMm + (half.connector.serviceLoopMm ?? 0);
  return (free, into) => {
    if (!free.half.isHarness) return undefined;
    const own = branch(free.half);
    const there = into.half.isHarness ? into.half : into.place.halves.find((h) => h.isHarness);
    const other = there && branch(there);
    if (own === undefined || own.piece !== other?.piece) return undefined;
    const both = into.half.isHarness && into.half.isFree;
    const target = both ? other.root : other.end;
    return {
      reachMm: swingMm(free.half, own) + marginMm + (both ? swingMm(into.half, other) : 0),
      gapMm: distance(own.root.position, target.position),
      from: own.root.designator,
      to: target.designator,
    };
  };
}
