import type { Colour } from '../../model/colour';
import { wireSizeText } from '../../model/wire-size';
import type { Conductor, WirePart } from '../../model/parts/wire';
import { conductorAreaMm2 } from '../exchange/conductor-area';
import { otherFields } from '../exchange/field-text';
import type { WireVariant } from '../exchange/wire-variants';
import type { XmlElement } from '../xml/xml';
import { partIds } from './part-shape';
import type { VecContext } from './vec-context';
import { colour, material, node, properties, refs, value } from './vec-values';

export const PLACED_OF_WIRE: readonly string[] = [
  'size', 'areaMm2', 'stranding', 'odMm', 'odMinMm', 'odMaxMm', 'conductorFinish', 'resistanceOhmPerKm', 'insulation',
  'voltageMaxV', 'massGPerM',
]; // prettier-ignore

/** A wire: its conductor, its insulation in one colour, and the one element that is made of both. */
export function wireSpecs(ctx: VecContext, variant: WireVariant): XmlElement[] {
  const { key, part } = variant;
  const partNumber = part ? variant.partNumber : key;
  const ids = partIds(key);
  return [
    ...(part ? [conductorSpec(ctx, ids.coreSpecification(''), `${partNumber} conductor`, part, part)] : []),
    insulationSpec(ids.of('insulation'), `${partNumber} insulation`, variant.colour, part?.insulation),
    elementSpec(ctx, {
      id: ids.of('element-type'),
      name: `${partNumber} element`,
      conductor: part,
      conductorId: part && ids.coreSpecification(''),
      insulationId: ids.of('insulation'),
      inner: [],
    }),
    node('Specification', { id: ids.main, type: 'WireSpecification' }, [
      value('Identification', partNumber),
      refs('DescribedPart', part && ids.version),
      refs('WireElementSpecification', ids.of('element-type')),
      node('WireElement', { id: ids.element }, [
        value('Identification', '1'),
        refs('WireElementSpecification', ids.of('element-type')),
      ]),
    ]),
  ];
}

/** Area, strands, plating, resistance. The material is not in our records, so none is claimed. */
export function conductorSpec(
  { values }: VecContext,
  id: string,
  name: string,
  conductor: Conductor,
  wire?: WirePart,
): XmlElement {
  const { size, stranding, conductorFinish: finish } = conductor;
  const plating = { bare: undefined, tin: 'Sn', silver: 'Ag', nickel: 'Ni' };
  return node('Specification', { id, type: 'CoreSpecification' }, [
    properties(id, [
      ['size', wireSizeText(size)],
      ...(finish === 'bare' ? [['conductorFinish', finish] as const] : []),
    ]),
    value('Identification', name),
    values.number('CrossSectionArea', id, conductorAreaMm2(conductor), 'mm2'),
    wire?.massGPerM === undefined
      ? undefined
      : node('MassInformation', { id: `${id}_Mass` }, [
          values.number('Value', `${id}_Mass`, wire.massGPerM, 'gPerM'),
        ]),
    values.number('Resistance', id, conductor.resistanceOhmPerKm, 'ohmPerKm'),
    value('Type', stranding && (stranding.strands > 1 ? 'Stranded' : 'Rigid')),
    values.number('NumberOfStrands', id, stranding?.strands, 'piece'),
    material('PlatingMaterial', id, finish && plating[finish], 'chemical symbol'),
    values.number('StrandDiameter', id, stranding?.strandDiameterMm, 'mm'),
    values.number('VoltageRange', id, wire?.voltageMaxV, 'V'),
  ]);
}

export const insulationSpec = (
  id: string,
  name: string,
  { base, stripes = [] }: Partial<Colour> = {},
  insulation?: string,
): XmlElement =>
  node('Specification', { id, type: 'InsulationSpecification' }, [
    properties(id, stripes.length > 2 ? [['furtherStripes', stripes.slice(2).join('/')]] : []),
    value('Identification', name),
    colour('BaseColor', id, base),
    colour('FirstIdentificationColor', id, stripes[0]),
    colour('SecondIdentificationColor', id, stripes[1]),
    material('Material', id, insulation, '/NULL'),
  ]);

export interface ElementShape {
  readonly id: string;
  readonly name: string;
  readonly conductor: Pick<Conductor, 'odMm' | 'odMinMm' | 'odMaxMm'> | undefined;
  readonly conductorId: string | undefined;
  readonly insulationId: string | undefined;
  readonly inner: readonly string[];
}

export function elementSpec({ values }: VecContext, shape: ElementShape): XmlElement {
  const { odMm, odMinMm, odMaxMm } = shape.conductor ?? {};
  const minus = odMm !== undefined && odMinMm !== undefined ? odMm - odMinMm : undefined;
  const plus = odMm !== undefined && odMaxMm !== undefined ? odMaxMm - odMm : undefined;
  const limits = odMm === undefined && shape.conductor ? { odMinMm, odMaxMm } : {};
  return node('Specification', { id: shape.id, type: 'WireElementSpecification' }, [
    properties(shape.id, otherFields(limits, new Set())),
    value('Identification', shape.name),
    values.number('OutsideDiameter', shape.id, odMm, 'mm', { minus, plus }),
    refs('ConductorSpecification', shape.conductorId),
    refs('InsulationSpecification', shape.insulationId),
    refs('SubWireElementSpecification', shape.inner),
  ]);
}
