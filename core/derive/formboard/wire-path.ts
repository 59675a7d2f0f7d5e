import { byId } from '../../base/by-id';
import { problem, ok, type Result } from '../../base/result';
import type { Project } from '../../model/project';
import type { Segment } from '../../model/topology';
import type { Wire, WireEnd } from '../../model/wire';
import type { Router } from '../route';

type Placed = Pick<Project, 'connectors' | 'splices'>;

/** The node at which a wire end meets the formboard. */
export function nodeOfEnd(project: Placed, end: WireEnd): string | undefined {
  if (end.at === 'cavity') return byId(project.connectors).get(end.connector)?.node;
  return end.at === 'splice' ? byId(project.splices).get(end.splice)?.node : end.node;
}

/** What an end is called: "X1", "XS1", "the free end". */
export function nameOfEnd(project: Placed, end: WireEnd): string {
  if (end.at === 'cavity') return byId(project.connectors).get(end.connector)?.designator ?? 'a connector';
  if (end.at === 'splice') return byId(project.splices).get(end.splice)?.designator ?? 'a splice';
  return end.text ?? 'the free end';
}

/** The nodes that a path passes, its start first; null where its segments do not follow each other from there. */
export function nodesOnPath(
  path: readonly string[],
  start: string,
  segments: ReadonlyMap<string, Segment>,
): readonly string[] | null {
  const out = [start];
  for (const id of path) {
    const s = segments.get(id);
    const at = out.at(-1);
    if (!s || (s.from !== at && s.to !== at)) return null;
    out.push(s.from === at ? s.to : s.from);
  }
  return out;
}

/**
 * A path for a wire from its first end to its second: as given, or the other way round. Else why it is none, in words.
 */
export function pathForWire(
  project: Pick<Project, 'connectors' | 'splices' | 'nodes' | 'segments'>,
  wire: Wire,
  path: readonly string[],
): Result<readonly string[], string> {
  const [from, to] = wire.ends.map((e) => nodeOfEnd(project, e));
  const loose = wire.ends.find((e) => nodeOfEnd(project, e) === undefined);
  if (loose || !from || !to)
    return problem(
      `${wire.designator} cannot be laid: ${loose ? nameOfEnd(project, loose) : 'an end'} has no node on the formboard.`,
    );
  const segments = byId(project.segments);
  for (const way of [path, [...path].reverse()]) {
    const passed = nodesOnPath(way, from, segments);
    if (passed?.at(-1) !== to) continue;
    if (new Set(way).size < way.length)
      return problem(`The path of ${wire.designator} runs through a segment twice.`);
    return ok(way);
  }
  const nameOfNode = (id: string): string => byId(project.nodes).get(id)?.designator ?? 'a node';
  if (path.length === 0)
    return problem(
      `No segment is chosen for ${wire.designator}, which goes from ${nameOfNode(from)} to ${nameOfNode(to)}.`,
    );
  const names = path.map((id) => segments.get(id)?.designator ?? 'a segment that is gone');
  return problem(
    `${names.join(', ')} ${names.length === 1 ? 'does' : 'do'} not lead ${wire.designator} from ${nameOfNode(from)} to ${nameOfNode(to)} without a gap.`,
  );
}

/** The shortest way between the ends of a wire that passes through the given segments, in that order; null if there is none. */
export function pathThrough(
  project: Pick<Project, 'connectors' | 'splices' | 'segments'>,
  router: Router,
  wire: Wire,
  through: readonly string[],
): readonly string[] | null {
  const [from, to] = [nodeOfEnd(project, wire.ends[0]), nodeOfEnd(project, wire.ends[1])];
  if (!from || !to) return null;
  const segments = byId(project.segments);
  let ways: { readonly at: string; readonly path: readonly string[]; readonly lengthMm: number }[] = [
    { at: from, path: [], lengthMm: 0 },
  ];
  for (const id of through) {
    const s = segments.get(id);
    if (!s) return null;
    const own = router.lengthMmOf(s);
    ways = [
      [s.from, s.to],
      [s.to, s.from],
    ].flatMap(([enter, leave]) =>
      best(
        ways.flatMap((w) => {
          const way = router.between(w.at, enter);
          const path = way.found ? [...w.path, ...way.segments, id] : [];
          return way.found && leave && !twice(path)
            ? [{ at: leave, path, lengthMm: w.lengthMm + way.lengthMm + own }]
            : [];
        }),
      ),
    );
  }
  const ends = ways.flatMap((w) => {
    const way = router.between(w.at, to);
    const path = way.found ? [...w.path, ...way.segments] : [];
    return way.found && !twice(path) ? [{ at: to, path, lengthMm: w.lengthMm + way.lengthMm }] : [];
  });
  return best(ends)[0]?.path ?? null;
}

const twice = (path: readonly string[]): boolean => new Set(path).size < path.length;

const best = <T extends { readonly lengthMm: number }>(list: readonly T[]): T[] =>
  list.length === 0 ? [] : [list.reduce((a, b) => (b.lengthMm < a.lengthMm ? b : a))];
