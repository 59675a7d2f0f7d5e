import type { Part } from '../../model/parts/part';
import type { XmlElement } from '../xml/xml';
import { partIds, partShape } from './part-shape';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

type RoutePart = Extract<Part, { kind: 'covering' | 'grommet' | 'clamp' | 'tie' | 'label' | 'fuse' }>;

/** What has an element of its own here, by kind. */
export const PLACED_OF_ROUTE_PART: Readonly<Record<RoutePart['kind'], readonly string[]>> = {
  covering: ['wallMm'],
  grommet: ['boreMinMm', 'boreMaxMm'],
  clamp: [],
  tie: [],
  label: [],
  fuse: ['ratedA', 'voltageMaxV'],
};

/** Coverings, grommets, clamps, ties, labels, fuses: what lies on the way. */
export function routePartSpecs(ctx: VecContext, key: string, part: RoutePart): XmlElement[] {
  const ids = partIds(key);
  const leadThrough = ids.of('lead-through');
  const hasBore = part.kind === 'grommet' && (part.boreMinMm !== undefined || part.boreMaxMm !== undefined);
  const main = node('Specification', { id: ids.main, type: partShape(part.kind, part).specification }, [
    value('Identification', part.partNumber || '/NULL'),
    refs('DescribedPart', ids.version),
    ownElements(ctx, ids.main, part),
    hasBore
      ? node('CableLeadThrough', { id: `${leadThrough}_1` }, [
          value('Identification', '1'),
          refs('CableLeadThroughSpecification', leadThrough),
        ])
      : undefined,
  ]);
  if (!hasBore) return [main];
  return [
    node('Specification', { id: leadThrough, type: 'CableLeadThroughSpecification' }, [
      value('Identification', `${part.partNumber} bore`),
      ctx.values.number('MinSegmentOutsideDiameter', leadThrough, part.boreMinMm, 'mm'),
      ctx.values.number('MaxSegmentOutsideDiameter', leadThrough, part.boreMaxMm, 'mm'),
    ]),
    main,
  ];
}

function ownElements({ values }: VecContext, id: string, part: RoutePart): (XmlElement | undefined)[] {
  switch (part.kind) {
    case 'covering':
      return part.form === 'tape'
        ? [
            values.number('Width', id, part.tapeWidthMm, 'mm'),
            values.number('Thickness', id, part.wallMm, 'mm'),
          ]
        : [values.number('WallThickness', id, part.wallMm, 'mm')];
    case 'fuse':
      return [
        values.number('VoltageRating', id, part.voltageMaxV, 'V'),
        values.number('IMax', id, part.ratedA, 'A'),
      ];
    case 'label':
      return [value('LabelType', 'AlphaNumerical')];
    default:
      return [];
  }
}
