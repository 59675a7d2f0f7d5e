import { useMemo, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { Point } from '@latchwork/core/base/point';
import { compareNatural } from '@latchwork/core/base/stable-order';
import { routeProblem } from '@latchwork/core/derive/formboard/route-words';
import type { Harness, ResolvedWire } from '@latchwork/core/derive/harness';
import type { AppStore } from '../../app/store';
import { Button } from '../../ui/button';
import { layOut } from './board-empty';
import { LooseSplices, useUnplaced, UnplacedChips } from './unplaced';

const MOST_WIRES = 40;
/** More than these are listed when asked for. */
const FEW_WIRES = 4;

/** What is not on the board yet: connectors to be placed, and wires that find no way, each with the reason. */
export function BoardNotes({ store, middle }: { store: AppStore; middle: () => Point }): ReactNode {
  const harness = useStore(store, (s) => s.harness);
  const selection = useStore(store, (s) => s.view.selection);
  const waiting = useUnplaced(store);
  const [refused, setRefused] = useState<string | null>(null);
  const loose = useMemo(() => looseWires(harness), [harness]);
  const splices = useStore(store, (s) => s.history.project.splices);
  const homeless = splices.filter((s) => !s.node);
  const laid = harness.project.nodes.length > 0;
  if (waiting.length === 0 && loose.length === 0 && (homeless.length === 0 || !laid)) return null;
  return (
    <div className="sheet-float board-notes">
      {waiting.length > 0 && <UnplacedChips store={store} waiting={waiting} middle={middle} />}
      {laid && waiting.length > 0 && (
        <Button look="link" onClick={() => setRefused(layOut(store))}>
          Lay them out from the diagram
        </Button>
      )}
      {refused !== null && <p role="alert">{refused}</p>}
      {laid && homeless.length > 0 && <LooseSplices store={store} splices={homeless} />}
      {loose.length > 0 && (
        <details open={loose.length <= FEW_WIRES}>
          <summary>Not laid out ({loose.length})</summary>
          <ul aria-label="Wires that are not laid out">
            {loose.slice(0, MOST_WIRES).map(({ wire, why }) => (
              <li key={wire.wire.id}>
                <button
                  type="button"
                  className="board-loose"
                  aria-pressed={selection.has(wire.wire.id)}
                  onClick={() => store.getState().select([wire.wire.id])}
                >
                  <b>{wire.wire.designator}</b> {why}
                </button>
              </li>
            ))}
          </ul>
          {loose.length > MOST_WIRES && <p>and {loose.length - MOST_WIRES} more</p>}
        </details>
      )}
    </div>
  );
}

/** Wires of the harness without a way over the board, and why. Typed lengths do not put them on it. */
export function looseWires(
  harness: Harness,
): readonly { readonly wire: ResolvedWire; readonly why: string }[] {
  if (harness.project.nodes.length === 0) return [];
  return harness.wires
    .filter((w) => !w.route.found)
    .sort((a, b) => compareNatural(a.wire.designator, b.wire.designator))
    .map((wire) => ({ wire, why: routeProblem(harness, wire) ?? '' }));
}
