import type { Net, NetPoint, ResolvedWire } from '../../derive/harness';
import type { Signal } from '../../model/electrical';
import type { Evidence, ObjectRef } from '../finding';
import { cavityName, cavityRef, wireRef } from '../refs';

/** A signal on a net and the first place that says so. */
export interface Declaration {
  readonly signal: Signal;
  readonly name: string;
  readonly ref: ObjectRef;
  readonly evidence: Evidence;
}

/** Different signals that the interfaces declare at the positions of a net, or that are fed there. */
export function declaredAtPositions(net: Net): readonly Declaration[] {
  const out = new Map<string, Declaration>();
  for (const point of net.points)
    if (point.declared && !out.has(point.declared.id))
      out.set(point.declared.id, atPoint(point.declared, point, 'declared'));
  for (const signal of net.signals) {
    const point = out.has(signal.id) ? undefined : net.points.find((p) => isSource(signal, p));
    if (point) out.set(signal.id, atPoint(signal, point, 'fed'));
  }
  return [...out.values()];
}

/** Different signals that the wires of a net are named after. */
export function declaredByWires(net: Net): readonly Declaration[] {
  const out = new Map<string, Declaration>();
  for (const wire of net.wires)
    if (wire.signal && !out.has(wire.signal.id)) out.set(wire.signal.id, byWire(wire.signal, wire));
  return [...out.values()];
}

function atPoint(signal: Signal, point: NetPoint, how: 'declared' | 'fed'): Declaration {
  const name = cavityName(point);
  const source =
    how === 'fed'
      ? `source of signal ${signal.name}`
      : `interface of ${point.connector.connector.designator}`;
  const evidence = { label: `signal at ${name}`, value: signal.name, source };
  return { signal, name, ref: cavityRef(point), evidence };
}

function byWire(signal: Signal, wire: ResolvedWire): Declaration {
  const name = wire.wire.designator;
  const evidence = { label: `signal of wire ${name}`, value: signal.name, source: 'typed' };
  return { signal, name, ref: wireRef(wire), evidence };
}

const isSource = (signal: Signal, point: NetPoint): boolean =>
  signal.source?.connector === point.connector.connector.id && signal.source.cavity === point.cavity;
