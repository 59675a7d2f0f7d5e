import type { Point } from '@latchwork/core/base/point';
import { placeOfStation } from '@latchwork/core/derive/formboard/segment-path';
import type { Finding } from '@latchwork/core/rules/finding';
import { worstOf, type Badge } from '../../scene/badges';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';

/** Room between a thing and its badge, mm. */
const BESIDE_MM = 4;

/** One badge per object of the board that findings belong to: at segments, nodes, connectors, and what lies on the runs. */
export function placeBoardBadges(findings: readonly Finding[], scene: BoardScene): readonly Badge[] {
  const byKey = new Map<string, Finding[]>();
  const places = new Map<string, Point>();
  for (const f of findings) {
    const key = f.objects.map((o) => o.id).find((id) => placeOf(id, scene, places));
    if (key === undefined) continue;
    const list = byKey.get(key);
    if (list) list.push(f);
    else byKey.set(key, [f]);
  }
  return [...byKey].flatMap(([key, list]) => {
    const at = places.get(key);
    return at ? [{ key, kind: worstOf(list), findings: list, at, to: at, connector: undefined }] : [];
  });
}

function placeOf(id: string, scene: BoardScene, known: Map<string, Point>): Point | undefined {
  const was = known.get(id);
  if (was) return was;
  const at = findPlace(id, scene);
  if (at) known.set(id, at);
  return at;
}

function findPlace(id: string, scene: BoardScene): Point | undefined {
  const s = scene.segmentById.get(id);
  if (s) {
    // Away from the length in the middle and from the names of the coverings.
    const { at, angle } = placeOfStation(s.path, s.lengthMm, s.lengthMm * 0.22);
    return aside(at, angle, s.outsideMm / 2 + BESIDE_MM);
  }
  const node = scene.nodeById.get(id);
  if (node) return aside(node.at, node.nameAngle, BESIDE_MM + 4);
  const c = scene.connectorById.get(id);
  if (c) {
    const [x, y] = [Math.cos(c.angle), Math.sin(c.angle)];
    const off = c.acrossMm / 2 + 1;
    return { x: c.at.x + x * c.alongMm * 0.85 + y * off, y: c.at.y + y * c.alongMm * 0.85 - x * off };
  }
  const covering = scene.coverings.find((o) => o.id === id && o.named);
  const [a, b] = covering ? [covering.points[0], covering.points.at(-1)] : [];
  if (covering && a && b) {
    const angle = Math.atan2(b.y - a.y, b.x - a.x);
    const middle = { x: a.x + (b.x - a.x) * 0.7, y: a.y + (b.y - a.y) * 0.7 };
    return aside(middle, angle, covering.outsideMm / 2 + BESIDE_MM);
  }
  const splice = scene.splices.find((o) => o.id === id);
  return splice && { x: splice.at.x + 6, y: splice.at.y - 6 };
}

const aside = (p: Point, angle: number, mm: number): Point => ({
  x: p.x + Math.sin(angle) * mm,
  y: p.y - Math.cos(angle) * mm,
});
