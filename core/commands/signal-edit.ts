import { z } from 'zod';
import { Signal } from '../model/electrical';
import { Id } from '../model/ids';
import { command } from './command';
import { applyChange, draftObject, missing } from './shared/draft-object';

const s = Signal.shape;

export const signalEdit = command({
  id: 'signal.edit',
  label: 'Edit signal',
  args: z.strictObject({
    id: Id,
    change: z.strictObject({
      name: s.name.optional(),
      class: s.class.nullable(),
      voltageV: s.voltageV.nullable(),
      currentA: s.currentA.nullable(),
      peakCurrentA: s.peakCurrentA.nullable(),
      peakS: s.peakS.nullable(),
      source: s.source.nullable(),
      sourceLimitA: s.sourceLimitA.nullable(),
      liveMating: s.liveMating.nullable(),
      noiseClass: s.noiseClass.nullable(),
      pairedWith: s.pairedWith.nullable(),
      returnsOn: s.returnsOn.nullable(),
      redundantTo: s.redundantTo.nullable(),
    }),
  }),
  refuse: (project, { id, change }) =>
    missing(project, 'signals', [id], 'signal') ??
    missing(project, 'connectors', [change.source?.connector], 'connector') ??
    missing(
      project,
      'signals',
      [change.pairedWith, change.returnsOn, change.redundantTo].map((x) => x ?? undefined),
      'signal',
    ) ??
    (project.signals.some((other) => other.id !== id && other.name === change.name)
      ? `There is a signal ${change.name} already.`
      : null),
  run(draft, { id, change }, _context, project) {
    applyChange(draftObject(draft, project, 'signals', id), change);
  },
});
