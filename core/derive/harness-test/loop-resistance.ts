import { byId } from '../../base/by-id';
import { memoByPair } from '../../base/memo-by-pair';
import { roundTo } from '../../model/length-text';
import { wireOhmAt20 } from '../circuit-wires';
import type { Harness, ResolvedEnd } from '../harness';
import { limitValue } from '../wire-ampacity';
import type { TestNet, TestPoint, TestWire } from './test-model';

/** From 20 to about 45 degrees C copper gains a tenth, and wires differ by as much; common practice. */
export const CONTINUITY_FACTOR = 1.25;
/** Leads and adapter of a tester that measures with two wires; common practice. With four wires it falls away. */
export const LEADS_OHM = 0.1;

export interface ContinuityLimit {
  /** Wires and joints of the way between the points, at 20 degrees C. */
  readonly computedOhm: number;
  readonly limitOhm: number;
  readonly working: string;
}

/** The limit of a continuity step, or what is missing for one. */
export type ContinuityAnswer =
  | { readonly ok: true; readonly value: ContinuityLimit }
  | { readonly ok: false; readonly needs: readonly string[] };

/**
 * Resistance of the shortest way between two points of a net: its wires at 20 degrees C, its joints by their records, else by
 * the limit set. Wires in parallel make it less, so it bounds from above. The limit adds a factor and the leads.
 */
export function continuityLimit(
  harness: Harness,
  net: TestNet,
  from: TestPoint,
  to: TestPoint,
): ContinuityAnswer {
  const way = wayBetween(harness, net, from.key, to.key);
  if (!way) return { ok: false, needs: [`a way from ${from.text} to ${to.text}`] };
  if (way.needs.length > 0) return { ok: false, needs: way.needs };
  const computedOhm = way.wireOhm + way.jointOhm;
  const limitOhm = Math.ceil((CONTINUITY_FACTOR * computedOhm + LEADS_OHM) * 100 - 1e-9) / 100;
  const working =
    `(wires ${roundTo(way.wireOhm, 4)} + joints ${roundTo(way.jointOhm, 4)} ohm at 20 degC) x ${CONTINUITY_FACTOR} + ${LEADS_OHM} ohm of leads` +
    (way.assumed > 0 ? `; ${way.assumed} joints by the limit set` : '');
  return { ok: true, value: { computedOhm, limitOhm, working } };
}

interface Way {
  readonly wireOhm: number;
  readonly jointOhm: number;
  readonly assumed: number;
  readonly needs: readonly string[];
}

const wayBetween = (harness: Harness, net: TestNet, from: string, to: string): Way | undefined =>
  waysIn(harness, net)(from).get(to);

/** By the point from which all others are measured: the ways of a net are looked for once, not for each of its points. */
const waysIn = memoByPair((harness: Harness, net: TestNet) => {
  const edgesAt = new Map<string, { readonly next: string; readonly part: Way }[]>();
  for (const w of net.wires) {
    const part = partOf(harness, w);
    for (const [at, next] of [w.keys, [w.keys[1], w.keys[0]] as const]) {
      const here = edgesAt.get(at);
      if (here) here.push({ next, part });
      else edgesAt.set(at, [{ next, part }]);
    }
  }
  const known = new Map<string, ReadonlyMap<string, Way>>();
  return (from: string): ReadonlyMap<string, Way> => {
    let ways = known.get(from);
    if (!ways) known.set(from, (ways = waysFrom(from, edgesAt)));
    return ways;
  };
});

/** Fewest ohms first (Dijkstra); a wire without a known resistance is taken only where there is no other way. */
function waysFrom(
  from: string,
  edgesAt: ReadonlyMap<string, readonly { readonly next: string; readonly part: Way }[]>,
): ReadonlyMap<string, Way> {
  const best = new Map<string, Way>([[from, { wireOhm: 0, jointOhm: 0, assumed: 0, needs: [] }]]);
  const open = new Set([from]);
  while (open.size > 0) {
    let at = from;
    let least = Infinity;
    for (const key of open) {
      const cost = costOf(best.get(key)!);
      if (cost < least) [at, least] = [key, cost];
    }
    open.delete(at);
    const here = best.get(at)!;
    for (const { next, part } of edgesAt.get(at) ?? []) {
      const way: Way = {
        wireOhm: here.wireOhm + part.wireOhm,
        jointOhm: here.jointOhm + part.jointOhm,
        assumed: here.assumed + part.assumed,
        needs: [...here.needs, ...part.needs],
      };
      const before = best.get(next);
      if (before && costOf(before) <= costOf(way)) continue;
      best.set(next, way);
      open.add(next);
    }
  }
  return best;
}

const UNKNOWN_COST = 1e6;
const costOf = (w: Way): number => w.wireOhm + w.jointOhm + w.needs.length * UNKNOWN_COST;

function partOf(harness: Harness, { wire }: TestWire): Way {
  const ohm = wireOhmAt20(wire);
  const { project, parts } = harness;
  const fallback = limitValue(project.limitSet, 'joint-resistance-assumed');
  let jointOhm = 0;
  let assumed = 0;
  const needs: string[] = [];
  const joint = (mohm: number | undefined, what: string): void => {
    const value = mohm ?? fallback;
    if (value === undefined) needs.push(`resistance of ${what}`);
    else jointOhm += value / 1000;
    if (mohm === undefined && fallback !== undefined) assumed++;
  };
  if (ohm === undefined)
    needs.push(`${wire.length.cutMm === undefined ? 'length' : 'conductor'} of ${wire.wire.designator}`);
  for (const end of [wire.from, wire.to]) endJoint(harness, end, joint);
  for (const fuse of project.fuses)
    if (fuse.wire === wire.wire.id) {
      const record = parts.get(fuse.part ?? '');
      joint(record?.kind === 'fuse' ? record.resistanceMohm : undefined, fuse.designator);
    }
  return { wireOhm: ohm ?? 0, jointOhm, assumed, needs };
}

/** A contact once with its wire; at a splice half of it, since a way through goes in and out. */
function endJoint(
  { project, parts }: Harness,
  { end, contactPart, connector }: ResolvedEnd,
  joint: (mohm: number | undefined, what: string) => void,
): void {
  if (end.at === 'free') return;
  if (end.at === 'cavity') {
    const name = `the contact at ${connector?.connector.designator ?? '?'}:${end.cavity}`;
    joint(contactPart?.resistanceMohm, name);
    return;
  }
  const splice = byId(project.splices).get(end.splice);
  const record = parts.get(splice?.part ?? '');
  const whole = record?.kind === 'splice' ? record.resistanceMohm : undefined;
  joint(whole === undefined ? undefined : whole / 2, splice?.designator ?? 'a splice');
}
