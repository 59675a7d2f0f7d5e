import { boxAround, type Box } from '@latchwork/core/base/point';
import type { ConnectorUse, Harness } from '@latchwork/core/derive/harness';
import { symbolBox, symbolOf } from '@latchwork/core/derive/symbol';
import { curveBox } from './curve';
import type { AreaItem, ConnectorItem, MateItem, SpliceItem } from './items';
import { mateCurve } from './mate-curve';
import { SPLICE_RADIUS_MM } from './mouths';
import { layWires, type WireItems } from './wire-items';

/** Everything on the diagram sheet, ready to be drawn and hit. Made from the harness, never changed. */
export interface DiagramScene {
  readonly harness: Harness;
  readonly areas: readonly AreaItem[];
  readonly connectors: readonly ConnectorItem[];
  readonly connectorById: ReadonlyMap<string, ConnectorItem>;
  readonly wires: WireItems;
  readonly splices: readonly SpliceItem[];
  readonly mates: readonly MateItem[];
}

const connectorCache = new WeakMap<ConnectorUse, ConnectorItem>();

/** The scene of a harness. What did not change since the scene before keeps its objects. */
export function buildDiagramScene(harness: Harness, previous?: DiagramScene): DiagramScene {
  if (previous?.harness === harness) return previous;
  const { project } = harness;
  const before = previous?.harness;
  const sameConnectors = before?.connectors === harness.connectors;
  const connectors = previous && sameConnectors ? previous.connectors : harness.connectors.map(connectorItem);
  const connectorById =
    previous && sameConnectors ? previous.connectorById : new Map(connectors.map((c) => [c.id, c]));
  return {
    harness,
    areas:
      previous && before?.project.equipment === project.equipment
        ? previous.areas
        : project.equipment.map(areaItem),
    connectors,
    connectorById,
    wires:
      previous && before?.wires === harness.wires ? previous.wires : layWires(harness.wires, previous?.wires),
    splices:
      previous && before?.project.splices === project.splices
        ? previous.splices
        : project.splices.map(spliceItem),
    mates:
      previous && before?.mates === harness.mates
        ? previous.mates
        : harness.mates.flatMap((mate): MateItem[] => {
            const a = connectorById.get(mate.mate.a);
            const b = connectorById.get(mate.mate.b);
            if (!a || !b) return [];
            const curve = mateCurve(a, b);
            return [{ is: 'mate', id: mate.mate.id, mate, curve, ...curveBox(curve) }];
          }),
  };
}

function connectorItem(use: ConnectorUse): ConnectorItem {
  let item = connectorCache.get(use);
  if (!item) {
    const { connector, part } = use.resolved;
    item = {
      is: 'connector',
      id: connector.id,
      use,
      symbol: symbolOf(part, connector),
      ...symbolBox(connector, part),
    };
    connectorCache.set(use, item);
  }
  return item;
}

const areaItem = (equipment: Harness['project']['equipment'][number]): AreaItem => ({
  is: 'area',
  id: equipment.id,
  equipment,
  minX: equipment.position.x,
  minY: equipment.position.y,
  maxX: equipment.position.x + equipment.widthMm,
  maxY: equipment.position.y + equipment.heightMm,
});

const spliceItem = (splice: Harness['project']['splices'][number]): SpliceItem => ({
  is: 'splice',
  id: splice.id,
  splice,
  minX: splice.position.x - SPLICE_RADIUS_MM,
  minY: splice.position.y - SPLICE_RADIUS_MM,
  maxX: splice.position.x + SPLICE_RADIUS_MM,
  maxY: splice.position.y + SPLICE_RADIUS_MM,
});

/** The box around all that is drawn; null for an empty sheet. */
export const sceneBounds = (scene: DiagramScene): Box | null =>
  boxAround([...scene.areas, ...scene.connectors, ...scene.splices, ...scene.wires.list]);

/** The box of what a selection key names; null when it is not on the diagram. */
export function boxOfKey(scene: DiagramScene, key: string): Box | null {
  const id = key.split(':')[0] as string;
  return (
    scene.connectorById.get(id) ??
    scene.wires.byId.get(id) ??
    [...scene.splices, ...scene.areas, ...scene.mates].find((o) => o.id === id) ??
    null
  );
}
