import { PLACED_OF_CAVITY, PLACED_OF_CONNECTOR } from '../exchange/placed-fields';
import { cavityRef, connectorRef } from '../../rules/refs';
import type { CavityUse, ConnectorUse } from '../../derive/harness';
import { accessoriesOf, plugsOf, sealsOf } from '../exchange/fitted';
import { otherFields, type FieldText } from '../exchange/field-text';
import { wireVariants } from '../exchange/wire-variants';
import type { XmlElement } from '../xml/xml';
import { unknownHousingSpecs } from './connector-specs';
import {
  cavityRefId,
  componentConnectorId,
  housingRoleId,
  pieceIds,
  pinRoleId,
  portId,
  slotRefId,
} from '../exchange/object-ids';
import { partIds } from './part-shape';
import { addPiece, roleId } from './piece';
import type { VecContext } from './vec-context';
import { node, properties, refs, value, type Children } from './vec-values';

/** Placed housings and headers with their cavities, and what is fitted to them. */
export function addConnectors(ctx: VecContext): void {
  for (const use of ctx.harness.connectors) addConnector(ctx, use);
  for (const a of accessoriesOf(ctx.harness)) {
    addPiece(ctx, {
      ...a,
      id: pieceIds.accessory(a.key),
      at: pieceIds.connector(a.connector),
      isAccessory: true,
      specKey: wireVariants(ctx.harness).find((v) => v.part !== undefined && v.part === a.part)?.key,
    });
    ctx.report.wrote('accessories');
  }
  for (const p of plugsOf(ctx.harness)) {
    const { cavity } = p;
    addPiece(ctx, {
      ...p,
      id: pieceIds.plug(p.key),
      at: pieceIds.connector(p.connector),
      after: [cavity?.exists ? refs('PluggedCavityRef', cavityRefId(p.connector, cavity.name)) : undefined],
    });
    ctx.report.wrote('plugs');
  }
  for (const s of sealsOf(ctx.harness)) {
    addPiece(ctx, { ...s, id: pieceIds.seal(s.key), at: pieceIds.connector(s.connector) });
    ctx.report.wrote('seals');
  }
}

/** Cavities that the part has, or that are named where the part is not known. */
export const cavitiesOf = (use: ConnectorUse): readonly CavityUse[] => use.cavities.filter((c) => c.exists);

/** The role that mates and couplings refer to: of the housing itself, or of the one within a header. */
export const housingRoleOf = ({ resolved: { connector, part } }: ConnectorUse): string =>
  part?.kind === 'header' ? housingRoleId(connector.id) : roleId(pieceIds.connector(connector.id));

/** Key of the specifications of a connector: its part, or itself where its record is that of no mating half. */
export const halfKey = ({ resolved: { connector, part } }: ConnectorUse): string =>
  part?.id ?? `no-half ${connector.id}`;

function addConnector(ctx: VecContext, use: ConnectorUse): void {
  const { connector, part, equipment } = use.resolved;
  const id = pieceIds.connector(connector.id);
  const key = halfKey(use);
  const kind = part?.kind ?? 'housing';
  if (!part) {
    ctx.unchosen.set(key, [
      ...unknownHousingSpecs(
        ctx,
        key,
        cavitiesOf(use).map((c) => c.cavity),
      ),
      node('Specification', { id: partIds(key).placeable, type: 'PlaceableElementSpecification' }, [
        value('Identification', key),
        value('ValidPlacementTypes', 'OnPoint'),
      ]),
    ]);
  }
  for (const c of use.cavities)
    if (!c.exists)
      ctx.report.lose(
        `${connector.designator}:${c.cavity}`,
        'the part has no such cavity: what is there is written without it',
        cavityRef(c),
      );
  const fields: FieldText[] = [
    ...otherFields(connector, PLACED_OF_CONNECTOR),
    ...(equipment ? [['equipment', equipment.designator] as const] : []),
    ...(connector.supply === 'equipment' ? [['supply', 'comes with the equipment'] as const] : []),
  ];
  addPiece(ctx, {
    id,
    name: connector.designator,
    object: connector.id,
    kind,
    part: part ?? ctx.harness.parts.get(connector.part),
    specKey: key,
    supply: connector.supply,
    fields,
    description: connector.description,
    notes: [connector.note],
    isPlaced: connector.node !== undefined,
    ref: connectorRef(use),
    ...(kind === 'header' ? { after: [headerHousing(use, key)] } : housingChildren(use, key)),
  });
  ctx.report.wrote('connectors');
}

function housingChildren(use: ConnectorUse, key: string): { before: Children; after: Children } {
  const { connector } = use.resolved;
  return {
    before: [refs('ComponentConnector', componentConnectorId(connector.id))],
    after: [slotReference(use, key)],
  };
}

function slotReference(use: ConnectorUse, key: string): XmlElement | undefined {
  const { connector } = use.resolved;
  const cavities = cavitiesOf(use);
  if (cavities.length === 0) return undefined;
  return node('SlotReference', { id: slotRefId(connector.id), type: 'SlotReference' }, [
    value('Identification', '1'),
    refs('ReferencedSlot', partIds(key).slot),
    cavities.map((c) => {
      const id = cavityRefId(connector.id, c.cavity);
      return node('CavityReference', { id }, [
        properties(id, [
          ...(c.state === 'wired' || c.state === 'undeclared' ? [] : [['state', c.state] as const]),
          ...(c.entry ? otherFields(c.entry, PLACED_OF_CAVITY) : []),
        ]),
        value('Identification', c.cavity),
        refs('ComponentPort', portId(connector.id, c.cavity)),
        refs('ReferencedCavity', partIds(key).cavity(c.cavity)),
      ]);
    }),
  ]);
}

/** A header as a component: the housing that it contains, with its pins. Positions closed as a key have none. */
function headerHousing(use: ConnectorUse, key: string): XmlElement {
  const { connector, part } = use.resolved;
  const ids = partIds(key);
  const keyed = new Set(part?.keyPositions);
  const id = pieceIds.connector(connector.id);
  return node('HousingComponentRef', { id: `${id}_component` }, [
    value('Identification', '1'),
    refs('ComponentConnector', componentConnectorId(connector.id)),
    refs('HousingComponent', ids.housingComponent),
    node('ConnectorHousingRole', { id: housingRoleId(connector.id) }, [
      value('Identification', connector.designator),
      refs('ComponentConnector', componentConnectorId(connector.id)),
      refs('ConnectorHousingSpecification', ids.housing),
      slotReference(use, key),
    ]),
    cavitiesOf(use)
      .filter((c) => !keyed.has(c.cavity))
      .map((c) =>
        node('PinComponentRef', { id: `${pinRoleId(connector.id, c.cavity)}_ref` }, [
          value('Identification', c.cavity),
          refs('PinComponent', ids.pinComponent(c.cavity)),
          node('TerminalRole', { id: pinRoleId(connector.id, c.cavity), type: 'PluggableTerminalRole' }, [
            value('Identification', c.cavity),
            refs('TerminalSpecification', ids.pin),
          ]),
        ]),
      ),
  ]);
}
