import { createStore, useStore } from 'zustand';
import {
  goOnSeen,
  recall,
  startSeen,
  toRemember,
  type Seen,
  type SeenFindings,
} from '@latchwork/core/decisions/seen-findings';
import { callHost, hostStore } from './host';
import { appStore, type AppState } from './store';

const now = (): string => new Date().toISOString();
const checkedOf = ({ check }: AppState) => ({
  project: check.harness.project,
  findings: check.findings,
});

interface SeenState {
  readonly seen: SeenFindings;
  /** Whether the machine has been asked what it remembers of this document; only then it is told anew. */
  readonly recalled: boolean;
}

/** Since when each finding is there: as long as this document is open, and before, where the machine remembers it. */
export const seenStore = createStore<SeenState>()(() => ({
  seen: startSeen(appStore.getState().check.findings, now()),
  recalled: false,
}));

appStore.subscribe((state, before) => {
  if (state.document.id !== before.document.id) {
    seenStore.setState({ seen: startSeen(state.check.findings, now()), recalled: false });
    void recallFromHost(state);
  } else if (state.check !== before.check) {
    const { seen } = seenStore.getState();
    const next = goOnSeen(seen, checkedOf(before), checkedOf(state), now());
    if (next !== seen) seenStore.setState({ seen: next });
  }
});

/** A project that was never saved has no past, and leaves none. */
const hasFile = (state: AppState): boolean =>
  state.document.token !== null && hostStore.getState().client !== null;

async function recallFromHost(state: AppState): Promise<void> {
  if (!hasFile(state)) return;
  const answer = await callHost('history:read', { project: state.history.project.id });
  const here = appStore.getState();
  if (!answer || here.document.id !== state.document.id) return;
  const { seen } = seenStore.getState();
  seenStore.setState({
    seen: answer.findings ? recall(seen, checkedOf(here), answer.findings, now()) : seen,
    recalled: true,
  });
}

const WRITE_AFTER_MS = 1500;

/** Lets the machine remember the watch, a moment after each change of it. Returns how to stop. */
export function keepFindingHistory(): () => void {
  let timer = 0;
  const write = (): void => {
    const state = appStore.getState();
    if (!hasFile(state)) return;
    if (!seenStore.getState().recalled) return void recallFromHost(state);
    const findings = [...toRemember(seenStore.getState().seen, checkedOf(state))];
    void callHost('history:write', { project: state.history.project.id, findings });
  };
  const later = (): void => {
    clearTimeout(timer);
    timer = window.setTimeout(write, WRITE_AFTER_MS);
  };
  const stops = [
    seenStore.subscribe(later),
    // A new project that is saved for the first time has a past from then on.
    appStore.subscribe((state, before) => {
      if (state.document.token !== before.document.token) later();
    }),
  ];
  // What was open before anybody kept watch is remembered too.
  later();
  return () => {
    clearTimeout(timer);
    for (const stop of stops) stop();
  };
}

export const useSeen = (key: string): Seen | undefined => useStore(seenStore, (s) => s.seen.get(key));
