import type { Point } from '@latchwork/core/base/point';
import type { ResolvedEnd, ResolvedWire } from '@latchwork/core/derive/harness';
import { cavityPoint, symbolOf } from '@latchwork/core/derive/symbol';
import type { Mouth } from './ribbon';

/** Where an object is drawn other than at its own position, while it is being moved. */
export type Shifts = ReadonlyMap<string, Point>;
export const NO_SHIFTS: Shifts = new Map();

/** Radius of the dot of a splice, mm. */
export const SPLICE_RADIUS_MM = 1.6;

/** Both ends of a wire as they lie on the sheet; null when an end names something that is not there. */
export function mouthsOf(wire: ResolvedWire, shifts: Shifts): readonly [Mouth, Mouth] | null {
  const a = fixedMouth(wire.from, shifts);
  const b = fixedMouth(wire.to, shifts);
  if (!a || !b) return null;
  return [facing(a, b), facing(b, a)];
}

type Open = Point & { readonly side: -1 | 1 | null };

function fixedMouth(end: ResolvedEnd, shifts: Shifts): Open | null {
  if (end.end.at === 'free') return { ...end.end.position, side: null };
  if (end.end.at === 'splice') {
    if (!end.splice) return null;
    const by = shifts.get(end.splice.id);
    const { x, y } = end.splice.position;
    return { x: x + (by?.x ?? 0), y: y + (by?.y ?? 0), side: null };
  }
  if (!end.connector) return null;
  const { connector, part } = end.connector;
  const { at, side } = cavityPoint(connector, part, end.end.cavity);
  const by = shifts.get(connector.id);
  const edge = connector.position.x + (side > 0 ? symbolOf(part, connector).widthMm : 0);
  return { x: edge + (by?.x ?? 0), y: at.y + (by?.y ?? 0), side };
}

/** A splice or a free end lets the wire come from where it comes. */
const facing = (m: Open, other: Point): Mouth => ({
  x: m.x,
  y: m.y,
  side: m.side ?? (other.x >= m.x ? 1 : -1),
});

/** Key of the ribbon that the wire runs in; wires with a free end run alone. */
export function ribbonKey(wire: ResolvedWire, [a, b]: readonly [Mouth, Mouth]): string {
  const name = (end: ResolvedEnd, m: Mouth): string =>
    end.end.at === 'cavity'
      ? `${end.end.connector}${m.side}`
      : end.end.at === 'splice'
        ? `${end.end.splice}${m.side}`
        : wire.wire.id;
  const [x, y] = [name(wire.from, a), name(wire.to, b)];
  return x < y ? `${x}|${y}` : `${y}|${x}`;
}

/** Whether the wire runs against the direction of its ribbon's key. */
export function runsBackwards(wire: ResolvedWire, mouths: readonly [Mouth, Mouth], key: string): boolean {
  const { end } = wire.from;
  const id = end.at === 'cavity' ? end.connector : end.at === 'splice' ? end.splice : wire.wire.id;
  return !key.startsWith(end.at === 'free' ? id : `${id}${mouths[0].side}`);
}
