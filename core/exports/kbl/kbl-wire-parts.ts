import type { Colour } from '../../model/colour';
import { wireSizeText } from '../../model/wire-size';
import type { CablePart } from '../../model/parts/wire';
import { coreNamesOf, type CoreName } from '../exchange/core-names';
import { conductorAreaMm2 } from '../exchange/conductor-area';
import { otherFields } from '../exchange/field-text';
import type { WireVariant } from '../exchange/wire-variants';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import type { KblContext } from './kbl-context';
import { placedFieldsOf, partId, type PartShape } from './kbl-part-shape';
import { element, field, processing, value } from './kbl-values';

/** A wire in one colour, or a cable with its cores. */
export function wirePart(ctx: KblContext, of: WireVariant | CablePart): PartShape {
  return 'kind' in of ? cable(ctx, of) : wire(ctx, of);
}

function wire(ctx: KblContext, { key, part, colour, partNumber }: WireVariant): PartShape {
  const id = partId(key);
  return {
    element: 'General_wire',
    key,
    partNumber,
    fields: [...(part ? otherFields(part, placedFieldsOf('wire')) : []), ...furtherStripes(colour)],
    children: [
      value('Cable_designator', part && wireSizeText(part.size)),
      value('Wire_type', part?.style),
      ctx.units.number('Cross_section_area', id, part && conductorAreaMm2(part), 'mm2'),
      ctx.units.number('Outside_diameter', id, part?.odMm, 'mm'),
      colours('Cover_colour', id, colour),
    ],
  };
}

function cable(ctx: KblContext, part: CablePart): PartShape {
  const id = partId(part.id);
  return {
    element: 'General_wire',
    key: part.id,
    partNumber: part.partNumber,
    fields: otherFields(part, placedFieldsOf('cable')),
    children: [
      value('Wire_type', part.style),
      ctx.units.number('Outside_diameter', id, part.odMm, 'mm'),
      coreElements(ctx, part.id, coreNamesOf(ctx.harness, part)),
      colours('Cover_colour', id, part.jacketColour),
    ],
  };
}

export const coreId = (key: string, core: string): string => xmlId('P', key, 'core', core);

/** The cores of a cable; a name that only wires of the project use has neither area nor colour. */
export const coreElements = (ctx: KblContext, key: string, cores: readonly CoreName[]): XmlElement[] =>
  cores.map(({ key: name, unique, core }) => {
    const id = coreId(key, name);
    const rest = core ? otherFields(core, PLACED_OF_CORE) : [];
    return element('Core', { id }, [
      value('Id', unique),
      value('Cable_designator', core && wireSizeText(core.size)),
      ctx.units.mandatoryNumber('Cross_section_area', id, core && conductorAreaMm2(core), 'mm2'),
      ctx.units.number('Outside_diameter', id, core?.odMm, 'mm'),
      colours('Core_colour', id, core?.colour),
      processing(id, [...rest, ...furtherStripes(core?.colour)]),
    ]);
  });

const PLACED_OF_CORE: ReadonlySet<string> = new Set(['name', 'colour', 'size', 'areaMm2', 'odMm']);

const TYPES = ['base colour', 'first identification', 'second identification'] as const;

/** Base and stripes apart. The schema wants one at least: not known where none is chosen. */
export const colours = (name: string, holder: string, colour: Colour | undefined): XmlElement[] =>
  (colour ? [colour.base, ...(colour.stripes ?? [])].slice(0, TYPES.length) : ['/NULL']).map((code, i) =>
    element(name, { id: `${holder}_${name}_${i + 1}` }, [
      value('Colour_type', TYPES[i]),
      value('Colour_value', code),
    ]),
  );

const furtherStripes = (colour: Colour | undefined) =>
  field('furtherStripes', colour?.stripes?.slice(TYPES.length - 1).join('/'));
