import type { JobStateAnswer } from '@latchwork/core/bridge/answers';
import type { Request } from '@latchwork/core/bridge/contract';
import { createStore, useStore } from 'zustand';
import { callHost } from '../host';

/** Work of the host that the window watches. */
export interface WatchedJob {
  readonly kind: Request<'job:start'>['kind'];
  /** Null while the host has not begun it. */
  readonly job: string | null;
  /** "Exporting 12 files". */
  readonly title: string;
  readonly state: JobStateAnswer;
  /** The user has asked for its end. */
  readonly isEnding: boolean;
}

/** The job that was started last; stays after its end until it is dismissed. */
export const jobStore = createStore<{ readonly watched: WatchedJob | null }>()(() => ({ watched: null }));

export const useJob = (): WatchedJob | null => useStore(jobStore, (s) => s.watched);

const ASK_AGAIN_MS = 150;
const STARTING: JobStateAnswer = { status: 'running', done: 0, total: 0, making: 'Project' };

/** Starts a job and follows it to its end. One at a time: null where another is running, or where the user chose no place. */
export async function followJob(title: string, request: Request<'job:start'>): Promise<JobStateAnswer | null> {
  if (jobStore.getState().watched?.state.status === 'running') return null;
  show({ kind: request.kind, job: null, title, state: STARTING, isEnding: false });
  const started = await callHost('job:start', request);
  if (!started || started.status === 'cancelled') {
    show(null);
    return null;
  }
  if (started.status === 'failed') return end(started);
  const { job } = started;
  if (jobStore.getState().watched?.isEnding) await callHost('job:cancel', { job });
  change({ job });
  for (;;) {
    const state = await callHost('job:state', { job });
    if (!state) return end({ status: 'failed', reason: 'The host does not answer any more.' });
    if (state.status !== 'running') return end(state);
    change({ state });
    await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
  }
} // prettier-ignore

/** Asks for the end of the job that is watched; whatever it has made is taken back. */
export async function cancelJob(): Promise<void> {
  const { watched } = jobStore.getState();
  if (watched?.state.status !== 'running' || watched.isEnding) return;
  change({ isEnding: true });
  if (watched.job !== null) await callHost('job:cancel', { job: watched.job });
}

/** Takes a job that has ended off the screen. */
export function dismissJob(): void {
  if (jobStore.getState().watched?.state.status !== 'running') show(null);
}

const show = (watched: WatchedJob | null): void => jobStore.setState({ watched });
const change = (part: Partial<WatchedJob>): void =>
  jobStore.setState(({ watched }) => ({ watched: watched && { ...watched, ...part } }));

function end(state: JobStateAnswer): JobStateAnswer {
  change({ state });
  return state;
}
