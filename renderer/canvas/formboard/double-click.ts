import { byId } from '@latchwork/core/base/by-id';
import type { Point } from '@latchwork/core/base/point';
import { snapped } from '@latchwork/core/tools/snap';
import type { AppStore } from '../../app/store';
import { bendAt } from './board-commands';
import type { BoardModel } from './board-model';

/** A double click sets a node: alone on the board, or into a run, which it splits. With Alt it bends the run. */
export function doubleClick(store: AppStore, model: BoardModel, at: Point, alt: boolean): void {
  const { dispatch, view, history } = store.getState();
  const target = model.hit(at);
  const on =
    target.on === 'segment' ? target : target.on === 'covering' && target.end === null ? target : undefined;
  if (target.on === 'sheet') dispatch({ id: 'node.add', args: { position: snapped(at, view.snap && !alt) } });
  if (!on) return;
  const id = on.on === 'segment' ? on.id : byId(history.project.coverings).get(on.id)?.from.segment;
  const segment = byId(history.project.segments).get(id ?? '');
  if (!segment || on.atMm === undefined) return;
  const atMm = Math.round(on.atMm);
  const call = alt
    ? bendAt(history.project, segment, snapped(at, view.snap))
    : ({ id: 'segment.split', args: { station: { segment: segment.id, atMm } } } as const);
  if (call) dispatch(call);
}
