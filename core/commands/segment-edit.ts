import { z } from 'zod';
import { Id } from '../model/ids';
import { Segment } from '../model/topology';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

const s = Segment.shape;

export const segmentEdit = command({
  id: 'segment.edit',
  label: 'Edit segment',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      designator: s.designator.optional(),
      lengthMm: s.lengthMm.nullable(),
      plusMm: s.plusMm.nullable(),
      minusMm: s.minusMm.nullable(),
      via: s.via.nullable(),
      shape: s.shape.nullable(),
      lengthLocked: s.lengthLocked.nullable(),
      bendRadiusMm: s.bendRadiusMm.nullable(),
      holeMm: s.holeMm.nullable(),
      wireStyles: s.wireStyles.nullable(),
      noiseGapMm: s.noiseGapMm.nullable(),
    }),
  }),
  refuse: (project, { id }) => missing(project, 'segments', [id], 'segment'),
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'segments', id), change);
  },
});
