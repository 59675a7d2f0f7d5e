import { isTwisted } from '../../derive/twist';
import { otherFields } from '../exchange/field-text';
import { PLACED_OF_GROUP } from '../exchange/placed-fields';
import { UniqueNames } from '../exchange/unique-names';
import { iriOf, xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { conductorId } from '../exchange/object-ids';
import type { VecContext } from './vec-context';
import { node, properties, refs, value } from './vec-values';

/** Wires that are twisted or handled together; form, shield ends and the exposed stretch stand as properties. */
export function groupingSpecs(ctx: VecContext): XmlElement[] {
  const { groups } = ctx.harness.project;
  if (groups.length === 0) return [];
  const names = new UniqueNames();
  const twistNames = new UniqueNames();
  ctx.report.wrote('groups', groups.length);
  const twistId = (id: string): string => xmlId('R', id, 'twist');
  return [
    ...groups
      .filter(isTwisted)
      .map((g) =>
        node('Specification', { id: twistId(g.id), type: 'WireGroupSpecification' }, [
          value('Identification', twistNames.give(g.designator, g.id)),
          value('GroupType', 'Twisted'),
          ctx.values.number('LengthOfTwist', twistId(g.id), g.layMm, 'mm'),
        ]),
      ),
    node('Specification', { id: 'Groupings', type: 'WireGroupingSpecification' }, [
      value('Identification', 'GROUPINGS'),
      groups.map((g) => {
        const id = xmlId('R', g.id);
        return node('WireGrouping', { id, iri: iriOf(g.id) }, [
          properties(id, otherFields(g, PLACED_OF_GROUP)),
          value('Identification', names.give(g.designator, g.id)),
          refs('RelatedWireElementReference', [...new Set(g.wires)].map(conductorId)),
          refs('WireGroupSpecification', isTwisted(g) ? twistId(g.id) : undefined),
        ]);
      }),
    ]),
  ];
}
