import { z } from 'zod';
import { pathForWire } from '../derive/formboard/wire-path';
import { Id } from '../model/ids';
import { command } from './command';
import { draftObject, missing, objectIn } from './shared/draft-object';

/** Lays wires along a chosen path, in place of the shortest way. The path may be given from either end. */
export const wirePinPath = command({
  id: 'wire.pin-path',
  label: 'Pin path',
  args: z.strictObject({ wires: z.array(Id), path: z.array(Id) }),
  refuse(project, { wires, path }) {
    const gone = missing(project, 'wires', wires, 'wire') ?? missing(project, 'segments', path, 'segment');
    if (gone) return gone;
    for (const id of wires) {
      const wire = objectIn(project, 'wires', id);
      const found = wire && pathForWire(project, wire, path);
      if (found && !found.ok) return found.problem;
    }
    return null;
  },
  run(draft, { wires, path }, _context, project) {
    for (const id of wires) {
      const wire = objectIn(project, 'wires', id);
      const found = wire && pathForWire(project, wire, path);
      if (!found?.ok || same(wire?.path, found.value)) continue;
      draftObject(draft, project, 'wires', id).path = [...found.value];
    }
  },
});

const same = (a: readonly string[] | undefined, b: readonly string[]): boolean =>
  a?.length === b.length && a.every((x, i) => x === b[i]);
