import { useState } from 'react';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { TextField, needed } from '../../ui/text-field';
import { attempt } from '../inspector/fields';
import { openRelease } from '../release/release-dialog';

/** The revision history, the newest last, and a new line for it. */
export function Revisions() {
  const revisions = useApp((s) => s.history.project.revisions);
  const creator = useApp((s) => s.history.project.titleBlock.creator);
  const [adding, setAdding] = useState(false);
  const current = revisions.at(-1);
  const isReleased = current?.status === 'released';
  const add = (description: string): string | null => {
    const today = new Date().toISOString().slice(0, 10);
    const refused = attempt({
      id: 'project.add-revision',
      args: {
        revision: {
          revision: nextRevision(revisions.at(-1)?.revision),
          date: today,
          author: creator,
          description,
        },
      },
    });
    if (refused === null) setAdding(false);
    return refused;
  };
  return (
    <>
      <table className="mini-table">
        <tbody>
          {revisions.map((r) => (
            <tr key={r.id}>
              <td className="mono">{r.revision}</td>
              <td className="mono">{r.date}</td>
              <td title={r.description}>{r.description}</td>
              <td className="second">{r.status}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {adding ? (
        <TextField
          label={`Revision ${nextRevision(revisions.at(-1)?.revision)}: what has changed`}
          stack
          autoFocus
          value=""
          commit={needed('The description', add)}
          hint="Enter adds it"
        />
      ) : (
        <div className="card-actions">
          <Button onClick={() => setAdding(true)}>
            {isReleased ? 'Start the next revision' : 'Add a revision'}
          </Button>
          {current ? (
            <Button onClick={() => void openRelease()}>
              {isReleased ? 'Make the package …' : `Release revision ${current.revision} …`}
            </Button>
          ) : null}
        </div>
      )}
    </>
  );
}

/** A, B, … Z, AA; numbers count on. */
export function nextRevision(last: string | undefined): string {
  if (!last) return 'A';
  if (/^\d+$/.test(last)) return String(Number(last) + 1);
  const head = last.slice(0, -1);
  const tail = last.at(-1) ?? '';
  if (!/[A-Z]/.test(tail)) return `${last}1`;
  return tail === 'Z'
    ? `${head ? nextRevision(head) : 'A'}A`
    : head + String.fromCharCode(tail.charCodeAt(0) + 1);
}
