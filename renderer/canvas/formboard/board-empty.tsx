import { useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { AppStore } from '../../app/store';
import { Button } from '../../ui/button';

/** Makes the first layout and brings it into view; null, or why there is none. */
export function layOut(store: AppStore): string | null {
  const { attempt, setView, view } = store.getState();
  const refused = attempt({ id: 'formboard.lay-out', args: {} });
  if (refused === null) setView({ zoom: { to: 'all', count: (view.zoom?.count ?? 0) + 1 } });
  return refused;
}

/** On an empty board: what it is, and the first step. */
export function BoardEmpty({ store }: { store: AppStore }): ReactNode {
  const empty = useStore(store, (s) => s.history.project.nodes.length === 0);
  const drawn = useStore(store, (s) => s.history.project.wires.length > 0);
  const [refused, setRefused] = useState<string | null>(null);
  if (!empty) return null;
  return (
    <div className="board-empty">
      <section className="sheet-float board-start" aria-label="Empty formboard">
        <h2>Nothing is laid out yet</h2>
        <p className="second">
          The formboard shows the harness at true scale: nodes where runs meet, segments between them with
          their lengths, and what lies on them.
        </p>
        {refused !== null && <p role="alert">{refused}</p>}
        <div className="board-start-actions">
          {drawn && (
            <Button look="primary" onClick={() => setRefused(layOut(store))}>
              Lay out from the diagram
            </Button>
          )}
          <Button onClick={() => store.getState().setView({ tool: 'node' })}>Place nodes by hand</Button>
        </div>
        {drawn ? null : (
          <p className="second">Draw wires on the diagram, then a first layout can be made from it.</p>
        )}
      </section>
    </div>
  );
}
