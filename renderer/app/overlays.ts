import { createStore, useStore } from 'zustand';

export type Overlay = 'palette' | 'finder' | 'keys' | 'calculators' | 'limits';

/** Which of the window's own overlays is open. */
export const overlayStore = createStore<{ readonly open: Overlay | null }>()(() => ({ open: null }));

export const useOverlay = (): Overlay | null => useStore(overlayStore, (s) => s.open);

export const openOverlay = (open: Overlay | null): void => overlayStore.setState({ open });
