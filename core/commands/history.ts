import type { Patch } from 'immer';
import type { Project } from '../model/project';
import { patched } from './shared/writer';

/** One undo step: what one dispatched command changed, there and back. */
export interface Step {
  readonly command: string;
  readonly label: string;
  readonly patches: readonly Patch[];
  readonly inverse: readonly Patch[];
}

/** The project now, and the steps that lead back and forth. */
export interface History {
  readonly project: Project;
  readonly undo: readonly Step[];
  readonly redo: readonly Step[];
}

export const startHistory = (project: Project): History => ({ project, undo: [], redo: [] });

/** One step back; the same history where there is none. */
export function undo(history: History): History {
  const step = history.undo.at(-1);
  if (!step) return history;
  return {
    project: patched(history.project, step.inverse),
    undo: history.undo.slice(0, -1),
    redo: [...history.redo, step],
  };
}

/** One step forth again; the same history where there is none. */
export function redo(history: History): History {
  const step = history.redo.at(-1);
  if (!step) return history;
  return {
    project: patched(history.project, step.patches),
    undo: [...history.undo, step],
    redo: history.redo.slice(0, -1),
  };
}
