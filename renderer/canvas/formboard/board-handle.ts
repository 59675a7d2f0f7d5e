import type { AppStore } from '../../app/store';
import type { SheetHandle } from '../sheet-handle';

const mounted = new WeakMap<AppStore, SheetHandle>();
const waiting = new WeakMap<AppStore, (handle: SheetHandle) => void>();

export function offerBoard(store: AppStore, handle: SheetHandle): void {
  mounted.set(store, handle);
  waiting.get(store)?.(handle);
}

/** The formboard of a store, as soon as it is there: for the bench. */
export const boardOf = (store: AppStore): Promise<SheetHandle> => {
  const handle = mounted.get(store);
  return handle ? Promise.resolve(handle) : new Promise((resolve) => waiting.set(store, resolve));
};
