import { z } from 'zod';
import { Id } from '../model/ids';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { command } from './command';
import { draftObject, missing, objectIn } from './shared/draft-object';
import { candidateParts, embedPart, partByNumber } from './shared/embed-part';

/** Fits the secondary lock that the housing's record names. */
export const connectorFitLock = command({
  id: 'connector.fit-lock',
  label: 'Fit secondary lock',
  args: z.strictObject({ id: Id }),
  refuse(project, { id }, { catalogue }) {
    const gone = missing(project, 'connectors', [id], 'connector');
    if (gone) return gone;
    const named = lockNumber(project, id);
    if (!named) return 'The housing names no secondary lock.';
    return lockOf(project, id, catalogue) ? null : `${named} is neither in the project nor in a catalogue.`;
  },
  run(draft, { id }, { newId, catalogue }, project) {
    const part = lockOf(project, id, catalogue);
    if (!part) return;
    const connector = draftObject(draft, project, 'connectors', id);
    connector.accessories.push({ id: newId(), part: embedPart(draft, project, part), quantity: 1 });
  },
});

function lockNumber(project: Project, id: string): string | undefined {
  const part = objectIn(project, 'parts', objectIn(project, 'connectors', id)?.part ?? '');
  return part?.kind === 'housing' ? part.secondaryLock : undefined;
}

function lockOf(project: Project, id: string, catalogue: readonly Part[]): Part | undefined {
  const maker = objectIn(project, 'parts', objectIn(project, 'connectors', id)?.part ?? '')?.maker ?? '';
  return partByNumber(candidateParts(project, catalogue), maker, lockNumber(project, id));
}
