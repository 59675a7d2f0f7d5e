import type { Decision } from '../../model/decision';
import type { Revision } from '../../model/title-block';
import { undo, type History } from '../history';

/** What of a saved file no step back takes away. */
export type Kept = Readonly<
  Record<'decisions', readonly Decision[]> & Record<'revisions', readonly Revision[]>
>;

/**
 * One step back that takes no record away which is in the saved file: records are evidence. Steps that made a decision
 * are passed over, the record stays, and the step before is undone instead; a release ends the way back. What was not
 * saved yet is a slip of the pen and goes like any step.
 */
export function undoKeeping(history: History, saved: Kept): History {
  let from = history;
  while (from.undo.length > 0 && takesDecisionAway(from, saved))
    from = { ...from, undo: from.undo.slice(0, -1) };
  return takesReleaseAway(from, saved) ? history : undo(from);
}

function takesDecisionAway(history: History, { decisions }: Kept): boolean {
  if (decisions.length === 0 || !history.undo.at(-1)?.command.startsWith('decision.')) return false;
  const back = new Map(undo(history).project.decisions.map((d) => [d.id, d]));
  return decisions.some((record) => {
    const then = back.get(record.id);
    return (
      !then || (then.uses?.length ?? 0) < (record.uses?.length ?? 0) || (!!record.closed && !then.closed)
    );
  });
}

function takesReleaseAway(history: History, { revisions }: Kept): boolean {
  if (history.undo.at(-1)?.command !== 'project.release') return false;
  const current = history.project.revisions.at(-1);
  return revisions.some((r) => r.id === current?.id && r.status === 'released');
}
