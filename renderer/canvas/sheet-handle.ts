import type { AppStore } from '../app/store';
import type { Interaction } from './interaction';
import type { Viewport } from './viewport';

/** A mounted diagram sheet, for what drives it from outside: the bench. */
export interface SheetHandle {
  readonly viewport: Viewport;
  readonly interaction: Interaction;
  readonly element: HTMLElement;
}

const mounted = new WeakMap<AppStore, SheetHandle>();
const waiting = new WeakMap<AppStore, (handle: SheetHandle) => void>();

export function offerSheet(store: AppStore, handle: SheetHandle): void {
  mounted.set(store, handle);
  waiting.get(store)?.(handle);
}

/** The diagram sheet of a store, as soon as it is there. */
export const sheetOf = (store: AppStore): Promise<SheetHandle> => {
  const handle = mounted.get(store);
  return handle ? Promise.resolve(handle) : new Promise((resolve) => waiting.set(store, resolve));
};
