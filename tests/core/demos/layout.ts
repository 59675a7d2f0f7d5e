import { boxesMeet, type Box } from '@latchwork/core/base/point';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { symbolBox } from '@latchwork/core/derive/symbol';
import type { Project } from '@latchwork/core/model/project';

export interface Drawn {
  readonly designator: string;
  readonly box: Box;
  readonly equipment: string | undefined;
}

/** The symbols of the connectors with their boxes on the sheet, and the areas of the equipment. */
export function drawn(project: Project): { symbols: readonly Drawn[]; areas: ReadonlyMap<string, Box> } {
  const symbols = deriveHarness(project).connectors.map(({ resolved: r }) => ({
    designator: r.connector.designator,
    box: symbolBox(r.connector, r.part),
    equipment: r.equipment?.designator,
  }));
  const areas = new Map(
    project.equipment.map((e) => [
      e.designator,
      {
        minX: e.position.x,
        minY: e.position.y,
        maxX: e.position.x + e.widthMm,
        maxY: e.position.y + e.heightMm,
      },
    ]),
  );
  return { symbols, areas };
}

export const inside = (a: Box, b: Box): boolean =>
  a.minX >= b.minX && a.minY >= b.minY && a.maxX <= b.maxX && a.maxY <= b.maxY;

/** Names of the boxes that meet, in pairs. */
export function meeting(boxes: readonly { readonly designator: string; readonly box: Box }[]): string[] {
  return boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => (boxesMeet(a.box, b.box) ? [`${a.designator} ${b.designator}`] : [])),
  );
}

/** Segments of the formboard that cross each other away from a common node. */
export function crossings(project: Project): string[] {
  const at = new Map(project.nodes.map((n) => [n.id, n.position]));
  const lines = project.segments.map((s) => ({ s, a: at.get(s.from)!, b: at.get(s.to)! }));
  const side = (
    p: { x: number; y: number },
    q: { x: number; y: number },
    r: { x: number; y: number },
  ): number => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return lines.flatMap((l, i) =>
    lines.slice(i + 1).flatMap((m) => {
      const common = [l.s.from, l.s.to].some((n) => n === m.s.from || n === m.s.to);
      const cross =
        side(l.a, l.b, m.a) !== side(l.a, l.b, m.b) && side(m.a, m.b, l.a) !== side(m.a, m.b, l.b);
      return !common && cross ? [`${l.s.designator} ${m.s.designator}`] : [];
    }),
  );
}
