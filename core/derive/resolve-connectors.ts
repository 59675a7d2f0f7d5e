import { byId } from '../base/by-id';
import { resultsBeside } from '../base/results-beside';
import { reuse, reuseList } from '../base/same-fields';
import type { Connector } from '../model/connector';
import type { Equipment } from '../model/equipment';
import { isMatingHalf, type Part } from '../model/parts/part';
import type { Project } from '../model/project';
import type { ResolvedConnector } from './harness';

/** Connectors with part, equipment and accessories, beside those of the project. */
export function resolveConnectors(
  project: Project,
  before: { readonly project: Project; readonly resolved: readonly ResolvedConnector[] } | undefined,
): readonly ResolvedConnector[] {
  const [parts, equipment] = [byId(project.parts), byId(project.equipment)];
  const was = before && byId(before.project.connectors).beside(before.resolved);
  const sameGround =
    before?.project.parts === project.parts && before.project.equipment === project.equipment;
  const { results } = resultsBeside(
    project.connectors,
    sameGround ? { list: before.project.connectors, results: before.resolved } : undefined,
    (connector) => resolveConnector(connector, parts, equipment, was?.get(connector.id)),
  );
  return reuseList(before?.resolved, results);
}

function resolveConnector(
  connector: Connector,
  parts: ReadonlyMap<string, Part>,
  equipment: ReadonlyMap<string, Equipment>,
  before: ResolvedConnector | undefined,
): ResolvedConnector {
  const part = parts.get(connector.part);
  const accessories = connector.accessories.map((a, i) => {
    const next = { part: parts.get(a.part), quantity: a.quantity };
    return reuse(before?.accessories[i], next);
  });
  return reuse(before, {
    connector,
    part: isMatingHalf(part) ? part : undefined,
    equipment: connector.equipment ? equipment.get(connector.equipment) : undefined,
    accessories: reuseList(before?.accessories, accessories),
  });
}
