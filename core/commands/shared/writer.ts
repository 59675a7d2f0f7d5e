import { enablePatches, Immer, type Patch } from 'immer';
import type { Project } from '../../model/project';

enablePatches();

/**
 * Writes projects without freezing them: the engine reads elements of frozen arrays by a slow way, ten times as long, and every
 * edit passes over arrays with ten thousand of them. That nothing else writes is told by the tests, which freeze.
 */
export const writer = new Immer({ autoFreeze: false });

/**
 * The project after patches, in their order. A whole field is put in as it is, where immer would copy all that is in it: so
 * objects that a removal took away and those beside them come back as the very same.
 */
export function patched(project: Project, patches: readonly Patch[]): Project {
  let out = project;
  let deep: Patch[] = [];
  const flush = (): void => {
    if (deep.length > 0) out = writer.applyPatches(out, deep);
    deep = [];
  };
  for (const patch of patches) {
    if (patch.op !== 'replace' || patch.path.length !== 1) {
      deep.push(patch);
      continue;
    }
    flush();
    out = { ...out, [patch.path[0] as string]: patch.value as unknown };
  }
  flush();
  return out;
}
