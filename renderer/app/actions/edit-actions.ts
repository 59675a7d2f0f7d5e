import { copySelection, duplicateSelection, pasteClipboard } from '../clipboard';
import { selectedIds, selectedRefs } from '../selection';
import { type AppState, appStore } from '../store';
import type { Action } from './action';

const anySelected = (s: AppState): boolean => s.view.selection.size > 0;

/** Takes the selected objects away. Parts, signals and the project are no objects of the drawing. */
function removeSelection(): void {
  const { history, view, dispatch, select } = appStore.getState();
  const ids = selectedIds(history.project, view.selection);
  if (ids.length && !dispatch({ id: 'objects.remove', args: { ids: [...ids] } })) select([]);
}

function selectAll(): void {
  const { history, view, select } = appStore.getState();
  const { connectors, equipment, splices, wires, nodes, segments } = history.project;
  const lists = view.page === 'formboard' ? [nodes, segments] : [connectors, equipment, splices, wires];
  select(lists.flat().map((o) => o.id));
}

/** Places of the selection in which a wire ends: selected cavities, else all cavities of selected connectors. */
function selectedPlaces(state: AppState): { connector: string; cavity: string }[] {
  const refs = selectedRefs(state.history.project, state.view.selection);
  return refs.flatMap((ref) => {
    if (ref.type !== 'cavity' && ref.type !== 'connector') return [];
    const use = state.harness.connectorById.get(ref.id);
    return (use?.cavities ?? [])
      .filter((c) => c.ends.length > 0 && (ref.type === 'connector' || c.cavity === ref.cavity))
      .map((c) => ({ connector: ref.id, cavity: c.cavity }));
  });
}

export const EDIT_ACTIONS: readonly Action[] = [
  {
    id: 'edit.undo',
    label: 'Undo',
    group: 'Edit',
    keys: '$mod+KeyZ',
    enabled: (s) => s.history.undo.length > 0,
    run: () => appStore.getState().undo(),
  },
  {
    id: 'edit.redo',
    label: 'Redo',
    group: 'Edit',
    keys: '$mod+Shift+KeyZ',
    enabled: (s) => s.history.redo.length > 0,
    run: () => appStore.getState().redo(),
  },
  {
    id: 'edit.cut',
    label: 'Cut',
    group: 'Edit',
    keys: '$mod+KeyX',
    byEvent: true,
    enabled: anySelected,
    run: async () => {
      if (await copySelection()) removeSelection();
    },
  },
  {
    id: 'edit.copy',
    label: 'Copy',
    group: 'Edit',
    keys: '$mod+KeyC',
    byEvent: true,
    enabled: anySelected,
    run: copySelection,
  },
  { id: 'edit.paste', label: 'Paste', group: 'Edit', keys: '$mod+KeyV', byEvent: true, run: pasteClipboard },
  {
    id: 'edit.duplicate',
    label: 'Duplicate',
    group: 'Edit',
    keys: '$mod+KeyD',
    enabled: anySelected,
    run: duplicateSelection,
  },
  {
    id: 'edit.delete',
    label: 'Delete',
    group: 'Edit',
    keys: 'Delete',
    enabled: anySelected,
    run: removeSelection,
  },
  { id: 'edit.select-all', label: 'Select all', group: 'Edit', keys: '$mod+KeyA', run: selectAll },
  {
    id: 'edit.fit-contacts',
    label: 'Choose contacts that fit',
    group: 'Edit',
    enabled: (s) => selectedPlaces(s).length > 0,
    run: () => {
      const state = appStore.getState();
      state.dispatch({ id: 'contact.fit', args: { places: selectedPlaces(state) } });
    },
  },
];
