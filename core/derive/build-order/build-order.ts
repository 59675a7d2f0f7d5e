import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness } from '../harness';
import { boardOps, closingOps, spliceOps } from './board-ops';
import type { BuildOp } from './build-op';
import { slideOps, slidesBefore, slidOnThings } from './bundle-ops';
import { connectorOps } from './connector-ops';
import { prepareOps } from './prepare-ops';
import { sortOps, type SortedOps } from './sort-ops';

/** Every operation that builds the harness, with what it waits for. */
export const buildOps = memoByIdentity((harness: Harness): readonly BuildOp[] => {
  const things = slidOnThings(harness);
  const before = slidesBefore(things);
  const prepared = prepareOps(harness).map((op) => ({
    ...op,
    needs: [...op.needs, ...(before.get(op.id) ?? [])],
  }));
  const slides = slideOps(things);
  const splices = spliceOps(harness, before);
  const connectors = connectorOps(harness, before);
  const held = [...prepared, ...splices, ...connectors]
    .filter(
      (op) =>
        op.stage === 'splice' || op.stage === 'insert' || op.stage === 'fill' || op.stage === 'terminal',
    )
    .map((op) => op.id);
  const board = boardOps(harness, [...held, ...slides.map((s) => s.id)], new Set(slides.map((s) => s.id)));
  const made = [...prepared, ...slides, ...splices, ...connectors, ...board];
  return [
    ...made,
    ...closingOps(
      harness,
      made.map((op) => op.id),
    ),
  ];
});

/** The same in an order in which they can be done. */
export const buildOrder = memoByIdentity((harness: Harness): SortedOps => sortOps(buildOps(harness)));
