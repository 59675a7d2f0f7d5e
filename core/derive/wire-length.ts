import { exactLengthMm, roundUpMm } from '../calc/cut-length';
import { twistFactor } from '../calc/twist-take-up';
import { roundTo } from '../model/length-text';
import type { Connector } from '../model/connector';
import type { ContactPart } from '../model/parts/contact';
import type { MatingHalf } from '../model/parts/part';
import type { Wire, WireEnd } from '../model/wire';
import type { Route } from './route';
import type { Twist } from './twist';

/**
 * Cut length of a wire in millimetres, with what it is made of. `cutMm` is absent when there is neither a typed
 * length nor a way; `needs` names inputs whose absence makes the number incomplete.
 */
export interface WireLength {
  readonly kind: 'typed' | 'routed' | 'unknown';
  readonly cutMm: number | undefined;
  readonly routeMm: number | undefined;
  /** What the wire would be cut to by its route, also where a length is typed. */
  readonly byRouteMm: number | undefined;
  /** Typed less routed length; undefined where one of the two is not known, or the second not whole. */
  readonly differenceMm: number | undefined;
  readonly allowancesMm: readonly [number, number];
  readonly extraMm: number;
  /** What the twist of its group adds to the route; 0 for a wire that runs straight, or of an unknown twist. */
  readonly takeUpMm: number;
  readonly needs: readonly string[];
}

/** What of a resolved end its allowance depends on. */
export interface EndForLength {
  readonly end: WireEnd;
  readonly connector: { readonly connector: Connector; readonly part: MatingHalf | undefined } | undefined;
  readonly contactPart: ContactPart | undefined;
}

/**
 * Typed length as it stands, else route + signed allowance of each end + twist take-up + extra, rounded up to the next
 * whole millimetre (common practice: the length between the datums plus a signed setback or reach at each end). An end in
 * a cavity adds the housing's datum depth, the contact's own allowance and the connector's service loop. A twisted wire
 * takes up its helix over the whole route.
 */
export function wireLengthOf(
  wire: Wire,
  from: EndForLength,
  to: EndForLength,
  route: Route,
  twist?: Twist,
): WireLength {
  const a = endAllowance(from);
  const b = endAllowance(to);
  const parts = {
    allowancesMm: [a.mm, b.mm] as const,
    extraMm: wire.extraMm ?? 0,
    takeUpMm: route.found && twist ? takeUpMm(route.lengthMm, twist) : 0,
  };
  const routeMm = route.found ? route.lengthMm : undefined;
  const byRouteMm = routeMm === undefined ? undefined : roundUpMm(exactLengthMm({ ...parts, routeMm }), 1);
  const typedMm = wire.lengthMm;
  const needs = [...a.needs, ...b.needs, ...(twist?.needs ?? [])];
  const isKnown = typedMm !== undefined && byRouteMm !== undefined && needs.length === 0;
  const differenceMm = isKnown ? roundTo(typedMm - byRouteMm, 6) : undefined;
  const base = { ...parts, routeMm, byRouteMm, differenceMm };
  if (typedMm !== undefined) return { kind: 'typed', cutMm: typedMm, ...base, needs: [] };
  if (!route.found) return { kind: 'unknown', cutMm: undefined, ...base, needs: [NEEDS[route.reason]] };
  return { kind: 'routed', cutMm: byRouteMm, ...base, needs };
}

function takeUpMm(lengthMm: number, { layMm, pitchDiameterMm }: Twist): number {
  if (layMm === undefined || pitchDiameterMm === undefined) return 0;
  return lengthMm * (twistFactor(pitchDiameterMm, layMm) - 1);
}

const NEEDS = {
  'end-without-node': 'a formboard node at both ends, or a typed length',
  'not-connected': 'segments that join the nodes of both ends, or a typed length',
  'path-broken': 'a path whose segments follow each other, or a typed length',
} as const;

/** What an end adds to the datum-to-datum length, mm; what is missing counts as zero and is named. */
export function endAllowance(end: EndForLength): { readonly mm: number; readonly needs: readonly string[] } {
  const c = end.connector;
  if (end.end.at !== 'cavity' || !c) return { mm: 0, needs: [] };
  const housing = c.part?.kind === 'housing' ? c.part : undefined;
  const datum = housing?.datumMm;
  const needs = housing && datum === undefined ? [`datum of ${housing.partNumber}`] : [];
  return { mm: (datum ?? 0) + (end.contactPart?.allowanceMm ?? 0) + (c.connector.serviceLoopMm ?? 0), needs };
}
