import { cavityLayoutOf } from '../../derive/cavity-layout';
import type { Harness } from '../../derive/harness';
import type { MatingHalf, Part } from '../../model/parts/part';
import { otherFields, type FieldText } from '../exchange/field-text';
import { FINISH_SYMBOL } from '../exchange/finish-symbol';
import type { XmlElement } from '../xml/xml';
import type { KblContext } from './kbl-context';
import { element, processing, value, type Children } from './kbl-values';
import { cavityId, partId, placedFieldsOf, slotId, type PartShape } from './kbl-part-shape';
import { wirePart } from './kbl-wire-parts';
import { wireVariants } from '../exchange/wire-variants';

/** A part of the container. Without a record it says so: number and maker are not known. */
export function addPart(ctx: KblContext, part: Part | undefined, shape: PartShape): void {
  const id = partId(shape.key);
  if (ctx.partsWritten.has(id)) return;
  ctx.partsWritten.add(id);
  const name = `${shape.element}\n${part?.maker ?? ''}\n${shape.partNumber}`;
  const isFirst = ctx.names('parts').give(name, shape.key) === name;
  const type = shape.type === undefined ? {} : { type: shape.type };
  ctx.container.add(
    element(shape.element, { id, ...type }, [
      value('Part_number', shape.partNumber),
      value('Company_name', part?.maker ?? '/NULL'),
      part && shape.partNumber !== part.partNumber
        ? element('Alias_id', { id: `${id}_alias` }, [
            value('Alias_id', part.partNumber),
            value('Scope', 'part number of the record, in all its colours'),
          ])
        : undefined,
      value('Version', isFirst || !part ? '/NULL' : part.id),
      value('Abbreviation', '/NULL'),
      value('Description', part?.description || '/NULL'),
      part ? ctx.units.number('Mass_information', id, part.massG, 'g') : undefined,
      processing(id, shape.fields),
      ...shape.children,
    ]),
  );
}

/** Every part record that a harness file has a place for. Headers are written where wires end in them, tools never. */
export function addParts(ctx: KblContext): void {
  const { project } = ctx.harness;
  const variants = wireVariants(ctx.harness);
  for (const part of project.parts) {
    if (part.kind === 'header') continue;
    ctx.report.wrote('parts', part.kind === 'tool' ? 0 : 1);
    if (part.kind === 'tool')
      ctx.report.lose(`tool ${part.partNumber}`, 'KBL has no tools', { type: 'part', id: part.id });
    else if (part.kind === 'wire')
      for (const v of variants.filter((w) => w.part === part)) addPart(ctx, part, wirePart(ctx, v));
    else addPart(ctx, part, shapeOf(ctx, part));
  }
}

/** Tells of headers in which no wire ends; to be asked when the connectors are written. */
export function reportHeadersLeftOut(ctx: KblContext): void {
  for (const part of ctx.harness.project.parts)
    if (part.kind === 'header' && !ctx.partsWritten.has(partId(part.id)))
      ctx.report.lose(`header ${part.partNumber}`, 'the half on a board is no part of a harness file', {
        type: 'part',
        id: part.id,
      });
}

/** A part other than wire, as its kind is written. */
export function shapeOf(ctx: KblContext, part: Exclude<Part, { kind: 'wire' | 'tool' }>): PartShape {
  const shape = kindShape(ctx, part);
  return {
    key: part.id,
    partNumber: part.partNumber,
    fields: otherFields(part, placedFieldsOf(part.kind)),
    ...shape,
  };
}

type KindShape = Pick<PartShape, 'element' | 'type' | 'children'>;

function kindShape(ctx: KblContext, part: Exclude<Part, { kind: 'wire' | 'tool' }>): KindShape {
  const id = partId(part.id);
  const { units } = ctx;
  switch (part.kind) {
    case 'housing':
    case 'header':
      return { element: 'Connector_housing', children: housingChildren(ctx.harness, part) };
    case 'contact':
    case 'terminal':
    case 'splice':
      return {
        element: 'General_terminal',
        children: [
          value('Terminal_type', terminalType(part)),
          value(
            'Plating_material',
            part.kind === 'contact' ? part.finish && FINISH_SYMBOL[part.finish] : undefined,
          ),
          units.range('Cross_section_area', id, part.areaMinMm2, part.areaMaxMm2, 'mm2'),
          part.kind === 'splice'
            ? undefined
            : units.range(
                'Outside_diameter',
                id,
                part.kind === 'contact' ? part.insulationMinMm : undefined,
                part.insulationMaxMm,
                'mm',
              ),
        ],
      };
    case 'cable':
      return wirePart(ctx, part);
    case 'cavity-plug':
      return { element: 'Cavity_plug', children: [] };
    case 'wire-seal':
      return {
        element: 'Cavity_seal',
        children: [units.range('Wire_size', id, part.odMinMm, part.odMaxMm, 'mm')],
      };
    case 'covering':
      return {
        element: 'Wire_protection',
        children: [value('Protection_type', part.form)],
      };
    case 'grommet':
    case 'clamp':
    case 'tie':
      return {
        element: 'Fixing',
        children: [value('Fixing_type', { grommet: 'grommet', clamp: 'clamp', tie: 'cable tie' }[part.kind])],
      };
    case 'fuse':
      return {
        element: 'Component',
        type: 'Fuse',
        children: [units.number('Nominal_current', id, part.ratedA, 'A')],
      };
    case 'secondary-lock':
    case 'strain-relief':
    case 'label':
      return { element: 'Accessory', children: [value('Accessory_type', part.kind.replace('-', ' '))] };
  }
}

function terminalType(part: Extract<Part, { kind: 'contact' | 'terminal' | 'splice' }>): string {
  if (part.kind === 'contact') return 'standard';
  if (part.kind === 'splice') return 'splice';
  return part.form === 'ring' ? 'ring terminal' : (part.form ?? 'terminal');
}

/** Coding and slot. A position that is closed as a key has no cavity, unless the project puts something there. */
function housingChildren(harness: Harness, part: MatingHalf): Children {
  const filled = new Set(
    (part.keyPositions?.length ? harness.connectors : [])
      .filter((c) => c.resolved.part === part)
      .flatMap((c) => c.cavities.filter((u) => u.ends.length > 0 || u.entry).map((u) => u.cavity)),
  );
  const cavities = cavityLayoutOf(part)
    .places.map((p) => p.cavity)
    .filter((c) => !part.keyPositions?.includes(c) || filled.has(c));
  return [value('Housing_code', part.keying), slotElement(part.id, part.ways, cavities)];
}

/** The one slot of a housing with its cavities. */
export function slotElement(
  key: string,
  count: number,
  cavities: readonly string[],
  more: readonly FieldText[] = [],
): XmlElement | undefined {
  if (cavities.length === 0) return undefined;
  return element('Slots', { id: slotId(key), type: 'Slot' }, [
    value('Id', '1'),
    value('Number_of_cavities', count),
    cavities.map((c) => element('Cavities', { id: cavityId(key, c) }, [value('Cavity_number', c)])),
    processing(slotId(key), more),
  ]);
}
