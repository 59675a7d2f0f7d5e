import {
  AlignStartVertical, Box, CircleDot, Cpu, Hand, Maximize, Milestone, Minus, MousePointer2, PanelTop, Plus, Route, Ruler, Spline, Waypoints, TriangleAlert, type LucideIcon,
} from 'lucide-react'; // prettier-ignore
import { useEffect, useRef, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { ToolId } from '@latchwork/core/tools/step-tool';
import type { AppStore } from '../app/store';
import type { Viewport } from './viewport';

/** Name, letter and picture of each tool. */
export const TOOLS: Readonly<
  Record<ToolId, { readonly icon: LucideIcon; readonly name: string; readonly key: string }>
> = {
  select: { icon: MousePointer2, name: 'Select and draw', key: 'V' },
  hand: { icon: Hand, name: 'Move the sheet', key: 'H' },
  wire: { icon: Spline, name: 'Draw wire from anywhere', key: 'W' },
  splice: { icon: CircleDot, name: 'Place splice', key: 'S' },
  board: { icon: Cpu, name: 'Draw board', key: 'B' },
  panel: { icon: PanelTop, name: 'Draw panel', key: 'P' },
  device: { icon: Box, name: 'Draw device', key: 'D' },
  node: { icon: Waypoints, name: 'Place node', key: 'N' },
  segment: { icon: Milestone, name: 'Draw segment', key: 'G' },
  dimension: { icon: Ruler, name: 'Chain dimension', key: 'M' },
  baseline: { icon: AlignStartVertical, name: 'Baseline dimension', key: 'L' },
  path: { icon: Route, name: 'Pin the path of selected wires', key: 'T' },
};

/** The tool of that letter, among those of the sheet. */
export const toolOfKey = (key: string, among: readonly ToolId[]): ToolId | undefined =>
  among.find((id) => TOOLS[id].key === key.toUpperCase());

/** The tools of a sheet, and its zoom. */
export function SheetTools({ store, tools }: { store: AppStore; tools: readonly ToolId[] }): ReactNode {
  const tool = useStore(store, (s) => s.view.tool);
  return (
    <div className="sheet-float sheet-tools" role="toolbar" aria-label="Tools">
      {tools.map((id) => {
        const { icon: Icon, name, key } = TOOLS[id];
        return (
          <button
            key={id}
            type="button"
            className="sheet-tool"
            aria-pressed={tool === id}
            aria-label={name}
            aria-keyshortcuts={key}
            title={`${name} (${key})`}
            onClick={() => store.getState().setView({ tool: id, placing: null })}
          >
            <Icon size={16} strokeWidth={1.6} aria-hidden />
          </button>
        );
      })}
    </div>
  );
}

/** Zoom at which the sheet counts as 100 %, px per mm. */
const FULL = 3;

interface ZoomProps {
  readonly store: AppStore;
  readonly viewport: Viewport;
  /** Offers to hide the findings of this sheet. */
  readonly findings?: boolean;
}

export function SheetZoom({ store, viewport, findings = false }: ZoomProps): ReactNode {
  const findingsShown = useStore(store, (s) => s.view.findingsShown);
  const shown = useRef<HTMLOutputElement>(null);
  // Written past React: it follows every frame of a zoom.
  useEffect(() => {
    let text = '';
    const write = (): void => {
      const next = `${Math.round((viewport.camera().pxPerMm / FULL) * 100)} %`;
      if (next !== text && shown.current) shown.current.textContent = text = next;
    };
    write();
    return viewport.watch(write);
  }, [viewport]);
  const ask = (to: 'all' | 'selection' | 'in' | 'out'): void => {
    const { view, setView } = store.getState();
    setView({ zoom: { to, count: (view.zoom?.count ?? 0) + 1 } });
  };
  return (
    <div className="sheet-float sheet-zoom" role="group" aria-label="Zoom">
      {findings && (
        <button
          type="button"
          className="sheet-tool"
          aria-pressed={findingsShown}
          aria-label="Findings on the sheet"
          title="Findings on the sheet; critical ones stay"
          onClick={() => store.getState().setView({ findingsShown: !findingsShown })}
        >
          <TriangleAlert size={16} strokeWidth={1.6} aria-hidden />
        </button>
      )}
      <button
        type="button"
        className="sheet-tool"
        aria-label="Zoom out"
        title="Zoom out (-)"
        onClick={() => ask('out')}
      >
        <Minus size={16} strokeWidth={1.6} aria-hidden />
      </button>
      <output ref={shown} />
      <button
        type="button"
        className="sheet-tool"
        aria-label="Zoom in"
        title="Zoom in (+)"
        onClick={() => ask('in')}
      >
        <Plus size={16} strokeWidth={1.6} aria-hidden />
      </button>
      <span className="sheet-rule" />
      <button
        type="button"
        className="sheet-tool"
        aria-label="Show all"
        title="Show all (0)"
        onClick={() => ask('all')}
      >
        <Maximize size={16} strokeWidth={1.6} aria-hidden />
      </button>
    </div>
  );
}
