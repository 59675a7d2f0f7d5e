import type { Part, PartKind } from '../../model/parts/part';
import { PART_KIND_NAMES } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';
import type { FieldText } from '../exchange/field-text';
import { iriOf } from '../exchange/xml-id';
import type { Supply } from '../parts/part-lines';
import type { XmlElement } from '../xml/xml';
import { partIds, partShape, placementType } from './part-shape';
import type { PartShape, VecContext } from './vec-context';
import { node, properties, refs, value, type Children } from './vec-values';

/** One use of a part. */
export interface Piece {
  readonly id: string;
  readonly name: string;
  /** The UUID of our object, where the piece stands for just one. */
  readonly object?: string | undefined;
  readonly kind: PartKind;
  readonly part: Part | undefined;
  /** Key of the specifications where it is not the id of the part. */
  readonly specKey?: string | undefined;
  readonly supply: Supply;
  readonly fields?: readonly FieldText[] | undefined;
  readonly description?: string | undefined;
  readonly notes?: readonly (string | undefined)[] | undefined;
  /** The piece that it is fitted to or marks. */
  readonly at?: string | undefined;
  /** It is fitted as an accessory, whatever kind of part it is. */
  readonly isAccessory?: boolean;
  /** It has a place of its own on the topology. */
  readonly isPlaced?: boolean;
  /** Children of the role, before and behind the reference to the specification. */
  readonly before?: Children;
  readonly after?: Children;
  /** Named in the report where the part is of another kind than the object needs. */
  readonly ref?: ObjectRef;
}

export const roleId = (pieceId: string): string => `${pieceId}_role`;
export const placeableId = (pieceId: string): string => `${pieceId}_placeable`;

/**
 * Writes a use: as an occurrence of its part or, where none was chosen, as a usage, which in VEC states what a part must be.
 * Whatever is bought with the harness goes into the bill of material.
 */
export function addPiece(ctx: VecContext, piece: Piece): void {
  const { id } = piece;
  const name = ctx.names.give(piece.name, id);
  const part = fittingPart(ctx, piece);
  const shape = shapeOf(piece, part);
  const key = piece.specKey ?? part?.id ?? `no-${piece.kind}`;
  if (!part && piece.specKey === undefined && !ctx.unchosen.has(key))
    ctx.unchosen.set(key, unchosenSpecs(key, piece.kind, shape));
  const children: Children = [
    properties(id, piece.fields ?? []),
    value('Identification', name),
    ctx.values.text('Description', id, piece.description),
    refs('ReferenceElement', piece.at),
    (piece.notes ?? []).map((note, i) =>
      ctx.values.instruction('InstallationInstruction', `${id}_Note_${i + 1}`, note),
    ),
    piece.isPlaced ? placeableRole(id, key) : undefined,
    role(piece, key, name, shape),
  ];
  const iri = piece.object === undefined ? undefined : iriOf(piece.object);
  if (part)
    ctx.components.push(node('Component', { id, iri }, [...children, refs('Part', partIds(key).version)]));
  else
    ctx.usages.push(
      node('PartUsage', { id, iri }, [
        ...children,
        value('PrimaryPartUsageType', shape.primary),
        refs('PartOrUsageRelatedSpecification', specificationOf(key, shape)),
      ]),
    );
  if (piece.supply === 'harness') ctx.billOfMaterial.push(id);
}

/** The part if it is of the kind that the object needs. */
function fittingPart(ctx: VecContext, piece: Piece): Part | undefined {
  const { part, kind } = piece;
  if (!part || (part.kind === kind && kind !== 'tool')) return part;
  if (part.kind === 'tool') {
    ctx.report.lose(piece.name, `the tool ${part.partNumber} is no part of a product`, piece.ref);
    return undefined;
  }
  ctx.report.lose(
    piece.name,
    `its part ${part.partNumber} is a ${PART_KIND_NAMES[part.kind]} record, not one of a ${PART_KIND_NAMES[kind]}`,
    piece.ref,
  );
  return undefined;
}

/** An accessory plays a role in words: its own types would claim more, a wire end or a cavity. */
function shapeOf({ kind, isAccessory }: Piece, part: Part | undefined): PartShape {
  const shape = part ? partShape(part.kind, part) : unchosenShape(kind);
  return isAccessory ? { ...shape, role: 'SpecificRole', reference: 'Specification' } : shape;
}

const unchosenShape = (kind: PartKind): PartShape =>
  kind === 'covering'
    ? {
        ...partShape(kind, undefined),
        primary: 'WireProtection',
        specification: 'WireProtectionSpecification',
        role: 'WireProtectionRole',
      }
    : partShape(kind, undefined);

/** A housing stands under an id of its own; a role in words refers to what is known of the part in general. */
function specificationOf(key: string, { role: type, specification }: PartShape): string {
  const ids = partIds(key);
  if (type === 'ConnectorHousingRole') return ids.housing;
  return type === 'SpecificRole' && specification !== 'PartOrUsageRelatedSpecification'
    ? ids.general
    : ids.main;
}

function unchosenSpecs(key: string, kind: PartKind, shape: PartShape): XmlElement[] {
  const ids = partIds(key);
  const text = `no ${PART_KIND_NAMES[kind]} chosen`;
  const placement = placementType(kind);
  return [
    node('Specification', { id: ids.main, type: shape.specification }, [value('Identification', text)]),
    ...(placement
      ? [
          node('Specification', { id: ids.placeable, type: 'PlaceableElementSpecification' }, [
            value('Identification', text),
            value('ValidPlacementTypes', placement),
          ]),
        ]
      : []),
  ];
}

const placeableRole = (id: string, key: string): XmlElement =>
  node('Role', { id: placeableId(id), type: 'PlaceableElementRole' }, [
    value('Identification', 'placement'),
    refs('PlaceableElementSpecification', partIds(key).placeable),
  ]);

function role(piece: Piece, key: string, name: string, shape: PartShape): XmlElement {
  const isSpecific = shape.role === 'SpecificRole';
  return node('Role', { id: roleId(piece.id), type: shape.role }, [
    value('Identification', name),
    isSpecific ? value('SpecificRoleType', piece.kind) : undefined,
    ...(piece.before ?? []),
    refs(shape.reference, specificationOf(key, shape)),
    ...(piece.after ?? []),
  ]);
}
