import { z } from 'zod';
import { CavityEntry } from '../model/connector';
import { Id } from '../model/ids';
import { Part, partOfKind } from '../model/parts/part';
import type { Project } from '../model/project';
import { command } from './command';
import { clearState, entryOf, isWired, refusePlace } from './shared/cavities';
import { draftObject, objectIn, removeObjects } from './shared/draft-object';
import { candidateParts, embedPart, partByNumber } from './shared/embed-part';

/**
 * Declares what an unwired cavity is meant to be. Null takes the declaration back. A plug that is not given is the one
 * that the housing's record names; a blocked cavity has a key plug only where one is given.
 */
export const cavitySetState = command({
  id: 'cavity.set-state',
  label: 'Set cavity state',
  args: z.strictObject({
    connector: Id,
    cavities: z.array(z.string()),
    state: CavityEntry.shape.state.unwrap().nullable(),
    part: Part.optional(),
  }),
  refuse(project, { connector, cavities, state, part }, { catalogue }) {
    for (const cavity of cavities) {
      // A state on a cavity that does not exist can still be taken back.
      const wrong = state === null ? null : refusePlace(project, connector, cavity);
      if (wrong) return wrong;
      if (state !== null && isWired(project, connector, cavity))
        return `A wire ends in ${objectIn(project, 'connectors', connector)?.designator}:${cavity}; take it out first.`;
    }
    if (state === 'spare-contact' && part?.kind !== 'contact') return 'A spare contact needs a contact part.';
    if (takesPlug(state) && part && part.kind !== 'cavity-plug')
      return `${part.partNumber} is no cavity plug.`;
    const named = state === 'plugged' && !part ? plugNumber(project, connector) : undefined;
    return named === undefined || plugOf(project, connector, catalogue)
      ? null
      : `${named} is neither in the project nor in a catalogue.`;
  },
  run(draft, { connector: id, cavities, state, part: given }, { newId, catalogue }, project) {
    const part = given ?? (state === 'plugged' ? plugOf(project, id, catalogue) : undefined);
    const connector = draftObject(draft, project, 'connectors', id);
    const before = objectIn(project, 'connectors', id)?.cavities ?? [];
    const loose = new Set(
      before.flatMap((e) => (cavities.includes(e.cavity) && e.contact ? [e.contact] : [])),
    );
    removeObjects(draft, project, 'contacts', loose);
    for (const cavity of cavities) {
      clearState(connector, cavity);
      if (state === null) continue;
      const entry = entryOf(connector, cavity);
      entry.state = state;
      if (!part) continue;
      const partId = embedPart(draft, project, part);
      if (takesPlug(state)) entry.plug = partId;
      if (state === 'spare-contact') {
        const contact = { id: newId(), part: partId };
        draft.contacts.push(contact);
        entry.contact = contact.id;
      }
    }
  },
});

/** A blocked cavity may hold a key plug. */
const takesPlug = (state: CavityEntry['state'] | null): boolean => state === 'plugged' || state === 'blocked';

const housingOf = (project: Project, connector: string) =>
  partOfKind(objectIn(project, 'parts', objectIn(project, 'connectors', connector)?.part ?? ''), 'housing');

const plugNumber = (project: Project, connector: string): string | undefined =>
  housingOf(project, connector)?.cavityPlug;

function plugOf(project: Project, connector: string, catalogue: readonly Part[]): Part | undefined {
  const housing = housingOf(project, connector);
  const plug = partByNumber(candidateParts(project, catalogue), housing?.maker ?? '', housing?.cavityPlug);
  return partOfKind(plug, 'cavity-plug');
}
