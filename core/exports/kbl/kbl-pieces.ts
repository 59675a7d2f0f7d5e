import { PART_KIND_NAMES, type Part, type PartKind } from '../../model/parts/part';
import type { Fitted } from '../exchange/fitted';
import { otherFields, type FieldText } from '../exchange/field-text';
import { pieceIds } from '../exchange/object-ids';
import type { KblContext } from './kbl-context';
import { partId, placedFieldsOf } from './kbl-part-shape';
import { addPart } from './kbl-parts';
import { element, installation, value, type Children } from './kbl-values';

/** How the use of a part of a kind is written, and as what the part itself is. */
const ELEMENTS: Readonly<Partial<Record<PartKind, { part: string; occurrence: string; type?: string }>>> = {
  contact: { part: 'General_terminal', occurrence: 'Terminal_occurrence' },
  terminal: { part: 'General_terminal', occurrence: 'Terminal_occurrence' },
  splice: { part: 'General_terminal', occurrence: 'Terminal_occurrence' },
  'cavity-plug': { part: 'Cavity_plug', occurrence: 'Cavity_plug_occurrence' },
  'wire-seal': { part: 'Cavity_seal', occurrence: 'Cavity_seal_occurrence' },
  covering: { part: 'Wire_protection', occurrence: 'Wire_protection_occurrence' },
  grommet: { part: 'Fixing', occurrence: 'Fixing_occurrence' },
  clamp: { part: 'Fixing', occurrence: 'Fixing_occurrence' },
  tie: { part: 'Fixing', occurrence: 'Fixing_occurrence' },
  fuse: { part: 'Component', occurrence: 'Component_occurrence', type: 'Fuse' },
};
const ACCESSORY = { part: 'Accessory', occurrence: 'Accessory_occurrence' } as const;

/** One use of a part. */
export interface Piece {
  readonly id: string;
  readonly name: string;
  readonly kind: PartKind;
  readonly part: Part | undefined;
  readonly fields?: readonly FieldText[];
  /** Children in front of the reference to the part. */
  readonly before?: Children;
  /** What an accessory belongs to. Only accessories have a reference for it. */
  readonly at?: string | undefined;
}

/** Writes a use with its part; a part that was not chosen is one without a number. */
export function addPiece(ctx: KblContext, piece: Piece): void {
  const { id, kind } = piece;
  const shape: { part: string; occurrence: string; type?: string } = ELEMENTS[kind] ?? ACCESSORY;
  const key = keyOf(ctx, piece, shape);
  const type = shape.type === undefined ? {} : { type: `${shape.type}_occurrence` };
  ctx.harnessParts.add(
    element(shape.occurrence, { id, ...type }, [
      value('Id', ctx.names(shape.occurrence).give(piece.name, id)),
      piece.before ? [...piece.before.flat()] : undefined,
      value('Part', partId(key)),
      shape === ACCESSORY ? value('Reference_element', piece.at) : undefined,
      installation(id, piece.fields ?? []),
    ]),
  );
}

export const addFitted = (ctx: KblContext, { name, kind, part, connector }: Fitted, id: string): void =>
  addPiece(ctx, { id, name, kind, part, at: pieceIds.connector(connector) });

/** The part if it is of the kind that is needed, else one that says what is missing. */
function keyOf(ctx: KblContext, { kind, part, name }: Piece, shape: { part: string; type?: string }): string {
  const isOddAccessory = shape === ACCESSORY && part?.kind === kind && !ACCESSORIES.has(kind);
  if (part?.kind === kind && !isOddAccessory) return part.id;
  const type = shape.type === undefined ? {} : { type: shape.type };
  const common = { element: shape.part, ...type, children: [] };
  if (part && isOddAccessory) {
    const key = `${part.id} accessory`;
    addPart(ctx, part, {
      ...common,
      key,
      partNumber: part.partNumber,
      fields: otherFields(part, placedFieldsOf(part.kind)),
    });
    return key;
  }
  if (part)
    ctx.report.lose(
      name,
      `its part ${part.partNumber} is a ${PART_KIND_NAMES[part.kind]} record, not one of a ${PART_KIND_NAMES[kind]}`,
    );
  const key = `no-${kind}`;
  addPart(ctx, undefined, { ...common, key, partNumber: '/NULL', fields: [['kind', kind]] });
  return key;
}

/** Kinds that are accessories by nature; any other may be fitted to a connector as one. */
const ACCESSORIES: ReadonlySet<PartKind> = new Set(['secondary-lock', 'strain-relief', 'label']);
