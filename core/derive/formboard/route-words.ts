import { byId } from '../../base/by-id';
import type { Harness, ResolvedWire } from '../harness';
import { nameOfEnd } from './wire-path';

/** Why a wire has no way over the formboard, in words; null where it has one. */
export function routeProblem({ project }: Pick<Harness, 'project'>, w: ResolvedWire): string | null {
  if (w.route.found) return null;
  const ends = [w.from, w.to];
  const nodeName = (id: string | undefined): string =>
    byId(project.nodes).get(id ?? '')?.designator ?? 'a node';
  switch (w.route.reason) {
    case 'end-without-node': {
      const loose = ends.filter((e) => e.node === undefined).map((e) => nameOfEnd(project, e.end));
      const names = [...new Set(loose)];
      return names.length > 0
        ? `${names.join(' and ')} ${names.length === 1 ? 'has' : 'have'} no node on the formboard`
        : 'a node of its ends is not on the formboard';
    }
    case 'not-connected':
      return `no segments join ${nodeName(w.from.node)} and ${nodeName(w.to.node)}`;
    case 'path-broken':
      return `its pinned path does not lead from ${nodeName(w.from.node)} to ${nodeName(w.to.node)} without a gap`;
  }
}
