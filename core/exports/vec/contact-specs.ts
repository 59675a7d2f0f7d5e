import type { CavityPlugPart, SplicePart, TerminalPart, WireSealPart } from '../../model/parts/accessories';
import type { ContactPart } from '../../model/parts/contact';
import type { z } from 'zod';
import { FINISH_SYMBOL } from '../exchange/finish-symbol';
import type { XmlElement } from '../xml/xml';
import { crimpDetails } from './crimp-details';
import { partIds, partShape } from './part-shape';
import type { VecContext } from './vec-context';
import { material, node, refs, value } from './vec-values';

export const PLACED_OF_CONTACT: readonly string[] = [
  'series', 'contactKind', 'areaMinMm2', 'areaMaxMm2', 'insulationMinMm', 'insulationMaxMm', 'finish', 'currentMaxA',
]; // prettier-ignore
export const PLACED_OF_TERMINAL: readonly string[] = ['areaMinMm2', 'areaMaxMm2', 'insulationMaxMm'];
export const PLACED_OF_SPLICE: readonly string[] = ['areaMinMm2', 'areaMaxMm2'];
export const PLACED_OF_CAVITY_PART: readonly string[] = ['fitsSeries', 'odMinMm', 'odMaxMm'];

/** A crimp contact: its mating side, its barrel and the crimps that are stated for wire of this file. */
export function contactSpecs(ctx: VecContext, key: string, part: ContactPart): XmlElement[] {
  const ids = partIds(key);
  const reception = ids.of('reception-type');
  const current = `${ids.main}_Current`;
  const { values } = ctx;
  return [
    node('Specification', { id: reception, type: 'TerminalReceptionSpecification' }, [
      value('Identification', `${part.partNumber} mating side`),
      material('PlatingMaterial', reception, part.finish && FINISH_SYMBOL[part.finish], 'chemical symbol'),
      part.series === undefined
        ? undefined
        : node('TerminalType', { id: `${reception}_Type` }, [value('Name', part.series)]),
    ]),
    barrelSpec(ctx, key, part, [part.insulationMinMm, part.insulationMaxMm], crimpDetails(ctx, key, part)),
    node('Specification', { id: ids.main, type: 'PluggableTerminalSpecification' }, [
      value('Identification', part.partNumber),
      refs('DescribedPart', ids.version),
      part.currentMaxA === undefined
        ? undefined
        : node('CurrentInformation', { id: current }, [
            values.range('CurrentRange', current, undefined, part.currentMaxA, 'A'),
            values.mandatoryNumber('NominalVoltage', current, undefined, 'V'),
            values.mandatoryNumber('CoreCrossSectionArea', current, undefined, 'mm2'),
          ]),
      node('TerminalReception', { id: ids.of('reception') }, [
        value('Identification', 'mating side'),
        value('Gender', part.contactKind && { pin: 'Male', socket: 'Female' }[part.contactKind]),
        refs('TerminalReceptionSpecification', reception),
      ]),
      barrel(key),
      value('TerminalType', 'Standard'),
    ]),
  ];
}

/** Ring, ferrule, blade or splice: a terminal whose only side is that of the wire. */
export function jointSpecs(
  ctx: VecContext,
  key: string,
  part: z.infer<typeof SplicePart> | z.infer<typeof TerminalPart>,
): XmlElement[] {
  const ids = partIds(key);
  const type = partShape(part.kind, part).specification;
  const insulation = part.kind === 'terminal' ? part.insulationMaxMm : undefined;
  const isRing = part.kind === 'terminal' && part.form === 'ring';
  return [
    barrelSpec(ctx, key, part, [undefined, insulation], []),
    node('Specification', { id: ids.main, type }, [
      value('Identification', part.partNumber),
      refs('DescribedPart', ids.version),
      barrel(key),
      isRing ? ctx.values.number('BoltDiameter', ids.main, part.studMm, 'mm') : undefined,
    ]),
  ];
}

const barrel = (key: string): XmlElement =>
  node('WireReception', { id: partIds(key).of('barrel') }, [
    value('Identification', 'wire side'),
    refs('WireReceptionSpecification', partIds(key).of('barrel-type')),
  ]);

function barrelSpec(
  { values }: VecContext,
  key: string,
  part: {
    readonly partNumber: string;
    readonly areaMinMm2?: number | undefined;
    readonly areaMaxMm2?: number | undefined;
  },
  [insulationMin, insulationMax]: readonly [number | undefined, number | undefined],
  details: readonly XmlElement[],
): XmlElement {
  const id = partIds(key).of('barrel-type');
  return node('Specification', { id, type: 'WireReceptionSpecification' }, [
    value('Identification', `${part.partNumber} wire side`),
    values.range('CoreCrossSectionArea', id, part.areaMinMm2, part.areaMaxMm2, 'mm2'),
    value('WireReceptionType', 'Crimp'),
    values.range('WireElementOutsideDiameter', id, insulationMin, insulationMax, 'mm'),
    details,
  ]);
}

/** A seal on a wire, or a plug in a cavity. */
export function cavityPartSpecs(
  ctx: VecContext,
  key: string,
  part: z.infer<typeof CavityPlugPart> | WireSealPart,
): XmlElement[] {
  const ids = partIds(key);
  return [
    node('Specification', { id: ids.main, type: partShape(part.kind, part).specification }, [
      value('Identification', part.partNumber),
      refs('DescribedPart', ids.version),
      (part.fitsSeries ?? []).map((series, i) =>
        node('CompatibleTerminalType', { id: `${ids.main}_Series_${i + 1}` }, [value('Name', series)]),
      ),
      part.kind === 'wire-seal'
        ? ctx.values.range('WireElementOutsideDiameter', ids.main, part.odMinMm, part.odMaxMm, 'mm')
        : undefined,
    ]),
  ];
}
