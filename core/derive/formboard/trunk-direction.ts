import { byId } from '../../base/by-id';
import type { Project } from '../../model/project';
import { leavingRad, segmentsByNode } from './board-angle';
import { normalDeg } from './normal-deg';

/**
 * The direction in which the trunk passes a node, without the branch: through the two other segments that run on most
 * nearly straight, along the only other one, or to the right.
 */
export function trunkDirectionDeg(
  project: Pick<Project, 'nodes' | 'segments'>,
  node: string,
  branch: string,
): number {
  const others = (segmentsByNode(project.segments).get(node) ?? [])
    .filter((s) => s.id !== branch)
    .flatMap((s) => leavingRad(s, node, byId(project.nodes)) ?? [])
    .map((angle) => (angle * 180) / Math.PI);
  let best: { readonly off: number; readonly deg: number } | undefined;
  others.forEach((a, i) => {
    for (const b of others.slice(i + 1)) {
      const off = Math.abs(normalDeg(a - b - 180));
      if (best && best.off <= off) continue;
      const [x, y] = [a, b].reduce(
        ([sx, sy], deg, k) => {
          const sign = k === 0 ? 1 : -1;
          return [sx + sign * Math.cos((deg * Math.PI) / 180), sy + sign * Math.sin((deg * Math.PI) / 180)];
        },
        [0, 0] as [number, number],
      );
      best = { off, deg: Math.hypot(x, y) < 1e-9 ? a : (Math.atan2(y, x) * 180) / Math.PI };
    }
  });
  return best?.deg ?? others[0] ?? 0;
}
