import { memoByIdentity } from '../base/memo-by-identity';
import { memoByKey } from '../base/memo-by-key';
import { bundleDiameter, type BundleDiameter } from '../calc/bundle-diameter';
import { coveringThicknessMm } from '../calc/covering-thickness';
import { pitchDiameterMm } from '../calc/twist-take-up';
import type { Part } from '../model/parts/part';
import type { ResolvedWire, SegmentUse } from './harness';

/** What counts as one circle in a cross-section: a wire, the wires of a twist, a cable. */
export interface BundleMember {
  readonly wires: readonly ResolvedWire[];
  /** Absent when the diameter of one of its wires, or of the cable, is not stated. */
  readonly diameterMm: number | undefined;
  /** Least bend radius in diameters, as the record states it. */
  readonly bendFactor: number | undefined;
  /** Records whose diameter is missing. */
  readonly without: readonly Part[];
}

/**
 * The circles of a bundle, in the order of the wires. A twisted group sweeps the circle around its wires (a pair: twice the
 * diameter); the cores of a cable are the cable.
 */
export function bundleMembers(wires: readonly ResolvedWire[]): readonly BundleMember[] {
  const sets = new Map<string, ResolvedWire[]>();
  for (const w of wires) {
    const twist = w.group?.form === 'twisted' || w.group?.form === 'twisted-shielded' ? w.group : undefined;
    const key = w.wire.core?.cable ?? twist?.id ?? w.wire.id;
    const set = sets.get(key);
    if (set) set.push(w);
    else sets.set(key, [w]);
  }
  return Array.from(sets.values(), (set) =>
    set.length === 1 ? lone(set[0] as ResolvedWire) : memberOf(set),
  );
}

/** Most wires are alone, and each lies in many segments. */
const lone = memoByIdentity((wire: ResolvedWire) => memberOf([wire]));

function memberOf(wires: readonly ResolvedWire[]): BundleMember {
  const [first] = wires as [ResolvedWire];
  const factors = wires.flatMap(({ part }) =>
    part?.kind === 'wire' || part?.kind === 'cable' ? (part.bendFactor ?? []) : [],
  );
  const common = { wires, bendFactor: factors.length > 0 ? Math.max(...factors) : undefined };
  if (first.wire.core) {
    const cable = first.part?.kind === 'cable' ? first.part : undefined;
    return {
      ...common,
      diameterMm: cable?.odMm,
      without: first.part && cable?.odMm === undefined ? [first.part] : [],
    };
  }
  const diameters = wires.map((w) => wireDiameterMm(w));
  const without = wires.flatMap((w, i) => (diameters[i] === undefined && w.part ? [w.part] : []));
  const known = diameters.filter((d) => d !== undefined);
  const diameterMm = known.length < wires.length ? undefined : Math.max(...known) + pitchDiameterMm(known);
  return { ...common, diameterMm, without };
}

/** Nominal outside diameter, else the largest that is stated, mm. */
export const wireDiameterMm = ({ conductor }: ResolvedWire): number | undefined =>
  conductor?.odMm ?? conductor?.odMaxMm;

/** Bundles that are kept: those of a large harness are alike for the most part, a branch of twelve wires like the next one. */
const KEPT = 500;

const packedAlike = memoByKey(
  (wireDiametersMm: readonly number[]) => wireDiametersMm.join(' '),
  KEPT,
  (wireDiametersMm): BundleDiameter | undefined => {
    const parsed = bundleDiameter.inputs.safeParse({ wireDiametersMm });
    const found = parsed.success ? bundleDiameter.run(parsed.data) : undefined;
    return found?.ok ? found.value : undefined;
  },
);

const packed = memoByIdentity((diameters: readonly (number | undefined)[]): BundleDiameter | undefined => {
  const wireDiametersMm = diameters.filter((d) => d !== undefined);
  if (wireDiametersMm.length === 0 || wireDiametersMm.length < diameters.length) return undefined;
  return packedAlike(wireDiametersMm);
});

/**
 * The bundle of a segment without its coverings. Packed when first asked for, and again only when a diameter changed; once
 * for all segments with the same diameters in the same order. Undefined without wires, or where a diameter is not stated.
 */
export const bundleOf = (use: Pick<SegmentUse, 'diametersMm'>): BundleDiameter | undefined =>
  packed(use.diametersMm);

/** Outside diameters along a segment, mm: where they change, with what lies on the wires there. */
export interface Diameter {
  readonly fromMm: number;
  readonly toMm: number;
  readonly diameterMm: number;
}

/**
 * Outside diameter over the coverings of layers below `layer` (all when it is not given), stretch by stretch between two
 * stations. Undefined where the bundle or the wall of a covering is not known.
 */
export function diametersAlong(
  use: SegmentUse,
  fromMm: number,
  toMm: number,
  layer = Infinity,
): readonly Diameter[] | undefined {
  const bundle = bundleOf(use);
  if (!bundle) return undefined;
  const on = use.coverings.filter((c) => c.covering.layer < layer && c.fromMm < toMm && c.toMm > fromMm);
  if (on.some((c) => c.part?.wallMm === undefined)) return undefined;
  const edges = [fromMm, toMm, ...on.flatMap((c) => [c.fromMm, c.toMm])]
    .filter((x) => x >= fromMm && x <= toMm)
    .sort((a, b) => a - b);
  const out: Diameter[] = [];
  for (let i = 1; i < edges.length; i++) {
    const [a, b] = [edges[i - 1]!, edges[i]!];
    if (b - a <= 0) continue;
    const walls = on
      .filter((c) => c.fromMm <= a && c.toMm >= b)
      .map((c) => coveringThicknessMm(c.part?.wallMm ?? 0, c.part?.tapeOverlap));
    out.push({ fromMm: a, toMm: b, diameterMm: bundle.laidMm + 2 * walls.reduce((x, y) => x + y, 0) });
  }
  return out;
}

/** The thickest diameter between two stations, mm; of a single station, of what meets there. */
export function thickestMm(use: SegmentUse, fromMm = 0, toMm = use.lengthMm): number | undefined {
  const hair = toMm > fromMm ? 0 : 1e-3;
  const along = diametersAlong(use, fromMm - hair, toMm + hair);
  return along && along.length > 0 ? Math.max(...along.map((d) => d.diameterMm)) : undefined;
}
