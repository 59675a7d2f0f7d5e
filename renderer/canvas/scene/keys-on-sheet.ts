import type { ObjectRef } from '@latchwork/core/rules/finding';
import type { DiagramScene } from './diagram-scene';

type Kind = ObjectRef['type'];

/**
 * Selection keys under which an object shows on the diagram: itself where it is drawn, else the objects it is seen at. A
 * contact shows as its cavity, a signal as its wires, a node as the connectors that stand at it.
 */
export function keysOnSheet(scene: DiagramScene, key: string): readonly string[] {
  const id = key.split(':')[0] as string;
  if (scene.connectorById.has(id) || scene.wires.byId.has(id)) return [key];
  const { project } = scene.harness;
  if ([project.splices, project.mates, project.equipment].some((list) => list.some((o) => o.id === id)))
    return [key];
  for (const find of Object.values(ELSEWHERE)) {
    const keys = find(scene, id);
    if (keys.length > 0) return keys;
  }
  return [];
}

const wiresWhere = (
  { harness }: DiagramScene,
  is: (wire: DiagramScene['harness']['wires'][number]) => boolean,
): string[] => harness.wires.filter(is).map((w) => w.wire.id);

const ELSEWHERE: Partial<Record<Kind, (scene: DiagramScene, id: string) => readonly string[]>> = {
  contact: ({ harness }, id) =>
    harness.connectors.flatMap((c) =>
      c.cavities
        .filter((v) => v.entry?.contact === id || v.ends.some((e) => e.end.contact?.id === id))
        .map((v) => `${c.resolved.connector.id}:${v.cavity}`),
    ),
  group: ({ harness }, id) => harness.project.groups.find((g) => g.id === id)?.wires ?? [],
  signal: (scene, id) => wiresWhere(scene, (w) => w.signal?.id === id),
  cable: (scene, id) => wiresWhere(scene, (w) => w.wire.core?.cable === id),
  fuse: ({ harness }, id) => harness.project.fuses.filter((f) => f.id === id).map((f) => f.wire),
  segment: (scene, id) => wiresWhere(scene, (w) => w.route.found && w.route.segments.includes(id)),
  node: ({ harness }, id) => harness.project.connectors.filter((c) => c.node === id).map((c) => c.id),
  part: (scene, id) => {
    const connectors = scene.harness.project.connectors.filter((c) => c.part === id).map((c) => c.id);
    return connectors.length > 0 ? connectors : wiresWhere(scene, (w) => w.wire.part === id);
  },
};
