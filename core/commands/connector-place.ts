import { z } from 'zod';
import { Point } from '../base/point';
import { Connector } from '../model/connector';
import { Id } from '../model/ids';
import { HeaderPart } from '../model/parts/header';
import { HousingPart } from '../model/parts/housing';
import { command } from './command';
import { nextConnector } from './shared/designators';
import { missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

export const connectorPlace = command({
  id: 'connector.place',
  label: 'Place connector',
  args: z.strictObject({
    part: z.discriminatedUnion('kind', [HousingPart, HeaderPart]),
    position: Point,
    ...Connector.pick({
      exit: true,
      view: true,
      equipment: true,
      supply: true,
      designator: true,
      node: true,
    }).partial().shape,
    /** Fixed by whoever needs to name the new connector at once. */
    id: Id.optional(),
  }),
  refuse: (project, args) =>
    missing(project, 'equipment', [args.equipment], 'equipment') ??
    missing(project, 'nodes', [args.node], 'node'),
  run(draft, args, { newId }, project) {
    const { part, position, exit, view, equipment, supply, designator, node, id } = args;
    draft.connectors.push({
      id: id ?? newId(),
      designator: designator ?? nextConnector(project),
      part: embedPart(draft, project, part),
      position,
      exit: exit ?? 'right',
      view: view ?? 'mating-face',
      ...(equipment ? { equipment } : {}),
      // A header comes on its board; a housing is bought with the harness unless someone says otherwise.
      supply: supply ?? (part.kind === 'header' ? 'equipment' : 'harness'),
      ...(node ? { node } : {}),
      cavities: [],
      accessories: [],
    });
  },
});
