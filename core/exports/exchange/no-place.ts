import type { Project } from '../../model/project';

/** Something that a format has no place for, whatever the project: told where the project has it. */
export interface NoPlace {
  readonly item: string;
  readonly count: (project: Project) => number;
  readonly why: string;
}

/** The formats describe a product; these are of the design work or of the trade. */
export function noPlaceIn(format: 'VEC' | 'KBL'): readonly NoPlace[] {
  return [
    {
      item: 'decisions',
      count: (p) => p.decisions.length,
      why: 'decisions on findings stay in the project file',
    },
    {
      item: 'equipment',
      count: (p) => p.equipment.length,
      why: `${format} has no boards and panels: connectors carry the designator of theirs as text`,
    },
    {
      item: 'offers',
      count: (p) => p.parts.reduce((n, part) => n + (part.offers?.length ?? 0), 0),
      why: 'prices are between the buyer and the supplier: see the purchase list',
    },
    {
      item: 'build quantities',
      count: (p) => p.buildQuantities.length,
      why: `${format} describes one harness: quantities belong to an order`,
    },
    {
      item: 'purchasing',
      count: (p) => (p.purchasing === undefined ? 0 : 1),
      why: 'how it is bought is between the buyer and the suppliers',
    },
  ];
}
