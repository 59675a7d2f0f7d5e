import { z } from 'zod';
import { Id } from '../model/ids';
import { LabelPart } from '../model/parts/accessories';
import { Label } from '../model/topology';
import { command } from './command';
import { embedPart } from './shared/embed-part';
import { noLabelPlace } from './shared/label-place';

const { text, on, datumDistanceMm } = Label.shape;

export const labelAdd = command({
  id: 'label.add',
  label: 'Add label',
  args: z.strictObject({ text, on, datumDistanceMm, part: LabelPart.optional(), id: Id.optional() }),
  refuse: (project, { on }) => noLabelPlace(project, on),
  run(draft, { text, on, datumDistanceMm, part, id }, { newId }, project) {
    draft.labels.push({
      id: id ?? newId(),
      ...(part ? { part: embedPart(draft, project, part) } : {}),
      text,
      ...(datumDistanceMm === undefined ? {} : { datumDistanceMm }),
      on,
    });
  },
});
