import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import { conductorArea } from '../calc/conductor-area';
import { conductorResistance, copperFactor } from '../calc/conductor-resistance';
import type { Branch, Warming } from '../calc/network/network';
import type { Fuse } from '../model/electrical';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import type { Net, ResolvedEnd, ResolvedMate, ResolvedWire } from './harness';
import { pointKey } from './nets';

/** What of a harness a circuit is read from: a harness, or a part of one that holds all of the circuit. */
export interface CircuitInput {
  readonly project: Readonly<Pick<Project, 'signals' | 'fuses' | 'parts'>>;
  readonly nets: readonly Net[];
  readonly mates: readonly ResolvedMate[];
}

export interface WireBranches {
  readonly branches: readonly Branch[];
  /** Id of the branch that is the wire itself. */
  readonly wireBranch: string | undefined;
  readonly missing: readonly string[];
  readonly notCounted: readonly string[];
}

/**
 * A wire as branches: itself, its fuses in series, and at a splice half of the splice's resistance (which is that from one
 * wire to another). Crimps count with their contact.
 */
export function branchesOfWire(
  harness: CircuitInput,
  wire: ResolvedWire,
  conditions: { readonly conductorC: number; readonly warming?: (wire: ResolvedWire) => Warming | undefined },
): WireBranches {
  const name = wire.wire.designator;
  const at20 = wireOhmAt20(wire);
  const missing = [
    ...(wire.length.cutMm === undefined ? [`length of ${name}`] : []),
    ...(at20 === undefined && wire.length.cutMm !== undefined ? [`conductor of ${name}`] : []),
  ];
  if (at20 === undefined) return { branches: [], wireBranch: undefined, missing, notCounted: [] };
  const notCounted: string[] = [];
  const branches: Branch[] = [];
  let from = endNode(harness, wire, 0, branches, notCounted);
  const to = endNode(harness, wire, 1, branches, notCounted);
  for (const fuse of fusesByWire(harness.project.fuses).get(wire.wire.id) ?? []) {
    const part = partOf(harness, fuse.part);
    const mohm = part?.kind === 'fuse' ? part.resistanceMohm : undefined;
    if (mohm === undefined) notCounted.push(`resistance of ${fuse.designator}`);
    const behind = `behind ${fuse.id}`;
    branches.push({ id: `fuse ${fuse.id}`, from, to: behind, ohm: (mohm ?? 0) / 1000 });
    from = behind;
  }
  const warming = conditions.warming?.(wire);
  const wireBranch = `wire ${wire.wire.id}`;
  branches.push({
    id: wireBranch,
    from,
    to,
    ohm: warming ? at20 : at20 * copperFactor(conditions.conductorC),
    ...(warming ? { warming } : {}),
  });
  return { branches, wireBranch, missing, notCounted };
}

const fusesByWire = memoByIdentity((fuses: readonly Fuse[]): ReadonlyMap<string, readonly Fuse[]> => {
  const map = new Map<string, Fuse[]>();
  for (const f of fuses) map.set(f.wire, [...(map.get(f.wire) ?? []), f]);
  return map;
});

/** Resistance of a wire at 20 C, ohm; undefined where its length or its conductor is not known. */
export function wireOhmAt20(wire: ResolvedWire): number | undefined {
  const { conductor, length } = wire;
  if (!conductor || length.cutMm === undefined) return undefined;
  const area = conductorArea.run({
    size: conductor.size,
    areaMm2: conductor.areaMm2,
    strands: conductor.stranding?.strands,
    strandDiameterMm: conductor.stranding?.strandDiameterMm,
  });
  const result = conductorResistance.run({
    catalogueOhmPerKm: conductor.resistanceOhmPerKm,
    areaMm2: area.ok ? area.value.areaMm2 : undefined,
    stranded: conductor.stranding === undefined || conductor.stranding.strands > 1,
    lengthMm: length.cutMm,
    temperatureC: 20,
  });
  return result.ok ? result.value.ohm : undefined;
}

const partOf = (harness: CircuitInput, id: string | undefined): Part | undefined =>
  id === undefined ? undefined : byId(harness.project.parts).get(id);

function endNode(
  harness: CircuitInput,
  wire: ResolvedWire,
  index: 0 | 1,
  branches: Branch[],
  notCounted: string[],
): string {
  const end: ResolvedEnd = index === 0 ? wire.from : wire.to;
  if (end.end.at === 'cavity') return pointKey(end.end.connector, end.end.cavity);
  if (end.end.at === 'free') return `free ${wire.wire.id}.${index}`;
  const centre = `splice ${end.end.splice}`;
  const part = partOf(harness, end.splice?.part);
  const mohm = part?.kind === 'splice' ? part.resistanceMohm : undefined;
  if (mohm === undefined) notCounted.push(`resistance of splice ${end.splice?.designator ?? ''}`.trim());
  const node = `${centre} ${wire.wire.id}.${index}`;
  branches.push({ id: `into ${node}`, from: node, to: centre, ohm: (mohm ?? 0) / 2000 });
  return node;
}
