import { memoByIdentity } from '../base/memo-by-identity';
import { sha256 } from '../base/sha256';
import type { Project } from './project';
import { serialiseProject } from './serialise';

/**
 * The baseline hash: SHA-256 of the project as it is written to a file. Documents that bear the same hash were made from
 * the same project to the byte.
 */
export const baselineOf: (project: Project) => string = memoByIdentity((project) =>
  sha256(serialiseProject(project)),
);
