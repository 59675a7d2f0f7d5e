import { appStore } from './store';

export type PanelId = 'shelf' | 'inspector' | 'ledger';

export interface PanelSpec {
  readonly id: PanelId;
  readonly title: string;
  readonly keys: string;
  /** Size while the user has chosen none, pixels. 0 is put away. */
  readonly firstPx: number;
  readonly openPx: number;
}

export const PANELS: readonly PanelSpec[] = [
  { id: 'shelf', title: 'Parts shelf', keys: '$mod+KeyB', firstPx: 272, openPx: 272 },
  { id: 'inspector', title: 'Inspector', keys: '$mod+KeyI', firstPx: 332, openPx: 332 },
  { id: 'ledger', title: 'Connection table', keys: '$mod+KeyJ', firstPx: 0, openPx: 240 },
];

const specOf = (id: PanelId): PanelSpec => PANELS.find((p) => p.id === id) as PanelSpec;

/** Size of a panel in pixels; 0 while it is put away. */
export const panelPx = (sizes: Readonly<Record<string, number>>, id: PanelId): number =>
  sizes[id] ?? specOf(id).firstPx;

export function setPanelPx(id: PanelId, px: number): void {
  const { view, setView } = appStore.getState();
  if (Math.round(px) !== panelPx(view.panelSizesPx, id))
    setView({ panelSizesPx: { ...view.panelSizesPx, [id]: Math.round(px) } });
}

/** Puts a panel away, or brings it back in its usual size. */
export function togglePanel(id: PanelId): void {
  const open = panelPx(appStore.getState().view.panelSizesPx, id) > 0;
  setPanelPx(id, open ? 0 : specOf(id).openPx);
}
