import { reuseList } from '@latchwork/core/base/same-fields';
import type { ResolvedWire } from '@latchwork/core/derive/harness';
import { curveBox, type Curve } from './curve';
import type { WireItem } from './items';
import { mouthsOf, NO_SHIFTS, ribbonKey, runsBackwards, type Shifts } from './mouths';
import { ribbonCurves, type Mouth } from './ribbon';
import { NO_COLOUR, wireStyleOf } from './wire-style';

interface Placed {
  readonly key: string;
  readonly mouths: readonly [Mouth, Mouth];
}

interface Ribbon {
  readonly wires: readonly ResolvedWire[];
  readonly items: readonly WireItem[];
}

/** The wires of a scene, with the ribbons they were laid in, so that the next scene can take over what stays. */
export interface WireItems {
  readonly list: readonly WireItem[];
  readonly byId: ReadonlyMap<string, WireItem>;
  readonly ribbons: ReadonlyMap<string, Ribbon>;
}

// A wire is a new object whenever an end of it moves, so its place can be remembered by identity.
const placedCache = new WeakMap<ResolvedWire, Placed | { readonly key: null }>();

function placeOf(wire: ResolvedWire): Placed | null {
  let placed = placedCache.get(wire);
  if (!placed) {
    const mouths = mouthsOf(wire, NO_SHIFTS);
    placed = mouths ? { key: ribbonKey(wire, mouths), mouths } : { key: null };
    placedCache.set(wire, placed);
  }
  return placed.key === null ? null : placed;
}

/** Lays all wires. Ribbons whose wires are the same objects as before keep their items. */
export function layWires(wires: readonly ResolvedWire[], previous: WireItems | undefined): WireItems {
  const groups = new Map<string, ResolvedWire[]>();
  for (const wire of wires) {
    const placed = placeOf(wire);
    if (!placed) continue;
    const group = groups.get(placed.key);
    if (group) group.push(wire);
    else groups.set(placed.key, [wire]);
  }
  const ribbons = new Map<string, Ribbon>();
  const byId = new Map<string, WireItem>();
  for (const [key, group] of groups) {
    const was = previous?.ribbons.get(key);
    const ribbon =
      was && was.wires === reuseList(was.wires, group)
        ? was
        : { wires: group, items: layRibbon(group, NO_SHIFTS) };
    ribbons.set(key, ribbon);
    for (const item of ribbon.items) byId.set(item.id, item);
  }
  const list: WireItem[] = [];
  for (const wire of wires) {
    const item = byId.get(wire.wire.id);
    if (item) list.push(item);
  }
  return { list, byId, ribbons };
}

/** The wires of a group as items, laid where their ends are, or where the shifts say while something is moved. */
export function layRibbon(group: readonly ResolvedWire[], shifts: Shifts): readonly WireItem[] {
  const laid = group.flatMap((wire) => {
    const mouths = mouthsOf(wire, shifts);
    if (!mouths) return [];
    const key = ribbonKey(wire, mouths);
    return [{ wire, mouths, back: runsBackwards(wire, mouths, key), key }];
  });
  const out: WireItem[] = [];
  const keys = new Set(laid.map((l) => l.key));
  for (const key of keys) {
    const mine = laid.filter((l) => l.key === key);
    const curves = ribbonCurves(mine.map(({ mouths: [a, b], back }) => (back ? { a: b, b: a } : { a, b })));
    mine.forEach((l, i) => {
      const curve = curves[i] as Curve;
      const { colour } = l.wire.wire;
      out.push({
        is: 'wire',
        id: l.wire.wire.id,
        wire: l.wire,
        curve: l.back ? reversed(curve) : curve,
        style: colour ? wireStyleOf(colour) : NO_COLOUR,
        mouths: l.mouths,
        lane: mine.length > 1 ? i / (mine.length - 1) : 0.5,
        ...curveBox(curve),
      });
    });
  }
  return out;
}

function reversed(c: Curve): Curve {
  const out = new Float64Array(c.length);
  for (let i = 0; i < c.length; i += 2) {
    out[i] = c[c.length - 2 - i] as number;
    out[i + 1] = c[c.length - 1 - i] as number;
  }
  return out;
}
