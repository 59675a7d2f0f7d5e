import { useState } from 'react';
import { Button } from '../../ui/button';
import { DialogFrame, ask } from '../../ui/dialogs';
import { FieldShell } from '../../ui/field';

/** Asks for a bare file name, for hosts without a dialog of the system. Null when it was closed. */
export const askFileName = (title: string, suggested: string, ending: string): Promise<string | null> =>
  ask<string>((done) => <FileNameDialog title={title} suggested={suggested} ending={ending} done={done} />);

function FileNameDialog({
  title,
  suggested,
  ending,
  done,
}: {
  title: string;
  suggested: string;
  ending: string;
  done: (name: string | null) => void;
}) {
  const bare = suggested.endsWith(ending) ? suggested.slice(0, -ending.length) : suggested;
  const [name, setName] = useState(bare.replace(/[\\/:*?"<>|]+/g, '-'));
  const problem = nameProblem(name);
  const take = (): void => {
    if (!problem) done(name.trim() + ending);
  };
  return (
    <DialogFrame
      title={title}
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" disabled={problem !== null} onClick={take}>
            Save
          </Button>
        </>
      }
    >
      <FieldShell
        label="File name"
        problem={problem}
        hint="It goes into the working folder of this program."
        stack
      >
        {({ id, describedBy }) => (
          <div className="input-row">
            <input
              id={id}
              className="input"
              autoFocus
              value={name}
              aria-describedby={describedBy}
              onChange={(e) => setName(e.target.value)}
              onKeyDown={(e) => {
                if (e.key === 'Enter') take();
              }}
            />
            <span className="second mono">{ending}</span>
          </div>
        )}
      </FieldShell>
    </DialogFrame>
  );
}

const nameProblem = (name: string): string | null => {
  if (name.trim() === '') return 'A file needs a name.';
  return /[\\/:*?"<>|]/.test(name) ? 'A file name cannot hold \\ / : * ? " < > or |.' : null;
};
