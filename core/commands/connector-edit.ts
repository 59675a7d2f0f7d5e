import { z } from 'zod';
import { Connector } from '../model/connector';
import { Id } from '../model/ids';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

const {
  designator,
  exit,
  view,
  supply,
  equipment,
  node,
  unmated,
  plannedCycles,
  serviceLoopMm,
  footprint,
  cutOut,
  mateRoomMm,
  latchRoomMm,
  description,
  note,
} = Connector.shape;

export const connectorEdit = command({
  id: 'connector.edit',
  label: 'Edit connector',
  args: z.strictObject({
    ids: z.array(Id),
    change: z.strictObject({
      designator: designator.optional(),
      exit: exit.optional(),
      view: view.optional(),
      supply: supply.optional(),
      equipment: equipment.nullable(),
      node: node.nullable(),
      unmated: unmated.nullable(),
      plannedCycles: plannedCycles.nullable(),
      serviceLoopMm: serviceLoopMm.nullable(),
      footprint: footprint.nullable(),
      cutOut: cutOut.nullable(),
      mateRoomMm: mateRoomMm.nullable(),
      latchRoomMm: latchRoomMm.nullable(),
      description: description.nullable(),
      note: note.nullable(),
    }),
  }),
  refuse: (project, { ids, change }) =>
    missing(project, 'connectors', ids, 'connector') ??
    missing(project, 'equipment', [change.equipment ?? undefined], 'equipment') ??
    missing(project, 'nodes', [change.node ?? undefined], 'node'),
  run(draft, { ids, change }, _context, project) {
    for (const id of ids) applyChange(draftObject(draft, project, 'connectors', id), change);
  },
});
