import { BOARD_COMMANDS } from '../../canvas/formboard/board-commands';
import { appStore } from '../store';
import type { Action } from './action';

/** What can be done with the selection on the formboard. */
export const BOARD_ACTIONS: readonly Action[] = BOARD_COMMANDS.map(({ id, label, key, call }) => ({
  id: `board.${id}`,
  label,
  group: 'Formboard' as const,
  ...(key ? { keys: key.replace(/[A-Z]$/, 'Key$&') } : {}),
  enabled: (s) => s.view.page === 'formboard' && call(s) !== null,
  run: () => {
    const state = appStore.getState();
    const made = call(state);
    if (made) state.dispatch(made);
  },
}));
