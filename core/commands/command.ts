import type { Draft } from 'immer';
import type { z } from 'zod';
import type { NewId } from '../model/ids';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';

/** What a command may use besides the project: a source of ids, and the parts that may be chosen and embedded. */
export interface CommandContext {
  readonly newId: NewId;
  readonly catalogue: readonly Part[];
}

/**
 * One thing a user can do to a project. `refuse` answers in words why it cannot be done now, else null; `run` then
 * writes to the draft and may rely on what `refuse` checked. Search in the plain `project`, write in the `draft`:
 * reading a draft is slow.
 */
export interface Command<Id extends string = string, S extends z.ZodType = z.ZodType> {
  readonly id: Id;
  /** For the history: "Undo: add wire". */
  readonly label: string;
  readonly args: S;
  refuse(project: Project, args: z.output<S>, context: CommandContext): string | null;
  run(draft: Draft<Project>, args: z.output<S>, context: CommandContext, project: Project): void;
}

/** Keeps the literal id and the argument schema in the type of a command. */
export const command = <const Id extends string, S extends z.ZodType>(c: Command<Id, S>): Command<Id, S> => c;
