import { otherFields } from '../exchange/field-text';
import { PLACED_OF_DIMENSION } from '../exchange/placed-fields';
import { pairsOf, placeOfDatum } from '../exchange/datum-place';
import type { UniqueNames } from '../exchange/unique-names';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { location } from './location';
import type { VecContext } from './vec-context';
import { node, properties, refs, tolerance, value } from './vec-values';

/**
 * One dimension of VEC for each measure of a chain or baseline. The value is left to the topology, as it is here: a
 * dimension without one states the tolerance of a distance that lengths and places define.
 */
export function dimensions(ctx: VecContext, names: UniqueNames): XmlElement[] {
  const { project } = ctx.harness;
  return project.dimensions.flatMap((d, number) => {
    ctx.report.wrote('dimensions');
    return pairsOf(d).flatMap(([reference, other], i) => {
      const id = xmlId('D', d.id, String(i + 1));
      const name = names.give(`dimension ${number + 1}.${i + 1}`, id);
      const places = [placeOfDatum(ctx.harness, reference), placeOfDatum(ctx.harness, other)];
      const [from, to] = places;
      if (!from || !to) {
        ctx.report.lose(name, 'it is measured at a connector that has no node: not written');
        return [];
      }
      return node('Dimension', { id }, [
        properties(id, otherFields(d, PLACED_OF_DIMENSION)),
        value('Identification', name),
        refs('DimensionAnchor', `${id}_to`),
        refs('ReferenceAnchor', `${id}_from`),
        refs('UnitComponent', ctx.units.id('mm')),
        location(ctx, 'DefinedLocations', `${id}_from`, names.give(`${name} from`, id), from),
        location(ctx, 'DefinedLocations', `${id}_to`, names.give(`${name} to`, id), to),
        tolerance('Tolerance', `${id}_tolerance`, { minus: d.minusMm, plus: d.plusMm }),
      ]);
    });
  });
}
