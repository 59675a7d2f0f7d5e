import { fieldText } from '../exchange/field-text';
import { wireVariants } from '../exchange/wire-variants';
import { xmlId } from '../exchange/xml-id';
import { wireSizeText } from '../../model/wire-size';
import type { ContactPart } from '../../model/parts/contact';
import type { XmlElement } from '../xml/xml';
import { partIds } from './part-shape';
import type { VecContext } from './vec-context';
import { node, properties, refs } from './vec-values';

/** Id of a crimp tool: crimps name it by its part number. */
export const toolId = (partNumber = ''): string => xmlId('Tool', partNumber);

/**
 * Crimp heights and tools. VEC states a crimp for a conductor, our record for a wire size: one detail for each wire of this
 * file that has the size. The stated source and pull force have no element and stand beside it as properties.
 */
export function crimpDetails(ctx: VecContext, key: string, part: ContactPart): XmlElement[] {
  const variants = wireVariants(ctx.harness);
  return (part.crimps ?? []).flatMap((crimp, i) =>
    variants.flatMap(({ key: wireKey, part: wire }) => {
      if (!wire || wireSizeText(wire.size) !== wireSizeText(crimp.size)) return [];
      if (crimp.wirePart !== undefined && crimp.wirePart !== wire.partNumber) return [];
      const id = xmlId('P', key, 'crimp', String(i + 1), wireKey);
      const rest = (
        [
          ['heightToleranceMm', crimp.heightToleranceMm],
          ['pullForceMinN', crimp.pullForceMinN],
          ['die', crimp.die],
          ['tool', toolForm(ctx, crimp.tool) ? undefined : crimp.tool],
          ['source', crimp.source],
        ] as const
      ).flatMap(([k, v]) => (v === undefined ? [] : [[k, fieldText(v)] as const]));
      const insulation = `${id}_Insulation`;
      return node('CoreCrimpDetails', { id }, [
        properties(id, rest),
        size(ctx, id, crimp.widthMm, crimp.heightMm),
        refs('MachineCrimpTool', toolForm(ctx, crimp.tool) === 'press' ? toolId(crimp.tool) : undefined),
        refs('ManualCrimpTool', toolForm(ctx, crimp.tool) === 'hand' ? toolId(crimp.tool) : undefined),
        refs('AppliesTo', partIds(wireKey).coreSpecification('')),
        crimp.insulationHeightMm === undefined
          ? undefined
          : node('InsulationCrimpDetails', { id: insulation }, [
              size(ctx, insulation, undefined, crimp.insulationHeightMm),
              refs('AppliesTo', partIds(wireKey).of('insulation')),
            ]),
      ]);
    }),
  );
}

/** Whether a named tool is a hand tool or a press; undefined where the project has no record that says so. */
function toolForm(ctx: VecContext, name: string | undefined): 'hand' | 'press' | undefined {
  const tool = ctx.harness.project.parts.find((p) => p.kind === 'tool' && p.partNumber === name);
  return tool?.kind === 'tool' && (tool.form === 'hand' || tool.form === 'press') ? tool.form : undefined;
}

function size(
  { values }: VecContext,
  holder: string,
  widthMm: number | undefined,
  heightMm: number | undefined,
): XmlElement | undefined {
  if (widthMm === undefined && heightMm === undefined) return undefined;
  const id = `${holder}_Size`;
  return node('Size', { id }, [
    values.mandatoryNumber('Width', id, widthMm, 'mm'),
    values.mandatoryNumber('Height', id, heightMm, 'mm'),
  ]);
}
