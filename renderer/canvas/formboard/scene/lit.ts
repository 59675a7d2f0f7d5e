import { byId } from '@latchwork/core/base/by-id';
import type { Harness, ResolvedWire } from '@latchwork/core/derive/harness';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';

/** What is lit on the board: objects by id, and the wires whose ways are. */
export interface Lit {
  readonly ids: ReadonlySet<string>;
  /** Segments on the way of a lit wire. */
  readonly ways: ReadonlySet<string>;
  readonly wires: ReadonlySet<string>;
}

export const NOTHING_LIT: Lit = { ids: new Set(), ways: new Set(), wires: new Set() };

/** What selection keys mean on the board: a wire its way and its ends, a cavity its connector and wires, a signal its wires. */
export function litBy(scene: BoardScene, keys: Iterable<string>): Lit {
  const { harness } = scene;
  const ids = new Set<string>();
  const ways = new Set<string>();
  const wires = new Set<string>();
  const connectors = byId(harness.project.connectors);
  for (const key of keys) {
    const id = key.split(':')[0] as string;
    const nodeOfConnector = connectors.get(id)?.node;
    if (nodeOfConnector !== undefined) ids.add(id);
    else ids.add(key);
    for (const wire of wiresOfKey(harness, key)) {
      wires.add(wire.wire.id);
      if (wire.route.found) for (const s of wire.route.segments) ways.add(s);
      for (const end of [wire.from, wire.to]) if (end.node) ids.add(end.node);
    }
  }
  return { ids, ways, wires };
}

/** The wires that a key stands for. */
export function wiresOfKey(harness: Harness, key: string): readonly ResolvedWire[] {
  const wire = harness.wireById.get(key);
  if (wire) return [wire];
  const [id = key, cavity] = key.split(':');
  if (cavity !== undefined)
    return (
      harness.connectorById
        .get(id)
        ?.cavities.find((c) => c.cavity === cavity)
        ?.ends.map((e) => e.wire) ?? []
    );
  const { project } = harness;
  const group = byId(project.groups).get(id);
  if (group) return group.wires.flatMap((w) => harness.wireById.get(w) ?? []);
  if (byId(project.signals).has(id)) return harness.wires.filter((w) => w.signal?.id === id);
  return byId(project.cables).has(id) ? harness.wires.filter((w) => w.wire.core?.cable === id) : [];
}

export const isLit = ({ ids, ways }: Lit): boolean => ids.size > 0 || ways.size > 0;
