import type { Part } from '../../model/parts/part';
import { coreNamesOf } from '../exchange/core-names';
import { otherFields } from '../exchange/field-text';
import { iriOf } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { cableSpecs, PLACED_OF_CABLE } from './cable-specs';
import { connectorSpecs, PLACED_OF_HALF } from './connector-specs';
import {
  cavityPartSpecs,
  contactSpecs,
  jointSpecs,
  PLACED_OF_CAVITY_PART,
  PLACED_OF_CONTACT,
  PLACED_OF_SPLICE,
  PLACED_OF_TERMINAL,
} from './contact-specs';
import { partRelations } from './part-relations';
import { partIds, partShape, placementType, specialPartType } from './part-shape';
import { PLACED_OF_ROUTE_PART, routePartSpecs } from './route-part-specs';
import type { VecContext } from './vec-context';
import { node, properties, refs, value } from './vec-values';
import { PLACED_OF_WIRE } from './wire-specs';

/** Fields of every part that stand elsewhere, and the offers, which are between the buyer and the supplier. */
const PLACED_OF_PART = [
  'id',
  'kind',
  'maker',
  'partNumber',
  'description',
  'massG',
  'temperatureMaxC',
  'offers',
] as const;

/** The fields of a part that have an element of their own in VEC, or stay out on purpose. */
export function placedFieldsOf(kind: Part['kind']): ReadonlySet<string> {
  return new Set([...PLACED_OF_PART, ...placedOfKind(kind)]);
}

function placedOfKind(kind: Part['kind']): readonly string[] {
  switch (kind) {
    case 'housing':
    case 'header':
      return PLACED_OF_HALF;
    case 'contact':
      return PLACED_OF_CONTACT;
    case 'wire':
      return PLACED_OF_WIRE;
    case 'cable':
      return PLACED_OF_CABLE;
    case 'splice':
      return PLACED_OF_SPLICE;
    case 'terminal':
      return PLACED_OF_TERMINAL;
    case 'cavity-plug':
    case 'wire-seal':
      return PLACED_OF_CAVITY_PART;
    case 'secondary-lock':
    case 'strain-relief':
    case 'tool':
      return [];
    default:
      return PLACED_OF_ROUTE_PART[kind];
  }
}

/** What is special to the kind of the part: all but wires, whose specifications hang on the colour. */
export function specsOfKind(ctx: VecContext, key: string, part: Part): XmlElement[] {
  switch (part.kind) {
    case 'housing':
    case 'header':
      return connectorSpecs(ctx, key, part);
    case 'contact':
      return contactSpecs(ctx, key, part);
    case 'splice':
    case 'terminal':
      return jointSpecs(ctx, key, part);
    case 'cavity-plug':
    case 'wire-seal':
      return cavityPartSpecs(ctx, key, part);
    case 'wire':
      return [];
    case 'cable':
      return cableSpecs(ctx, key, part, coreNamesOf(ctx.harness, part));
    case 'secondary-lock':
    case 'strain-relief':
    case 'tool':
      return [];
    default:
      return routePartSpecs(ctx, key, part);
  }
}

/** Specifications that parts of any kind have: what is known of it in general, where it may lie, what it is in words. */
export function generalSpecs(ctx: VecContext, key: string, part: Part): XmlElement[] {
  const ids = partIds(key);
  const { values } = ctx;
  const mass = `${ids.general}_Mass`;
  const temperature = `${ids.general}_Temperature`;
  const placement = placementType(part.kind);
  const special = specialPartType(part);
  const described = refs('DescribedPart', ids.version);
  const isOther = partShape(part.kind, part).specification === 'PartOrUsageRelatedSpecification';
  return [
    node('Specification', { id: ids.general, type: 'GeneralTechnicalPartSpecification' }, [
      properties(ids.general, otherFields(part, placedFieldsOf(part.kind))),
      value('Identification', part.partNumber),
      described,
      part.massG === undefined
        ? undefined
        : node('MassInformation', { id: mass }, [values.number('Value', mass, part.massG, 'g')]),
      part.temperatureMaxC === undefined
        ? undefined
        : node('TemperatureInformation', { id: temperature }, [
            values.range('TemperatureRange', temperature, undefined, part.temperatureMaxC, 'degC'),
            value('TemperatureType', 'OperatingTemperature'),
          ]),
      partRelations(ctx, part),
    ]),
    ...(placement
      ? [
          node('Specification', { id: ids.placeable, type: 'PlaceableElementSpecification' }, [
            value('Identification', part.partNumber),
            described,
            value('ValidPlacementTypes', placement),
          ]),
        ]
      : []),
    ...(special !== undefined || isOther
      ? [
          node(
            'Specification',
            { id: isOther ? ids.main : ids.special, type: 'PartOrUsageRelatedSpecification' },
            [
              value('Identification', `${part.partNumber} kind`),
              value('SpecialPartType', special ?? part.kind),
              described,
            ],
          ),
        ]
      : []),
  ];
}

/** What identifies a part in the file. */
export interface PartName {
  readonly key: string;
  readonly partNumber: string;
  /** Told apart from others of the same maker and number. */
  readonly version: string;
  /** The id of the record, where one element stands for it. */
  readonly iri: string | undefined;
}

/** The identity of a part, and the document that holds what is known of it. */
export function partMaster(
  ctx: VecContext,
  part: Part,
  name: PartName,
  specs: readonly XmlElement[],
): { readonly version: XmlElement; readonly document: XmlElement } {
  const ids = partIds(name.key);
  return {
    version: node('PartVersion', { id: ids.version, iri: name.iri && iriOf(name.iri) }, [
      ctx.values.text('Description', ids.version, part.description),
      value('CompanyName', part.maker),
      value('PartNumber', name.partNumber),
      value('PartVersion', name.version),
      value('PrimaryPartType', partShape(part.kind, part).primary),
      name.partNumber === part.partNumber
        ? undefined
        : node('AliasId', { id: `${ids.version}_Alias` }, [
            value('IdentificationValue', part.partNumber),
            value('Scope', 'part number of the record, in all its colours'),
          ]),
    ]),
    document: node('DocumentVersion', { id: ids.document }, [
      value('CompanyName', part.maker),
      value('DocumentNumber', `PartMaster ${name.partNumber}`),
      value('DocumentType', 'PartMaster'),
      value('DocumentVersion', name.version),
      refs('ReferencedPart', ids.version),
      specs,
    ]),
  };
}
