import { z } from 'zod';

/**
 * Warming of a conductor by its own current: rise = (ratedC - ambientC) x (I/ampacityA)^2, the rise being proportional
 * to the loss at steady state. `ampacityA` is the current that brings it from this ambient to `ratedC`.
 */
export const Warming = z.strictObject({
  ambientC: z.number(),
  ratedC: z.number(),
  ampacityA: z.number().positive(),
});
export type Warming = z.infer<typeof Warming>;

/**
 * A resistive branch between two nodes: wire, contact, splice, fuse. `ohm` holds at 20 C for a branch that warms, else as
 * it is. Zero ohm joins its nodes. Current is positive from `from` to `to`.
 */
export const Branch = z.strictObject({
  id: z.string().min(1),
  from: z.string().min(1),
  to: z.string().min(1),
  ohm: z.number().nonnegative(),
  warming: Warming.optional(),
});
export type Branch = z.infer<typeof Branch>;

/** A voltage source, `voltageV` from `negative` to `positive`, behind its own resistance. */
export const Source = z.strictObject({
  id: z.string().min(1),
  positive: z.string().min(1),
  negative: z.string().min(1),
  voltageV: z.number(),
  innerOhm: z.number().nonnegative().default(0),
});
export type Source = z.infer<typeof Source>;

/** What draws: a constant current or a resistance, from node `from` to node `to`. */
export const Load = z.discriminatedUnion('draws', [
  z.strictObject({
    id: z.string().min(1),
    from: z.string().min(1),
    to: z.string().min(1),
    draws: z.literal('current'),
    currentA: z.number(),
  }),
  z.strictObject({
    id: z.string().min(1),
    from: z.string().min(1),
    to: z.string().min(1),
    draws: z.literal('resistance'),
    ohm: z.number().positive(),
  }),
]);
export type Load = z.infer<typeof Load>;

export interface Network {
  readonly branches: readonly Branch[];
  readonly sources: readonly Source[];
  readonly loads: readonly Load[];
  /** Node of 0 V. Parts of the network that do not reach it take the negative node of their first source. */
  readonly reference?: string | undefined;
}

/** What a source or load or branch carries. */
export interface Carried {
  readonly id: string;
  /** From `from` to `to`; for a source, out of its positive node. */
  readonly currentA: number;
  /** Across it in the same direction; for a source, at its terminals. */
  readonly voltageV: number;
  readonly powerW: number;
}

export interface CarriedByBranch extends Carried {
  /** At its temperature. */
  readonly ohm: number;
  /** Of a branch that warms. */
  readonly temperatureC: number | undefined;
}

export interface NetworkSolution {
  /** Potential of each node that a source or the reference fixes. */
  readonly nodeV: ReadonlyMap<string, number>;
  readonly branches: readonly CarriedByBranch[];
  readonly sources: readonly Carried[];
  readonly loads: readonly Carried[];
  /** Nodes that no source reaches: they have no defined potential and carry nothing. */
  readonly floating: readonly string[];
  readonly sourceW: number;
  readonly lossW: number;
  readonly loadW: number;
  /** Rounds of temperature that were needed. */
  readonly rounds: number;
}

/** Why a network has no solution, with the ids of what is to blame. */
export type NetworkProblem =
  /** Two objects of one kind bear the same id. */
  | { readonly code: 'same-id'; readonly ids: readonly string[] }
  /** Sources joined without resistance that want different voltages, or a source across a short. */
  | { readonly code: 'sources-conflict'; readonly ids: readonly string[] }
  /** A loop without any resistance: how its current divides is not determined. */
  | { readonly code: 'loop-without-resistance'; readonly ids: readonly string[] }
  /** Loads whose current has no way back. */
  | { readonly code: 'no-return-path'; readonly ids: readonly string[]; readonly nodes: readonly string[] }
  /** Loads on a part of the network that no source feeds. */
  | { readonly code: 'no-source'; readonly ids: readonly string[]; readonly nodes: readonly string[] }
  /** The conductance matrix is singular at a node: resistances too far apart to compute with. */
  | { readonly code: 'singular'; readonly nodes: readonly string[] }
  /** A conductor whose loss grows faster with temperature than it can be carried away. */
  | { readonly code: 'runaway'; readonly ids: readonly string[] };

export function networkProblemText(p: NetworkProblem): string {
  switch (p.code) {
    case 'same-id':
      return 'an id is used twice';
    case 'sources-conflict':
      return 'sources are joined without resistance and disagree, or a source is short-circuited by zero ohm';
    case 'loop-without-resistance':
      return 'a loop has no resistance, so its current is not determined; give one of its parts a resistance';
    case 'no-return-path':
      return 'the current of a load has no way back to its source';
    case 'no-source':
      return 'a load is on a part of the network that no source feeds';
    case 'singular':
      return 'the network is singular at a node: its resistances are too far apart to compute with';
    case 'runaway':
      return 'a conductor heats itself without end at this current';
  }
}
