import type { KeyboardEvent } from 'react';
import { COLLECTIONS } from '@latchwork/core/model/project';
import { walkBoard } from '@latchwork/core/tools/formboard/board-walk';
import { nudgeBoard } from '@latchwork/core/tools/formboard/nudge-board';
import type { Direction } from '@latchwork/core/tools/nudge';
import type { AppStore } from '../../app/store';
import type { Interaction } from '../interaction';
import { toolOfKey } from '../sheet-tools';
import { FORMBOARD_TOOLS } from '../sheet-tool-ids';
import { BOARD_COMMANDS } from './board-commands';

const ARROWS: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};
const ZOOMS = { '+': 'in', '=': 'in', '-': 'out', '0': 'all', '9': 'selection' } as const;
/** What Delete takes away on the formboard: a wire or a connector is not meant by it here. */
const OF_BOARD = ['nodes', 'segments', 'coverings', 'ties', 'fixings', 'labels', 'dimensions'] as const;

/** A key on the formboard. Answers whether it meant something here. */
export function boardKey(e: KeyboardEvent, store: AppStore, interaction: Interaction): boolean {
  const app = store.getState();
  const { project } = app.history;
  if (e.ctrlKey || e.metaKey) return false;
  if (e.key === 'Escape') return interaction.cancel();
  if (e.key === 'Enter') return interaction.finish();
  if (e.key === 'Tab') {
    const next = walkBoard(app.harness, app.view.selection, e.shiftKey ? -1 : 1);
    if (next) app.select([next.key]);
    return next !== null;
  }
  if (e.key === 'Delete' || e.key === 'Backspace') return remove(store);
  const arrow = ARROWS[e.key];
  if (arrow) {
    const call = nudgeBoard(project, app.view.selection, arrow, e.altKey);
    if (call) app.dispatch(call);
    return call !== null;
  }
  const zoom = ZOOMS[e.key as keyof typeof ZOOMS];
  if (zoom) {
    app.setView({ zoom: { to: zoom, count: (app.view.zoom?.count ?? 0) + 1 } });
    return true;
  }
  if (e.altKey) return false;
  const tool = e.shiftKey ? undefined : toolOfKey(e.key, FORMBOARD_TOOLS);
  if (tool) {
    app.setView({ tool, placing: null });
    return true;
  }
  const pressed = `${e.shiftKey ? 'Shift+' : ''}${e.key.toUpperCase()}`;
  const command = BOARD_COMMANDS.find((c) => c.key === pressed);
  if (!command) return false;
  const call = command.call(app);
  if (call) app.dispatch(call);
  return true;
}

function remove(store: AppStore): boolean {
  const { history, view, dispatch, select } = store.getState();
  const mine = new Set(
    COLLECTIONS.filter((c) => (OF_BOARD as readonly string[]).includes(c)).flatMap((c) =>
      history.project[c].map((o) => o.id),
    ),
  );
  const ids = [...view.selection].filter((key) => mine.has(key));
  if (ids.length && !dispatch({ id: 'objects.remove', args: { ids } })) select([]);
  return ids.length > 0;
}
