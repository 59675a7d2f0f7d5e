import type { Draft } from 'immer';
import type { z } from 'zod';
import { ok, problem, type Result } from '../base/result';
import { issuesOf } from '../model/parse-json';
import type { Project } from '../model/project';
import type { Command, CommandContext } from './command';
import type { History } from './history';
import { COMMANDS } from './index';
import { frozenReason } from './shared/frozen';
import { writer } from './shared/writer';

type KnownCommand = (typeof COMMANDS)[number];

export type CommandId = KnownCommand['id'];

/** A command by name with the arguments that belong to it. */
export type Call<Id extends CommandId = CommandId> = {
  [C in KnownCommand as C['id']]: { readonly id: C['id']; readonly args: z.input<C['args']> };
}[Id];

/** Why a command was not carried out, in words for the user. Nothing was changed. */
export interface Refusal {
  readonly command: string;
  readonly reason: string;
}

const byName: ReadonlyMap<string, Command> = new Map((COMMANDS as readonly Command[]).map((c) => [c.id, c]));

/**
 * Carries out one command: one step of undo. A command that changes nothing gives the same history back. The only
 * place where a project is written.
 */
export function dispatch(history: History, call: Call, context: CommandContext): Result<History, Refusal> {
  return dispatchUnknown(history, call, context);
}

/** The same for a call whose arguments come from outside: a finding's fix, a file. */
export function dispatchUnknown(
  history: History,
  call: { readonly id: string; readonly args: unknown },
  context: CommandContext,
): Result<History, Refusal> {
  const refuse = (reason: string): Result<History, Refusal> => problem({ command: call.id, reason });
  const command = byName.get(call.id);
  if (!command) return refuse(`There is no command "${call.id}".`);
  const parsed = command.args.safeParse(call.args);
  if (!parsed.success)
    return refuse(issuesOf(parsed.error).map((i) => `${i.path}: ${i.message}`).join('; ')); // prettier-ignore
  const frozen = frozenReason(history.project, command.id);
  if (frozen !== null) return refuse(frozen);
  const reason = command.refuse(history.project, parsed.data, context);
  if (reason !== null) return refuse(reason);
  const [project, patches, inverse] = writer.produceWithPatches(history.project, (draft: Draft<Project>) => {
    command.run(draft, parsed.data, context, history.project);
  });
  if (patches.length === 0) return ok(history);
  return ok({
    project,
    undo: [...history.undo, { command: command.id, label: command.label, patches, inverse }],
    redo: [],
  });
}
