import type { ReactNode } from 'react';
import { useStore } from 'zustand';
import type { AppStore } from '../../app/store';
import { Button } from '../../ui/button';
import { EmptyPlace } from '../../ui/empty-place';

/** On an empty board: what it is, and the first step. */
export function BoardEmpty({ store }: { store: AppStore }): ReactNode {
  const empty = useStore(store, (s) => s.history.project.nodes.length === 0);
  const drawn = useStore(store, (s) => s.history.project.wires.length > 0);
  if (!empty) return null;
  return (
    <div className="sheet-float board-empty">
      <EmptyPlace
        title="Nothing is laid out yet"
        action={
          <Button onClick={() => store.getState().setView({ tool: 'node' })}>Place nodes by hand</Button>
        }
      >
        <p>
          The formboard shows the harness at true scale: nodes where runs meet, segments between them with
          their lengths, and what lies on them.
          {drawn ? '' : ' Draw wires on the diagram first.'}
        </p>
      </EmptyPlace>
    </div>
  );
}
