import { X } from 'lucide-react';
import type { JobStateAnswer } from '@latchwork/core/bridge/answers';
import { cancelJob, dismissJob, useJob, type WatchedJob } from '../../app/files/follow-job';
import { Button } from '../../ui/button';

/** How the work of the host stands, what came of it, and the way to end it. */
export function JobCard({ kind = 'export-all' }: { kind?: WatchedJob['kind'] }) {
  const watched = useJob();
  if (watched?.kind !== kind) return null;
  const { state, title, isEnding } = watched;
  const isRunning = state.status === 'running';
  return (
    <section className="job-card" aria-label={title}>
      <div className="job-head">
        <h3>{isRunning ? title : ENDED[state.status]}</h3>
        {isRunning ? (
          <Button disabled={isEnding} onClick={() => void cancelJob()}>
            {isEnding ? 'Ending …' : 'Cancel'}
          </Button>
        ) : (
          <Button look="icon" aria-label="Dismiss" onClick={dismissJob}>
            <X size={14} aria-hidden />
          </Button>
        )}
      </div>
      {isRunning ? (
        <>
          <progress aria-label={title} value={state.total > 0 ? state.done : undefined} max={state.total || 1} />
          <p role="status" className="job-making">
            {state.total > 0 ? `${state.done} of ${state.total}: ${state.making}` : `${state.making} …`}
          </p>
        </>
      ) : (
        <div role="status">
          <Ended state={state} />
        </div>
      )}
    </section>
  );
} // prettier-ignore

type EndState = Exclude<JobStateAnswer, { status: 'running' }>;

const ENDED: Readonly<Record<EndState['status'], string>> = {
  made: 'Exported',
  blocked: 'Not made',
  cancelled: 'Cancelled',
  failed: 'Nothing was exported',
};

function Ended({ state }: { state: EndState }) {
  switch (state.status) {
    case 'cancelled':
      return <p>What was made so far is taken back: nothing was written.</p>;
    case 'failed':
      return <p>{state.reason}</p>;
    case 'blocked':
      return (
        <ul>
          {state.findings.map((f) => (
            <li key={f}>{f}</li>
          ))}
        </ul>
      );
    case 'made':
      return (
        <>
          <p>
            {state.files.length} {state.files.length === 1 ? 'file' : 'files'} in{' '}
            <span className="mono job-place">{folderOf(state)}</span>
          </p>
          {state.leftOut.length > 0 ? (
            <>
              <h4>Not made ({state.leftOut.length})</h4>
              <ul>
                {state.leftOut.map(({ what, reason }) => (
                  <li key={what}>
                    <span className="mono">{what}</span>: {reason}
                  </li>
                ))}
              </ul>
            </>
          ) : null}
          <details>
            <summary>Files</summary>
            <ul className="mono job-files">
              {state.files.map((path) => (
                <li key={path}>{path.split('/').at(-1)}</li>
              ))}
            </ul>
          </details>
        </>
      );
  }
}

/** The folder that the files share, inside the place. */
function folderOf({ place, files }: Extract<EndState, { status: 'made' }>): string {
  const folder = files[0]?.split('/').slice(0, -1).join('/');
  return folder ? `${place}/${folder}` : place;
}
