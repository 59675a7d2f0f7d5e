import { useState } from 'react';
import { releaseObstacles } from '@latchwork/core/decisions/release-obstacles';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { toldFindings } from '@latchwork/core/exports/findings/told-findings';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { followJob, useJob } from '../../app/files/follow-job';
import { save } from '../../app/files/save';
import { appStore, useApp } from '../../app/store';
import { today } from '../../app/today';
import { ask, DialogFrame } from '../../ui/dialogs';
import { Button } from '../../ui/button';
import { FieldShell } from '../../ui/field';
import { JobCard } from '../papers/job-card';
import '../shop-papers.css';
import './release.css';

/** Releases the current revision, or makes the package of a released one again. */
export const openRelease = (): Promise<unknown> =>
  ask<null>((done) => <ReleaseDialog done={() => done(null)} />, { wide: true });

function ReleaseDialog({ done }: { done: () => void }) {
  const project = useApp((s) => s.history.project);
  const [problem, setProblem] = useState<string | null>(null);
  const [approver, setApprover] = useState(project.titleBlock.approvalPerson ?? '');
  const job = useJob();
  const current = project.revisions.at(-1);
  const isReleased = current?.status === 'released';
  const obstacles = useObstacles();
  const isBusy = job?.state.status === 'running';
  const blocked = obstacles === null || obstacles.blocking.length > 0;

  const release = async (): Promise<void> => {
    setProblem(null);
    if (!isReleased) {
      const args = {
        date: today(),
        ...(approver.trim() === '' ? {} : { approvalPerson: approver.trim() }),
      };
      const refused = appStore.getState().attempt({ id: 'project.release', args });
      if (refused !== null) return setProblem(refused);
      if (!(await save())) {
        appStore.getState().undo();
        return setProblem('Nothing was released: the project could not be saved as released.');
      }
    }
    const text = serialiseProject(appStore.getState().history.project);
    await followJob(`Package of revision ${current?.revision ?? ''}`, { kind: 'release', text });
  };

  return (
    <DialogFrame
      title={isReleased ? `Package of revision ${current.revision}` : `Release revision ${current?.revision ?? ''}`}
      buttons={
        <>
          <Button onClick={done}>Close</Button>
          <Button look="primary" disabled={isBusy || blocked} onClick={() => void release()}>
            {isReleased ? 'Make the package again' : 'Release and make the package'}
          </Button>
        </>
      }
    >
      <p>
        {isReleased
          ? `Revision ${current.revision} was released on ${current.date ?? 'an unknown day'} and is frozen. Its package is the same to the byte whenever it is made.`
          : 'A release freezes this revision: from then on only decisions can be recorded on it. The package holds all documents, the project file and its exchange files, and every file names the same baseline.'}
      </p>
      <Obstacles done={done} />
      {isReleased ? null : (
        <FieldShell label="Approved by" hint="For the title block; the day is today." stack>
          {({ id, describedBy }) => (
            <input
              id={id}
              className="input"
              value={approver}
              aria-describedby={describedBy}
              onChange={(e) => setApprover(e.target.value)}
            />
          )}
        </FieldShell>
      )}
      {problem === null ? null : <p role="alert">{problem}</p>}
      <JobCard kind="release" />
      <p className="second">{AID_NOT_AUTHORITY}</p>
    </DialogFrame>
  );
} // prettier-ignore

/** What stands in the way as of now; null while the rules still run on the last edit. */
function useObstacles() {
  const check = useApp((s) => s.check);
  const project = useApp((s) => s.history.project);
  return check.harness.project === project ? releaseObstacles(project, check.findings, today()) : null;
}

/** So many obstacles are listed; more are counted. */
const LISTED = 12;

function Obstacles({ done }: { done: () => void }) {
  const obstacles = useObstacles();
  const project = useApp((s) => s.history.project);
  if (obstacles === null) return <p className="second">The rules are being asked …</p>;
  const { blocking, open, accepted } = obstacles;
  const told = toldFindings(
    project,
    blocking.map((b) => b.finding),
    today(),
  );
  return (
    <section aria-label="Findings against the release">
      <p role="status">
        {blocking.length === 0
          ? `No critical finding is open. ${open.length} lighter ${open.length === 1 ? 'one is' : 'ones are'} open and ${accepted.length} accepted on record; they go into the package as they stand.`
          : `${blocking.length} critical ${blocking.length === 1 ? 'finding keeps' : 'findings keep'} this revision from being released. Mend them, or decide on record.`}
      </p>
      <ul className="release-obstacles">
        {told.slice(0, LISTED).map((t) => (
          <li key={t.finding.key}>
            <button
              type="button"
              onClick={() => {
                done();
                appStore.getState().showFinding(t.finding.key);
              }}
            >
              {t.where}: {t.message}
            </button>
          </li>
        ))}
      </ul>
      {told.length > LISTED ? <p className="second">And {told.length - LISTED} more.</p> : null}
    </section>
  );
} // prettier-ignore
