import type { Point } from '@latchwork/core/base/point';
import { SYMBOL_PITCH_MM } from '@latchwork/core/derive/symbol';
import { SEVERITIES, type Finding } from '@latchwork/core/rules/finding';
import { keyOfRef } from '../../app/store';
import type { MarkKind } from '../../ui/severity-mark';
import { pointOn } from './curve';
import type { DiagramScene } from './diagram-scene';
import type { ConnectorItem } from './items';
import { keysOnSheet } from './keys-on-sheet';

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
const ABOVE_MM = 2.4;
const BESIDE_MM = 3.2;

export const markOf = (f: Finding): MarkKind => (f.result === 'cannot-verify' ? 'unknown' : f.severity);

export const worstOf = (findings: readonly Finding[]): MarkKind => findings.map(markOf).reduce(worse, 'note');

export const worse = (a: MarkKind, b: MarkKind): MarkKind => (ORDER.indexOf(b) < ORDER.indexOf(a) ? b : a);

/** One badge per object that findings belong to. */
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
  for (const [key, list] of byKey) {
    const [id = key, cavity] = key.split(':');
    const item = scene.connectorById.get(id);
    const place = item ? placeOnConnector(item, cavity) : placeOfOther(scene, id);
    if (place)
      out.push({
        key,
        kind: worstOf(list),
        findings: list,
        ...place,
        connector: item && cavity ? id : undefined,
      });
  }
  return out;
}

/** A connector's own badge stands above its right corner; that of a cavity beside it, between two wires. */
function placeOnConnector(item: ConnectorItem, cavity: string | undefined): { at: Point; to: Point } {
  const v = cavity === undefined ? undefined : item.symbol.byCavity.get(cavity);
  if (!v) {
    const at = { x: item.maxX - 1, y: item.minY - ABOVE_MM };
    return { at, to: at };
  }
  const edge = v.side > 0 ? item.maxX : item.minX;
  return {
    to: { x: item.minX + v.x, y: item.minY + v.y },
    at: { x: edge + v.side * BESIDE_MM, y: item.minY + v.y + SYMBOL_PITCH_MM / 2 },
  };
}

function placeOfOther(scene: DiagramScene, id: string): { at: Point; to: Point } | null {
  const line = scene.wires.byId.get(id) ?? scene.mates.find((m) => m.id === id);
  if (line) {
    const to = pointOn(line.curve, line.is === 'wire' ? 0.35 + 0.3 * line.lane : 0.5);
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

/** Where the first object of a finding that is seen here is drawn. */
function keyOnSheet(f: Finding, scene: DiagramScene): string | null {
  for (const ref of f.objects) {
    const [key] = keysOnSheet(scene, keyOfRef(ref));
    if (key !== undefined) return key;
  }
  return null;
}
