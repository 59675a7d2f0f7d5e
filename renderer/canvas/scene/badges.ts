import type { Point } from '@latchwork/core/base/point';
import { SEVERITIES, type Finding, type ObjectRef } from '@latchwork/core/rules/finding';
import type { MarkKind } from '../../ui/severity-mark';
import { pointOn } from './curve';
import type { DiagramScene } from './diagram-scene';
import type { ConnectorItem } from './items';

/** A mark on the sheet for all findings at one object: a cavity, a connector, a wire, a mate, a splice, an area. */
export interface Badge {
  /** Selection key of the object. */
  readonly key: string;
  readonly kind: MarkKind;
  readonly findings: readonly Finding[];
  /** Middle of the badge. */
  readonly at: Point;
  /** Where its hairline ends. */
  readonly to: Point;
  /** Set for the badge of a cavity. */
  readonly connector: string | undefined;
}

const ORDER: readonly MarkKind[] = [...SEVERITIES.slice(0, 3), 'unknown', 'note'];
/** Distance between the badges of one connector, and their height above it (mm). */
const STEP_MM = 4.4;
const ABOVE_MM = 2.4;

export const markOf = (f: Finding): MarkKind => (f.result === 'cannot-verify' ? 'unknown' : f.severity);

export const worstOf = (findings: readonly Finding[]): MarkKind =>
  findings.map(markOf).reduce((a, b) => (ORDER.indexOf(b) < ORDER.indexOf(a) ? b : a), 'note' as MarkKind);

/** One badge per object that findings belong to. Those of one connector stand in a row above its right corner. */
export function placeBadges(findings: readonly Finding[], scene: DiagramScene): readonly Badge[] {
  const byKey = new Map<string, Finding[]>();
  for (const f of findings) {
    const key = keyOnSheet(f, scene);
    if (key === null) continue;
    const list = byKey.get(key);
    if (list) list.push(f);
    else byKey.set(key, [f]);
  }
  const out: Badge[] = [];
  const rows = new Map<string, { key: string; list: Finding[]; kind: MarkKind }[]>();
  for (const [key, list] of byKey) {
    const id = key.split(':')[0] as string;
    const kind = worstOf(list);
    if (scene.connectorById.has(id)) {
      const row = rows.get(id);
      if (row) row.push({ key, list, kind });
      else rows.set(id, [{ key, list, kind }]);
    } else {
      const at = placeOfOther(scene, id);
      if (at) out.push({ key, kind, findings: list, ...at, connector: undefined });
    }
  }
  for (const [id, row] of rows) {
    const item = scene.connectorById.get(id) as ConnectorItem;
    row.sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
    row.forEach(({ key, list, kind }, i) => {
      const at = { x: item.maxX - 1 - i * STEP_MM, y: item.minY - ABOVE_MM };
      const cavity = item.symbol.byCavity.get(key.slice(id.length + 1));
      const to = cavity
        ? { x: item.minX + cavity.x, y: item.minY + cavity.y }
        : { x: at.x, y: item.minY + 2 };
      out.push({ key, kind, findings: list, at, to, connector: cavity ? id : undefined });
    });
  }
  return out;
}

function placeOfOther(scene: DiagramScene, id: string): { at: Point; to: Point } | null {
  const line = scene.wires.byId.get(id) ?? scene.mates.find((m) => m.id === id);
  if (line) {
    const to = pointOn(line.curve, 0.5);
    return { to, at: { x: to.x + 3.5, y: to.y - 5 } };
  }
  const splice = scene.splices.find((s) => s.id === id);
  if (splice) {
    const to = splice.splice.position;
    return { to, at: { x: to.x + 4, y: to.y - 5 } };
  }
  const area = scene.areas.find((a) => a.id === id);
  return area ? { at: { x: area.maxX - 4, y: area.minY }, to: { x: area.maxX - 4, y: area.minY } } : null;
}

/** The first object of a finding that is drawn here; a contact shows at its cavity, a part at what is made from it. */
function keyOnSheet(f: Finding, scene: DiagramScene): string | null {
  for (const ref of f.objects) {
    const key = keyOfRefOnSheet(ref, scene);
    if (key !== null) return key;
  }
  return null;
}

function keyOfRefOnSheet(ref: ObjectRef, scene: DiagramScene): string | null {
  const { harness } = scene;
  switch (ref.type) {
    case 'connector':
      return scene.connectorById.has(ref.id) ? ref.id : null;
    case 'cavity':
      return scene.connectorById.has(ref.id) ? `${ref.id}:${ref.cavity ?? ''}` : null;
    case 'wire':
    case 'mate':
    case 'splice':
    case 'equipment':
      return ref.id;
    case 'contact': {
      for (const w of harness.wires)
        for (const { end } of [w.from, w.to])
          if (end.at === 'cavity' && end.contact === ref.id) return `${end.connector}:${end.cavity}`;
      return null;
    }
    case 'group':
      return harness.project.groups.find((g) => g.id === ref.id)?.wires[0] ?? null;
    case 'fuse':
      return harness.project.fuses.find((x) => x.id === ref.id)?.wire ?? null;
    case 'cable':
      return harness.project.wires.find((w) => w.core?.cable === ref.id)?.id ?? null;
    case 'part':
      return (
        harness.project.connectors.find((c) => c.part === ref.id)?.id ??
        harness.project.wires.find((w) => w.part === ref.id)?.id ??
        null
      );
    default:
      return null;
  }
}
