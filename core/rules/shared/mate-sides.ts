import type { ResolvedMate } from '../../derive/harness';
import type { MatingHalf } from '../../model/parts/part';
import type { ObjectRef } from '../finding';
import { connectorRef } from '../refs';
import type { Data } from '../rule';

/** Both halves of a mate with their records, and how a finding names them. */
export interface MateSides {
  readonly a: MatingHalf;
  readonly b: MatingHalf;
  readonly at: readonly ObjectRef[];
  readonly names: Data & { readonly a: string; readonly b: string };
}

/** Null when a half has no record: what is missing then is the part, and another rule says so. */
export function mateSides({ mate, a, b }: ResolvedMate): MateSides | null {
  if (!a.resolved.part || !b.resolved.part) return null;
  return {
    a: a.resolved.part,
    b: b.resolved.part,
    at: [{ type: 'mate', id: mate.id }, connectorRef(a), connectorRef(b)],
    names: { a: a.resolved.connector.designator, b: b.resolved.connector.designator },
  };
}
