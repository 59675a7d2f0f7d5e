import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface FuseAgainstWires extends Answer {
  /** Wires that carry less than the fuse lets through. */
  readonly unprotected: readonly string[];
  /** Smallest current that any of the wires may carry. */
  readonly weakestA: number;
  readonly weakest: string;
  /** Load times margin, to be at most the fuse's rating. */
  readonly loadWithMarginA: number | undefined;
  readonly carriesLoad: boolean | undefined;
}

const RULE: CalcSource = {
  title: 'common practice: fuse rating at most the current of every wire behind it',
  verified: false,
};
const MARGIN: CalcSource = {
  title: 'common practice: rating at least 1.25 x continuous load',
  verified: false,
};

const inputs = z.strictObject({
  fuseRatedA: field(z.number().positive(), 'Fuse rating', 'A'),
  wires: field(
    z.array(z.strictObject({ id: z.string(), ampacityA: z.number().nonnegative() })).min(1),
    'Wires up to the next protection, each with its current',
  ),
  loadA: field(z.number().nonnegative().optional(), 'Continuous load', 'A'),
  loadMargin: field(z.number().min(1).default(1.25), 'Margin over the load'),
});

/**
 * A fuse against every wire that it alone protects: its rating must not exceed what any of them carries continuously, and
 * must lie above the load with a margin. Rating by rating; what passes in a short circuit is the calculation `short-circuit`.
 */
export const fuseAgainstWires = calculation<typeof inputs, FuseAgainstWires>({
  id: 'fuse-against-wires',
  title: 'Fuse against the wires behind it',
  about: 'Rating against the current of every downstream wire, and against the load.',
  inputs,
  outputs: {
    unprotected: { label: 'Wires that the fuse does not protect', unit: '' },
    weakestA: { label: 'Smallest current of a wire', unit: 'A' },
    weakest: { label: 'Weakest wire', unit: '' },
    loadWithMarginA: { label: 'Load with margin', unit: 'A' },
    carriesLoad: { label: 'Fuse carries the load', unit: '' },
  },
  sources: [RULE, MARGIN],
  run(i) {
    const weakest = i.wires.reduce((a, b) => (b.ampacityA < a.ampacityA ? b : a));
    const loadWithMarginA = i.loadA === undefined ? undefined : i.loadA * i.loadMargin;
    return answer({
      unprotected: i.wires.filter((w) => w.ampacityA < i.fuseRatedA).map((w) => w.id),
      weakestA: weakest.ampacityA,
      weakest: weakest.id,
      loadWithMarginA,
      carriesLoad: loadWithMarginA === undefined ? undefined : loadWithMarginA <= i.fuseRatedA,
      working: {
        formula: 'load x margin <= I fuse <= I of every wire',
        figures: [
          figure('Fuse rating', i.fuseRatedA, 'A'),
          ...i.wires.map((w) => figure(w.id, w.ampacityA, 'A')),
          ...(i.loadA === undefined ? [] : [figure('Load', i.loadA, 'A'), figure('Margin', i.loadMargin)]),
        ],
        sources: i.loadA === undefined ? [RULE] : [RULE, MARGIN],
        notes: [],
      },
    });
  },
});
