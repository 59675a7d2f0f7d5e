import { useMemo, useState } from 'react';
import { changeHeading, fieldChangeText, fieldText, valueText } from '@latchwork/core/derive/change-words';
import { changesOf } from '@latchwork/core/derive/changes-of';
import type { Conflict, Side } from '@latchwork/core/merge/conflict';
import { mergeProjects } from '@latchwork/core/merge/merge-projects';
import type { Project } from '@latchwork/core/model/project';
import { Button } from '../../ui/button';
import { ask, DialogFrame } from '../../ui/dialogs';
import './merge-dialog.css';

export interface MergeStates {
  /** The state that both come from. */
  readonly base: Project;
  readonly mine: Project;
  readonly theirs: Project;
}

/** Shows what both sides changed and asks where they disagree. The merged project, or null. */
export const askMerge = (states: MergeStates): Promise<Project | null> =>
  ask<Project>((done) => <MergeDialog states={states} done={done} />, { wide: true });

/** So many changes of a side are listed; more are counted. */
const LISTED = 100;

function MergeDialog({ states, done }: { states: MergeStates; done: (project: Project | null) => void }) {
  const { base, mine, theirs } = states;
  const [choices, choose] = useState<ReadonlyMap<string, Side>>(new Map());
  const merge = useMemo(() => mergeProjects(base, mine, theirs, choices), [base, mine, theirs, choices]);
  const conflicts = useAllConflicts(merge.status === 'conflicts' ? merge.conflicts : []);
  const left = merge.status === 'conflicts' ? merge.conflicts.length : 0;
  return (
    <DialogFrame
      title="Merge with the file on disk"
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button
            look="primary"
            disabled={merge.status !== 'merged'}
            onClick={() => merge.status === 'merged' && done(merge.project)}
          >
            Merge
          </Button>
        </>
      }
    >
      <p role="status">
        {merge.status === 'refused'
          ? `These changes cannot stand together: ${merge.issues.map((i) => `${i.path}: ${i.message}`).join('; ')}. Save yours under another name.`
          : left > 0
            ? `${left} ${left === 1 ? 'value was' : 'values were'} changed by both of you. Choose which one holds.`
            : 'Both sides fit together. Nothing is written until you save.'}
      </p>
      {conflicts.length > 0 ? (
        <ol className="merge-conflicts">
          {conflicts.map((c) => (
            <Question
              key={c.key}
              conflict={c}
              states={states}
              side={choices.get(c.key)}
              onChoose={(side) => choose(new Map([...choices, [c.key, side]]))}
            />
          ))}
        </ol>
      ) : null}
      <div className="merge-sides">
        <ChangeList title="Changed on disk" from={base} to={theirs} />
        <ChangeList title="Changed here" from={base} to={mine} />
      </div>
    </DialogFrame>
  );
}

/** Conflicts in the order in which they came up; one that is answered stays, so that the answer can be changed. */
function useAllConflicts(open: readonly Conflict[]): readonly Conflict[] {
  const [seen, setSeen] = useState<readonly Conflict[]>([]);
  const fresh = open.filter((c) => !seen.some((s) => s.key === c.key));
  if (fresh.length > 0) setSeen([...seen, ...fresh]);
  return seen;
}

function Question({
  conflict,
  states: { mine, theirs },
  side,
  onChoose,
}: {
  conflict: Conflict;
  states: MergeStates;
  side: Side | undefined;
  onChoose: (side: Side) => void;
}) {
  const { key, collection, id, field } = conflict;
  const holder = conflict.mine === undefined && field === null ? theirs : mine;
  const what = changeHeading(holder, holder, { collection, id, what: 'changed', fields: [] });
  const told = (project: Project, value: unknown): string =>
    field === null ? (value === undefined ? 'taken away' : 'kept') : valueText(project, value);
  return (
    <li>
      <fieldset>
        <legend>{field === null ? what : `${what}: ${fieldText(field)}`}</legend>
        {(['mine', 'theirs'] as const).map((s) => (
          <label key={s}>
            <input type="radio" name={key} checked={side === s} onChange={() => onChoose(s)} />{' '}
            {s === 'mine' ? 'Here' : 'On disk'}:{' '}
            <b>{s === 'mine' ? told(mine, conflict.mine) : told(theirs, conflict.theirs)}</b>
          </label>
        ))}
      </fieldset>
    </li>
  );
}

function ChangeList({ title, from, to }: { title: string; from: Project; to: Project }) {
  const changes = useMemo(() => changesOf(from, to), [from, to]);
  return (
    <section aria-label={title}>
      <h3>
        {title} <span className="second">{changes.length}</span>
      </h3>
      {changes.length === 0 ? <p className="second">Nothing.</p> : null}
      <ul>
        {changes.slice(0, LISTED).map((c) => (
          <li key={`${c.collection} ${c.id}`}>
            {changeHeading(from, to, c)}
            {c.fields.slice(0, 5).map((f) => (
              <div key={f.field} className="second">
                {fieldChangeText(from, to, f)}
              </div>
            ))}
          </li>
        ))}
      </ul>
      {changes.length > LISTED ? <p className="second">And {changes.length - LISTED} more.</p> : null}
    </section>
  );
}
