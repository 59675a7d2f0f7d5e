import type { ToolId } from '@latchwork/core/tools/step-tool';
import { DIAGRAM_TOOLS, FORMBOARD_TOOLS } from '../../canvas/sheet-tool-ids';
import { TOOLS } from '../../canvas/sheet-tools';
import { appStore } from '../store';
import type { Action } from './action';

const ALL: readonly ToolId[] = [...new Set([...DIAGRAM_TOOLS, ...FORMBOARD_TOOLS])];

/** Takes a tool up, on the sheet that has it. */
function takeUp(tool: ToolId): void {
  const { view, setView } = appStore.getState();
  const here = view.page === 'formboard' ? FORMBOARD_TOOLS : DIAGRAM_TOOLS;
  const other = view.page === 'formboard' ? 'diagram' : 'formboard';
  setView({ tool, placing: null, page: here.includes(tool) ? view.page : other });
}

export const DRAW_ACTIONS: readonly Action[] = ALL.map((tool) => ({
  id: `draw.${tool}`,
  label: TOOLS[tool].name,
  group: 'Draw' as const,
  keys: `Key${TOOLS[tool].key}`,
  enabled: (s) => s.view.page === 'diagram' || s.view.page === 'formboard',
  run: () => takeUp(tool),
}));
