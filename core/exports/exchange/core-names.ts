import type { Harness } from '../../derive/harness';
import type { CablePart } from '../../model/parts/wire';
import type { Cable } from '../../model/wire';
import { UniqueNames } from './unique-names';

/** A core of a cable by name; `core` is missing for a name that only wires of the project use. */
export interface CoreName {
  readonly key: string;
  readonly unique: string;
  readonly core: CablePart['cores'][number] | undefined;
}

/**
 * The cores of a record, or of a placed cable that has none; then those that wires of the project name and the record does not have. A name that the record has
 * twice gets its place behind it.
 */
export function coreNamesOf(harness: Harness, of: CablePart | Cable): readonly CoreName[] {
  const part = 'kind' in of ? of : undefined;
  const unique = new UniqueNames();
  const out = (part?.cores ?? []).map((core, i): CoreName => {
    const name = unique.give(core.name, String(i + 1));
    return { key: name, unique: name, core };
  });
  const known = new Set(out.map((c) => c.key));
  const cables = new Set(
    harness.project.cables.filter((c) => (part ? c.part : c.id) === of.id).map((c) => c.id),
  );
  for (const { wire } of harness.wires) {
    const name = wire.core?.name;
    if (name === undefined || !wire.core || known.has(name) || !cables.has(wire.core.cable)) continue;
    known.add(name);
    out.push({ key: name, unique: unique.give(name, String(out.length + 1)), core: undefined });
  }
  return out;
}
