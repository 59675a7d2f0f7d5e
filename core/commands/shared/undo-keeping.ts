import type { Decision } from '../../model/decision';
import { undo, type History } from '../history';

/**
 * One step back that takes no record away which is in the saved file: records are evidence. Steps that made one are
 * passed over, the record stays, and the step before is undone instead. A record that was not saved yet is a slip of the
 * pen and goes like any step.
 */
export function undoKeeping(history: History, saved: readonly Decision[]): History {
  let from = history;
  while (from.undo.length > 0 && takesAway(from, saved)) from = { ...from, undo: from.undo.slice(0, -1) };
  return undo(from);
}

function takesAway(history: History, saved: readonly Decision[]): boolean {
  if (saved.length === 0 || !history.undo.at(-1)?.command.startsWith('decision.')) return false;
  const back = new Map(undo(history).project.decisions.map((d) => [d.id, d]));
  return saved.some((record) => {
    const then = back.get(record.id);
    return (
      !then || (then.uses?.length ?? 0) < (record.uses?.length ?? 0) || (!!record.closed && !then.closed)
    );
  });
}
