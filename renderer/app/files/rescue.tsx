import type { Opened } from '@latchwork/core/bridge/answers';
import { COLLECTIONS } from '@latchwork/core/model/project';
import { type Rescued, rescueProject } from '@latchwork/core/model/rescue/rescue-project';
import { Button } from '../../ui/button';
import { ask, DialogFrame } from '../../ui/dialogs';
import { say } from '../../ui/toasts';
import { appStore, isDirty } from '../store';
import './rescue.css';

/** Shows what can be read of a damaged file, and takes it as a new project on request. The file stays as it is. */
export async function offerRescue(opened: Opened): Promise<boolean> {
  const rescued = rescueProject(opened.text, { id: crypto.randomUUID(), revisionId: crypto.randomUUID() });
  if (!rescued.ok) {
    say('problem', `${opened.name}: ${rescued.problem}`);
    return false;
  }
  const take = await ask<true>((done) => (
    <RescueDialog name={opened.name} rescued={rescued.value} done={done} />
  ), { wide: true }); // prettier-ignore
  if (!take) return false;
  if (isDirty(appStore.getState())) {
    say('problem', 'Save or close the open project first: its changes are not on disk yet.');
    return false;
  }
  const { project } = rescued.value;
  appStore.getState().open(project, {
    name: `${opened.name.replace(/[.]latchwork$/i, '')} rescued`,
    // Another object than the one on the sheet: the work counts as not saved.
    savedProject: { ...project },
  });
  return true;
}

function RescueDialog({
  name,
  rescued: { project, lost },
  done,
}: {
  name: string;
  rescued: Rescued;
  done: (take: true | null) => void;
}) {
  const found = COLLECTIONS.filter((c) => project[c].length > 0);
  return (
    <DialogFrame
      title={`What can be read of ${name}`}
      buttons={
        <>
          <Button onClick={() => done(null)}>Leave it</Button>
          <Button look="primary" onClick={() => done(true)}>
            Open it as a new project
          </Button>
        </>
      }
    >
      <p>The file itself stays as it is. Look the new project through before you use it.</p>
      <div className="rescue-sides">
        <section aria-label="Read">
          <h3>Read</h3>
          <ul>
            {found.map((c) => (
              <li key={c}>
                {c} <span className="second">{project[c].length}</span>
              </li>
            ))}
          </ul>
        </section>
        <section aria-label="Lost">
          <h3>
            Lost <span className="second">{lost.length}</span>
          </h3>
          {lost.length === 0 ? <p className="second">Nothing.</p> : null}
          <ul>
            {lost.slice(0, 200).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      </div>
    </DialogFrame>
  );
}
