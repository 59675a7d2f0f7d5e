import { randomUUID } from 'node:crypto';
import type { JobStateAnswer } from '@latchwork/core/bridge/answers';
import { errorFacts, type Log } from './log';
import { failed } from './reason';
import type { Progress } from './release/make-files';

/** What a job does: it tells how far it is, and stops when the signal says so. */
export type Work = (
  onProgress: (progress: Progress) => void,
  signal: AbortSignal,
) => Promise<Exclude<JobStateAnswer, { status: 'running' }>>;

interface Job {
  state: JobStateAnswer;
  readonly stop: AbortController;
}

/** So many at once: each holds a whole project. */
const MAX_RUNNING = 2;
/** States of jobs that have ended are kept for this many. */
const MAX_KEPT = 20;

/** Work that takes longer than a call may take. A window asks how it stands, and may stop it. */
export class Jobs {
  private readonly jobs = new Map<string, Job>();

  constructor(private readonly log: Log) {}

  /** The id of a new job; null while too many run. */
  start(work: Work): string | null {
    const running = [...this.jobs.values()].filter((j) => j.state.status === 'running');
    if (running.length >= MAX_RUNNING) return null;
    const id = randomUUID();
    const job: Job = {
      state: { status: 'running', done: 0, total: 0, making: 'Project' },
      stop: new AbortController(),
    };
    this.jobs.set(id, job);
    this.forgetOldest();
    const onProgress = (progress: Progress): void => void (job.state = { status: 'running', ...progress });
    void work(onProgress, job.stop.signal).then(
      (state) => (job.state = state),
      (error: unknown) => {
        // A fault of ours: the window must not wait for ever.
        this.log.write('fault', { channel: 'job', ...errorFacts(error) });
        job.state = failed('The program made a mistake. Nothing was written; the log tells more.');
      },
    );
    return id;
  }

  stateOf(id: string): JobStateAnswer {
    return this.jobs.get(id)?.state ?? failed('This job is not known here any more.');
  }

  cancel(id: string): void {
    this.jobs.get(id)?.stop.abort();
  }

  private forgetOldest(): void {
    for (const [id, { state }] of this.jobs) {
      if (this.jobs.size <= MAX_KEPT) return;
      if (state.status !== 'running') this.jobs.delete(id);
    }
  }
}
