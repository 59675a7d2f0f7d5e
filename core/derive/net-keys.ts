import type { ResolvedEnd, ResolvedWire } from './harness';

/** A cavity as a point of a net. */
export const pointKey = (connector: string, cavity: string): string => `${connector}:${cavity}`;

/** The point at which a wire ends; a free end is a point of its own. */
export function endKey(end: ResolvedEnd, wire: string, index: 0 | 1): string {
  if (end.end.at === 'cavity') return pointKey(end.end.connector, end.end.cavity);
  if (end.end.at === 'splice') return `splice ${end.end.splice}`;
  return `free ${wire}.${index}`;
}

export const endKeys = (w: ResolvedWire): readonly [string, string] => [
  endKey(w.from, w.wire.id, 0),
  endKey(w.to, w.wire.id, 1),
];
