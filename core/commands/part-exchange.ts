import { z } from 'zod';
import { Id } from '../model/ids';
import { PART_KIND_NAMES, Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { referencesOf } from '../model/references';
import { command } from './command';
import { missing, objectIn } from './shared/draft-object';
import { embedPart } from './shared/embed-part';

/**
 * Puts another record of the same kind in the place of a part, everywhere in the project: the alternate is built in. The
 * record of the part stays, so that the way back is the same command; what is in stock of it stays its own.
 */
export const partExchange = command({
  id: 'part.exchange',
  label: 'Exchange part for its alternate',
  args: z.strictObject({ part: Id, by: Part }),
  refuse(project, { part, by }) {
    const was = objectIn(project, 'parts', part);
    if (!was) return missing(project, 'parts', [part], 'part record');
    if (was.id === by.id) return `${by.partNumber} is the part itself.`;
    if (was.kind !== by.kind)
      return `${by.partNumber} is a ${PART_KIND_NAMES[by.kind]}, ${was.partNumber} a ${PART_KIND_NAMES[was.kind]}.`;
    return placesOf(project, part).length === 0 ? `Nothing in the project is a ${was.partNumber}.` : null;
  },
  run(draft, { part, by }, _context, project) {
    const id = embedPart(draft, project, by);
    for (const path of placesOf(project, part)) put(draft, path, id);
  },
});

const placesOf = (project: Project, part: string): readonly string[] =>
  [...referencesOf(project)]
    .filter((r) => r.collection === 'parts' && r.id === part && !r.path.startsWith('purchasing.'))
    .map((r) => r.path);

/** Writes an id to a place that `referencesOf` has named: "connectors[0].cavities[1].plug". */
function put(draft: object, path: string, id: string): void {
  const steps = path.match(/[^.[\]]+/g) ?? [];
  let at = draft as Record<string, unknown>;
  for (const step of steps.slice(0, -1)) at = at[step] as Record<string, unknown>;
  const last = steps.at(-1);
  if (last !== undefined) at[last] = id;
}
