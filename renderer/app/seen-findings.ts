import { createStore, useStore } from 'zustand';
import { goOnSeen, startSeen, type Seen, type SeenFindings } from '@latchwork/core/decisions/seen-findings';
import { appStore, type AppState } from './store';

const now = (): string => new Date().toISOString();
const checkedOf = ({ check }: AppState) => ({
  project: check.harness.project,
  findings: check.findings,
});

/** Since when each finding is there, as long as this document is open. */
export const seenStore = createStore<{ readonly seen: SeenFindings }>()(() => ({
  seen: startSeen(appStore.getState().check.findings, now()),
}));

appStore.subscribe((state, before) => {
  if (state.check === before.check) return;
  const { seen } = seenStore.getState();
  const next =
    state.document.id === before.document.id
      ? goOnSeen(seen, checkedOf(before), checkedOf(state), now())
      : startSeen(state.check.findings, now());
  if (next !== seen) seenStore.setState({ seen: next });
});

export const useSeen = (key: string): Seen | undefined => useStore(seenStore, (s) => s.seen.get(key));
