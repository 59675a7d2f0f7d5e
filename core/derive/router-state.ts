import type { Node, Segment } from '../model/topology';

/** The way of a wire over the formboard, or why there is none. */
export type Route =
  | { readonly found: true; readonly segments: readonly string[]; readonly lengthMm: number }
  | { readonly found: false; readonly reason: 'end-without-node' | 'not-connected' | 'path-broken' };
export type FoundRoute = Extract<Route, { found: true }>;

/** What the next router is made from. */
export interface RouterState {
  readonly nodes: readonly Node[];
  readonly segments: readonly Segment[];
  readonly lengths: readonly number[];
  /** Found routes by "from to", and by "from segment … to" for pinned ones. */
  readonly shortest: ReadonlyMap<string, FoundRoute>;
  readonly pinned: ReadonlyMap<string, FoundRoute>;
}
