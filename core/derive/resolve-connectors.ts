import { byId } from '../base/by-id';
import { reuse, reuseList } from '../base/same-fields';
import { isMatingHalf, type Part } from '../model/parts/part';
import type { Project } from '../model/project';
import type { ResolvedConnector } from './harness';

/** Connectors with part, equipment and accessories, in project order. */
export function resolveConnectors(
  project: Project,
  parts: ReadonlyMap<string, Part>,
  previous: ReadonlyMap<string, ResolvedConnector>,
): ReadonlyMap<string, ResolvedConnector> {
  const equipment = byId(project.equipment);
  const out = new Map<string, ResolvedConnector>();
  for (const connector of project.connectors) {
    const part = parts.get(connector.part);
    const before = previous.get(connector.id);
    const accessories = connector.accessories.map((a, i) => {
      const next = { part: parts.get(a.part), quantity: a.quantity };
      return reuse(before?.accessories[i], next);
    });
    out.set(
      connector.id,
      reuse(before, {
        connector,
        part: isMatingHalf(part) ? part : undefined,
        equipment: connector.equipment ? equipment.get(connector.equipment) : undefined,
        accessories: reuseList(before?.accessories, accessories),
      }),
    );
  }
  return out;
}
