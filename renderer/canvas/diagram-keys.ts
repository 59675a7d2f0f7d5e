import type { KeyboardEvent } from 'react';
import type { Direction } from '@latchwork/core/tools/nudge';
import { nudge } from '@latchwork/core/tools/nudge';
import { placeOfKey } from '@latchwork/core/tools/key-wire';
import { cavityStops, walkOn } from '@latchwork/core/tools/walk';
import type { AppStore } from '../app/store';
import type { Interaction } from './interaction';
import { toolOfKey } from './sheet-tools';
import { DIAGRAM_TOOLS } from './sheet-tool-ids';

const ARROWS: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** A key on the diagram. Answers whether it meant something here. */
export function diagramKey(e: KeyboardEvent, store: AppStore, interaction: Interaction): boolean {
  const app = store.getState();
  const { keyWire } = interaction.state.getState();
  const arrow = ARROWS[e.key];
  if (e.ctrlKey || e.metaKey) return false;
  if (e.key === 'Escape') return interaction.cancel();
  if (keyWire) {
    if (e.key === 'Enter') interaction.stepKeyWire('finish');
    else if (e.key === 'Tab') interaction.stepKeyWire(e.shiftKey ? 'previous-connector' : 'next-connector');
    else if (arrow === 'up') interaction.stepKeyWire('previous-cavity');
    else if (arrow === 'down') interaction.stepKeyWire('next-cavity');
    else if (arrow === 'left') interaction.stepKeyWire('previous-connector');
    else if (arrow === 'right') interaction.stepKeyWire('next-connector');
    else return false;
    return true;
  }
  if (e.key === 'Tab') {
    const stop = walkOn(app.harness, app.view.selection, e.shiftKey ? -1 : 1);
    if (stop) app.select([stop.key]);
    return stop !== null;
  }
  if (e.key === 'Enter') return enter(store, interaction);
  if (e.key === 'Delete' || e.key === 'Backspace') return remove(store);
  if (arrow) return onArrow(arrow, e, store);
  const asked = ({ '+': 'in', '=': 'in', '-': 'out', '0': 'all', '9': 'selection' } as const)[e.key];
  if (asked) {
    app.setView({ zoom: { to: asked, count: (app.view.zoom?.count ?? 0) + 1 } });
    return true;
  }
  const tool = toolOfKey(e.key, DIAGRAM_TOOLS);
  if (tool) app.setView({ tool, placing: null });
  return tool !== undefined;
}

/** On a connector: goes to its first cavity. On a cavity: starts a wire. */
function enter(store: AppStore, interaction: Interaction): boolean {
  if (interaction.startKeyWire()) return true;
  const { harness, view, select } = store.getState();
  const [key] = view.selection;
  const first = key === undefined ? undefined : cavityStops(harness, key)[0];
  if (first) select([first.key]);
  return first !== undefined;
}

/** Arrows move what is selected by the grid (with Alt by 1 mm); on a cavity they go to its neighbours. */
function onArrow(arrow: Direction, e: KeyboardEvent, store: AppStore): boolean {
  const { harness, history, view, select, dispatch } = store.getState();
  const [key] = view.selection;
  const place = view.selection.size === 1 && key !== undefined ? placeOfKey(key) : null;
  if (place) {
    const stops = cavityStops(harness, place.connector);
    const at = stops.findIndex((s) => s.key === key);
    const next = stops[at + (arrow === 'up' || arrow === 'left' ? -1 : 1)];
    if (next) select([next.key]);
    return true;
  }
  const call = nudge(history.project, view.selection, arrow, e.altKey);
  if (call) dispatch(call);
  return call !== null;
}

/** Takes away what is selected; for a cavity, the wires that end in it. */
function remove(store: AppStore): boolean {
  const { harness, view, dispatch } = store.getState();
  const ids = [...view.selection].flatMap((key) => {
    const place = placeOfKey(key);
    if (!place) return [key];
    const use = harness.connectorById.get(place.connector)?.cavities.find((c) => c.cavity === place.cavity);
    return use?.ends.map((end) => end.wire.wire.id) ?? [];
  });
  if (ids.length === 0) return false;
  if (!dispatch({ id: 'objects.remove', args: { ids: [...new Set(ids)] } })) store.getState().select([]);
  return true;
}
