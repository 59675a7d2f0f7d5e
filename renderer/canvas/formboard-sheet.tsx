import type { ReactNode } from 'react';
import { appStore, type AppStore } from '../app/store';

export function FormboardSheet({ store = appStore }: { store?: AppStore }): ReactNode {
  return <div className="sheet-fill" data-store={store.getState().document.id} />;
}
