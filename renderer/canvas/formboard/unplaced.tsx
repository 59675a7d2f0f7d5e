import { useMemo, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { byId } from '@latchwork/core/base/by-id';
import type { Point } from '@latchwork/core/base/point';
import type { Connector } from '@latchwork/core/model/connector';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Target } from '@latchwork/core/tools/tool';
import type { AppStore } from '../../app/store';

/** A connector dragged onto the formboard: the data transfer holds its id under this type. */
export const CONNECTOR_DRAG_TYPE = 'application/x-latchwork-connector';

/** Puts a connector on the node under the pointer, or on a new one. */
export function placeOnBoard(store: AppStore, connector: string, at: Point, target: Target): void {
  const { history, dispatch, select } = store.getState();
  if (!byId(history.project.connectors).has(connector)) return;
  if (target.on === 'node')
    dispatch({ id: 'connector.edit', args: { ids: [connector], change: { node: target.id } } });
  else dispatch({ id: 'node.add', args: { position: at, connectors: [connector] } });
  select([connector]);
}

/** Connectors of the harness that have no place on the formboard yet. */
export function useUnplaced(store: AppStore): readonly Connector[] {
  const connectors = useStore(store, (s) => s.history.project.connectors);
  return useMemo(
    () =>
      connectors
        .filter((c) => !c.node && c.supply === 'harness')
        .sort((a, b) => compareNatural(a.designator, b.designator)),
    [connectors],
  );
}

interface Props {
  readonly store: AppStore;
  readonly waiting: readonly Connector[];
  readonly middle: () => Point;
}

/** They are dragged onto the board; a click puts one on the selected node, or in the middle. */
export function UnplacedChips({ store, waiting, middle }: Props): ReactNode {
  return (
    <section aria-label="Connectors without a place on the formboard">
      <h2>Not on the board</h2>
      <ul>
        {waiting.map((c) => (
          <li key={c.id}>
            <button
              type="button"
              className="sheet-chip"
              draggable
              title="Drag onto the board, or click to put it on the selected node"
              onDragStart={(e) => {
                e.dataTransfer.setData(CONNECTOR_DRAG_TYPE, c.id);
                e.dataTransfer.effectAllowed = 'copy';
              }}
              onClick={() => {
                const { history, view } = store.getState();
                const nodes = byId(history.project.nodes);
                const node = [...view.selection].find((key) => nodes.has(key));
                placeOnBoard(store, c.id, middle(), node ? { on: 'node', id: node } : { on: 'sheet' });
              }}
            >
              {c.designator}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
