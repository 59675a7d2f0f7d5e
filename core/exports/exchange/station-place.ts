import { byId } from '../../base/by-id';
import type { Harness } from '../../derive/harness';
import type { Station } from '../../model/topology';

/** Where a station is: on a segment, or at the node that ends it, since a place at the very end belongs to the node. */
export type StationPlace =
  | { readonly at: 'node'; readonly node: string }
  | { readonly at: 'segment'; readonly segment: string; readonly mm: number; readonly lengthMm: number };

export function placeOfStation(harness: Harness, { segment: id, atMm }: Station): StationPlace {
  const segment = byId(harness.project.segments).get(id);
  if (!segment) throw new Error(`No segment ${id}`);
  const lengthMm = harness.router.lengthMmOf(segment);
  if (atMm <= 0) return { at: 'node', node: segment.from };
  if (atMm >= lengthMm) return { at: 'node', node: segment.to };
  return { at: 'segment', segment: id, mm: atMm, lengthMm };
}
