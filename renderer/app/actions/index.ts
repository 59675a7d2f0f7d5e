import type { Action } from './action';
import { ARRANGE_ACTIONS } from './arrange-actions';
import { BOARD_ACTIONS } from './board-actions';
import { DRAW_ACTIONS } from './draw-actions';
import { EDIT_ACTIONS } from './edit-actions';
import { FILE_ACTIONS } from './file-actions';
import { VIEW_ACTIONS } from './view-actions';

/** Everything that can be done from menu, palette and keyboard. */
export const ACTIONS: readonly Action[] = [
  ...FILE_ACTIONS,
  ...EDIT_ACTIONS,
  ...DRAW_ACTIONS,
  ...ARRANGE_ACTIONS,
  ...BOARD_ACTIONS,
  ...VIEW_ACTIONS,
];
