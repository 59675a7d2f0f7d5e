import type { Draft } from 'immer';
import type { Relaid } from '../../derive/formboard/relaid';
import type { Project } from '../../model/project';
import { draftObject } from './draft-object';

/** Writes new places of nodes and via points, and directions of connectors; what stays is not touched. */
export function relay(draft: Draft<Project>, project: Project, { nodes, vias, angles }: Relaid): void {
  for (const [id, to] of nodes) {
    const node = draftObject(draft, project, 'nodes', id);
    if (node.position.x !== to.x || node.position.y !== to.y) node.position = to;
  }
  for (const [id, via] of vias) {
    const segment = draftObject(draft, project, 'segments', id);
    if (via.length > 0) segment.via = [...via];
    else delete segment.via;
  }
  for (const [id, angle] of angles) draftObject(draft, project, 'connectors', id).formboardAngleDeg = angle;
}
