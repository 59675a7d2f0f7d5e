import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness, ResolvedWire } from '../../derive/harness';
import { partOfKind, type Part } from '../../model/parts/part';
import type { Cable, Group } from '../../model/wire';
import { signalsOfWire } from './wire-facts';

/** A shield of the harness: that of a group, or that of a cable whose cores are in use. */
export interface Shield {
  readonly name: string;
  readonly cable: Cable | undefined;
  readonly cablePart: Extract<Part, { kind: 'cable' }> | undefined;
  /** The group that says at which ends the shield is connected. */
  readonly group: Group | undefined;
  readonly wires: readonly ResolvedWire[];
  /** Wires that bring the shield to a connector. */
  readonly drains: readonly ResolvedWire[];
}

const isShieldForm = (g: Group): boolean => g.form === 'shielded' || g.form === 'twisted-shielded';

/** Shields in the order of groups, then of cables that no shielded group holds. */
export const shieldsOf = memoByIdentity((harness: Harness): readonly Shield[] => {
  const { project, wireById, parts } = harness;
  const groups = project.groups.filter(isShieldForm);
  if (groups.length === 0 && project.cables.length === 0) return [];
  const coresOf = new Map<string, ResolvedWire[]>();
  if (project.cables.length > 0)
    for (const w of harness.wires) {
      const cable = w.wire.core?.cable;
      if (cable !== undefined) coresOf.set(cable, [...(coresOf.get(cable) ?? []), w]);
    }
  const drainsIn = (wires: readonly ResolvedWire[]): readonly ResolvedWire[] =>
    wires.filter((w) => isDrain(harness, w));
  const told = new Set<string>();
  const out: Shield[] = groups.map((group) => {
    const wires = group.wires.flatMap((id) => wireById.get(id) ?? []);
    const id = wires.find((w) => w.wire.core)?.wire.core?.cable;
    const cable = id === undefined ? undefined : project.cables.find((c) => c.id === id);
    if (cable) told.add(cable.id);
    const all = [...new Set([...wires, ...(cable ? (coresOf.get(cable.id) ?? []) : [])])];
    const cablePart = cable && partOfKind(parts.get(cable.part), 'cable');
    return { name: group.designator, cable, cablePart, group, wires: all, drains: drainsIn(all) };
  });
  for (const cable of project.cables) {
    const wires = coresOf.get(cable.id) ?? [];
    const cablePart = partOfKind(parts.get(cable.part), 'cable');
    const isShielded = cablePart?.shield !== undefined && cablePart.shield !== 'none';
    if (told.has(cable.id) || wires.length === 0 || !isShielded) continue;
    out.push({ name: cable.designator, cable, cablePart, group: undefined, wires, drains: drainsIn(wires) });
  }
  return out;
});

/** A wire is a drain by its core's name, or because it carries a shield. */
const isDrain = (harness: Harness, w: ResolvedWire): boolean =>
  /^drain\b/i.test(w.wire.core?.name ?? '') || signalsOfWire(harness, w).some((s) => s.class === 'shield');
