import { z } from 'zod';
import { Id } from '../model/ids';
import { LabelPart } from '../model/parts/accessories';
import { Label } from '../model/topology';
import { command } from './command';
import { missing } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

const { text, on } = Label.shape;

export const labelAdd = command({
  id: 'label.add',
  label: 'Add label',
  args: z.strictObject({ text, on, part: LabelPart.optional(), id: Id.optional() }),
  refuse: (project, { on }) =>
    on.at === 'wire-end'
      ? missing(project, 'wires', [on.wire], 'wire')
      : on.at === 'connector'
        ? missing(project, 'connectors', [on.connector], 'connector')
        : missing(project, 'segments', [on.station.segment], 'segment'),
  run(draft, { text, on, part, id }, { newId }, project) {
    draft.labels.push({
      id: id ?? newId(),
      ...(part ? { part: embedPart(draft, project, part) } : {}),
      text,
      on,
    });
  },
});
