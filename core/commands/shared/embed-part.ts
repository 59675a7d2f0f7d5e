import type { Draft } from 'immer';
import { byId } from '../../base/by-id';
import type { Part } from '../../model/parts/part';
import type { Project } from '../../model/project';

/** Puts the record into the project unless it holds one of that id already; gives the id. */
export function embedPart(draft: Draft<Project>, project: Project, part: Part): string {
  if (
    !byId(project.parts).has(part.id) &&
    !draft.parts.slice(project.parts.length).some((p) => p.id === part.id)
  )
    draft.parts.push(part as Draft<Part>);
  return part.id;
}

/** All records that may be chosen from: the project's own first, then the catalogue's. */
export function candidateParts(project: Project, catalogue: readonly Part[]): readonly Part[] {
  const own = byId(project.parts);
  return [...project.parts, ...catalogue.filter((p) => !own.has(p.id))];
}

/** The record of that maker and number among project and catalogue. */
export const partByNumber = (
  parts: readonly Part[],
  maker: string,
  partNumber: string | undefined,
): Part | undefined =>
  partNumber === undefined ? undefined : parts.find((p) => p.partNumber === partNumber && p.maker === maker);
