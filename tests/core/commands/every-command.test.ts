import { readdirSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { redo, startHistory, undo, type History } from '@latchwork/core/commands/history';
import { COMMANDS } from '@latchwork/core/commands/index';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { countingIds } from '@latchwork/core/model/ids';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { OFFERED, goodCalls, PREPARED, workbench } from './calls';

const context = () => ({ newId: countingIds(50_000), catalogue: OFFERED });

function done(history: History, call: Call): History {
  const result = dispatch(history, call, context());
  if (!result.ok) throw new Error(`${call.id}: ${result.problem.reason}`);
  return result.value;
}

test('the folder is the registry: one file, one command', () => {
  const files = readdirSync('core/commands').filter((f) => f.endsWith('.ts'));
  const commands = files
    .map((f) => f.slice(0, -3))
    .filter((f) => !['clip', 'command', 'dispatch', 'history', 'index'].includes(f));
  expect(COMMANDS.map((c) => c.id.replace('.', '-')).sort()).toEqual(commands.sort());
});

test('the table below has a call for every command', () => {
  expect(goodCalls(workbench()).map((c) => c.id).sort()).toEqual(COMMANDS.map((c) => c.id).sort()); // prettier-ignore
});

describe.each(goodCalls(workbench()).map((c) => [c.id, c] as const))('%s', (id, call) => {
  const before = startHistory((PREPARED[id] ?? ((p) => p))(workbench()));

  it('leaves a project that can be saved and opened', () => {
    const after = done(before, call);
    const reread = parseProject(serialiseProject(after.project));
    expect(reread).toEqual({ ok: true, value: after.project });
  });

  it('is one step, undone to the same bytes and redone to the same bytes', () => {
    const after = done(before, call);
    expect(after.undo).toHaveLength(1);
    const back = undo(after);
    expect(serialiseProject(back.project)).toBe(serialiseProject(before.project));
    expect(serialiseProject(redo(back).project)).toBe(serialiseProject(after.project));
  });

  it('gives the harness that a fresh derivation gives', () => {
    const after = done(before, call).project;
    const step = deriveHarness(after, deriveHarness(before.project));
    const fresh = deriveHarness(after);
    for (const part of ['connectors', 'wires', 'mates', 'nets', 'segments', 'supplies'] as const)
      expect(step[part]).toEqual(fresh[part]);
  });
});

test('a command that changes nothing is no step', () => {
  const history = startHistory(workbench());
  const same = { title: history.project.titleBlock.title };
  expect(done(history, { id: 'project.edit-title-block', args: { change: same } })).toBe(history);
});

test('arguments that do not fit are refused in words and change nothing', () => {
  const history = startHistory(workbench());
  const result = dispatch(history, { id: 'wire.edit', args: { ids: ['not an id'], change: {} } }, context());
  expect(result.ok).toBe(false);
  expect(result.ok ? '' : result.problem.reason).toContain('ids[0]');
});
