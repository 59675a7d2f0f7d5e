import { useMemo, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { byId } from '@latchwork/core/base/by-id';
import type { Point } from '@latchwork/core/base/point';
import type { Connector } from '@latchwork/core/model/connector';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Target } from '@latchwork/core/tools/tool';
import type { Splice } from '@latchwork/core/model/wire';
import type { AppStore } from '../../app/store';
import type { Interaction } from '../interaction';

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

/** A splice dragged onto the formboard. */
export const SPLICE_DRAG_TYPE = 'application/x-latchwork-splice';

/** Puts a splice on the node under the pointer, or on a new one in the run there. */
export function placeSplice(
  store: AppStore,
  interaction: Interaction,
  splice: string,
  at: Point,
  target: Target,
): void {
  const { dispatch, select } = store.getState();
  const place = interaction.facts().board?.placeNear(at, SPLICE_REACH_MM);
  if (target.on === 'node')
    dispatch({ id: 'splice.edit', args: { id: splice, change: { node: target.id } } });
  else if (place) {
    const station = { segment: place.segment, atMm: Math.round(place.atMm) };
    dispatch({ id: 'splice.place-on-segment', args: { splice, station } });
  } else {
    interaction.state.setState({
      note: { at, reason: 'A splice lies on a run: let go over one, or over a node.' },
    });
    return;
  }
  select([splice]);
}

const SPLICE_REACH_MM = 8;
/** More than these are listed when asked for. */
export const FEW = 12;

/** Splices without a place on the formboard, dragged onto a run; a click puts one on the selected node. */
export function LooseSplices({ store, splices }: { store: AppStore; splices: readonly Splice[] }): ReactNode {
  return (
    <details open={splices.length <= FEW}>
      <summary>Splices to place ({splices.length})</summary>
      <ul className="board-chips" aria-label="Splices without a place on the formboard">
        {splices.map((s) => (
          <li key={s.id}>
            <Chip
              type={SPLICE_DRAG_TYPE}
              of={s}
              title="Drag onto a run, or click to put it on the selected node"
              place={() => {
                const { history, view, dispatch, select } = store.getState();
                const node = [...view.selection].find((key) => byId(history.project.nodes).has(key));
                if (node) dispatch({ id: 'splice.edit', args: { id: s.id, change: { node } } });
                select([s.id]);
              }}
            />
          </li>
        ))}
      </ul>
    </details>
  );
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
    <details open={waiting.length <= FEW}>
      <summary>Not on the board ({waiting.length})</summary>
      <ul className="board-chips" aria-label="Connectors without a place on the formboard">
        {waiting.map((c) => (
          <li key={c.id}>
            <Chip
              type={CONNECTOR_DRAG_TYPE}
              of={c}
              title="Drag onto the board, or click to put it on the selected node"
              place={() => {
                const { history, view } = store.getState();
                const nodes = byId(history.project.nodes);
                const node = [...view.selection].find((key) => nodes.has(key));
                placeOnBoard(store, c.id, middle(), node ? { on: 'node', id: node } : { on: 'sheet' });
              }}
            />
          </li>
        ))}
      </ul>
    </details>
  );
}

interface ChipProps {
  /** Under which its id is dragged. */
  readonly type: string;
  readonly of: { readonly id: string; readonly designator: string };
  readonly title: string;
  readonly place: () => void;
}

const Chip = ({ type, of, title, place }: ChipProps): ReactNode => (
  <button
    type="button"
    className="sheet-chip"
    draggable
    title={title}
    onDragStart={(e) => {
      e.dataTransfer.setData(type, of.id);
      e.dataTransfer.effectAllowed = 'copy';
    }}
    onClick={place}
  >
    {of.designator}
  </button>
);
