import type { KeyboardEvent } from 'react';
import { compareNatural } from '@latchwork/core/base/stable-order';
import { nudge, type Direction } from '@latchwork/core/tools/nudge';
import type { AppStore } from '../../app/store';
import type { Interaction } from '../interaction';
import { toolOfKey } from '../sheet-tools';
import { FORMBOARD_TOOLS } from '../sheet-tool-ids';

const ARROWS: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};
const ZOOMS = { '+': 'in', '=': 'in', '-': 'out', '0': 'all', '9': 'selection' } as const;

/** A key on the formboard. Answers whether it meant something here. */
export function boardKey(e: KeyboardEvent, store: AppStore, interaction: Interaction): boolean {
  const app = store.getState();
  const { project } = app.history;
  if (e.ctrlKey || e.metaKey) return false;
  if (e.key === 'Escape') return interaction.cancel();
  if (e.key === 'Tab') {
    const nodes = [...project.nodes].sort((a, b) => compareNatural(a.designator, b.designator));
    const at = nodes.findIndex((n) => app.view.selection.has(n.id));
    const next = nodes[at < 0 && e.shiftKey ? -1 : at + (e.shiftKey ? -1 : 1)];
    if (next) app.select([next.id]);
    return next !== undefined;
  }
  if (e.key === 'Delete' || e.key === 'Backspace') {
    const mine = new Set(
      [...project.nodes, ...project.segments, ...project.coverings, ...project.ties].map((o) => o.id),
    );
    const ids = [...app.view.selection].filter((key) => mine.has(key));
    if (ids.length && !app.dispatch({ id: 'objects.remove', args: { ids } })) app.select([]);
    return ids.length > 0;
  }
  const arrow = ARROWS[e.key];
  if (arrow) {
    const nodes = new Set(project.nodes.map((n) => n.id));
    const call = nudge(
      project,
      new Set([...app.view.selection].filter((k) => nodes.has(k))),
      arrow,
      e.altKey,
    );
    if (call) app.dispatch(call);
    return call !== null;
  }
  const zoom = ZOOMS[e.key as keyof typeof ZOOMS];
  if (zoom) {
    app.setView({ zoom: { to: zoom, count: (app.view.zoom?.count ?? 0) + 1 } });
    return true;
  }
  const tool = toolOfKey(e.key, FORMBOARD_TOOLS);
  if (tool) app.setView({ tool, placing: null });
  return tool !== undefined;
}
