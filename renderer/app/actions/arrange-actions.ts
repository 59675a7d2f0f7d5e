import { selectedIds, selectedRefs } from '../selection';
import { type AppState, appStore } from '../store';
import type { Action } from './action';

const EDGES = [
  ['left', 'Align left edges'],
  ['right', 'Align right edges'],
  ['top', 'Align top edges'],
  ['bottom', 'Align bottom edges'],
  ['centre-x', 'Align centres in a column'],
  ['centre-y', 'Align centres in a row'],
] as const;

const PLACED = new Set(['connector', 'equipment', 'splice', 'node']);
const placedCount = (s: AppState): number =>
  selectedRefs(s.history.project, s.view.selection).filter((r) => PLACED.has(r.type)).length;

const selectedConnectors = (s: AppState): string[] =>
  selectedRefs(s.history.project, s.view.selection).flatMap((r) => (r.type === 'connector' ? [r.id] : []));

export const ARRANGE_ACTIONS: readonly Action[] = [
  ...EDGES.map(([edge, label]) => ({
    id: `arrange.${edge}`,
    label,
    group: 'Arrange' as const,
    enabled: (s: AppState) => placedCount(s) > 1,
    run: () => {
      const { history, view, dispatch } = appStore.getState();
      dispatch({
        id: 'objects.align',
        args: { ids: [...selectedIds(history.project, view.selection)], edge },
      });
    },
  })),
  {
    id: 'arrange.turn',
    label: 'Turn connectors round',
    group: 'Arrange',
    keys: 'KeyR',
    enabled: (s) => selectedConnectors(s).length > 0,
    run: () => {
      const state = appStore.getState();
      const ids = selectedConnectors(state);
      const first = state.history.project.connectors.find((c) => c.id === ids[0]);
      if (first)
        state.dispatch({
          id: 'connector.edit',
          args: { ids, change: { exit: first.exit === 'left' ? 'right' : 'left' } },
        });
    },
  },
  {
    id: 'arrange.switch-view',
    label: 'Show the other face of connectors',
    group: 'Arrange',
    keys: 'KeyF',
    enabled: (s) => selectedConnectors(s).length > 0,
    run: () => {
      const state = appStore.getState();
      const ids = selectedConnectors(state);
      const first = state.history.project.connectors.find((c) => c.id === ids[0]);
      const view = first?.view === 'mating-face' ? 'wire-entry-face' : 'mating-face';
      state.dispatch({ id: 'connector.edit', args: { ids, change: { view } } });
    },
  },
  {
    id: 'arrange.group',
    label: 'Twist selected wires together',
    group: 'Arrange',
    keys: '$mod+KeyG',
    enabled: (s) =>
      selectedRefs(s.history.project, s.view.selection).filter((r) => r.type === 'wire').length > 1,
    run: () => {
      const { history, view, dispatch } = appStore.getState();
      const wires = selectedRefs(history.project, view.selection).flatMap((r) =>
        r.type === 'wire' ? [r.id] : [],
      );
      dispatch({ id: 'group.add', args: { wires, form: 'twisted' } });
    },
  },
];
