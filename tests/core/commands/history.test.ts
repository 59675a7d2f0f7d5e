import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { redo, startHistory, undo, type History } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { countingIds } from '@latchwork/core/model/ids';
import { referenceIssues } from '@latchwork/core/model/references';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { goodCalls, workbench } from './calls';

const calls = goodCalls(workbench());

/** Any calls in any order; those that are refused on the way change nothing. */
const sequences = fc.array(fc.integer({ min: 0, max: calls.length - 1 }), { minLength: 1, maxLength: 25 });

function play(order: readonly number[]): History {
  const context = { newId: countingIds(70_000), catalogue: [] };
  let history = startHistory(workbench());
  for (const i of order) {
    const result = dispatch(history, calls[i]!, context);
    if (result.ok) history = result.value;
  }
  return history;
}

test('random sequences of commands undo to the start and redo to the end, byte for byte', () => {
  fc.assert(
    fc.property(sequences, (order) => {
      const end = play(order);
      const steps = end.undo.length;
      let history = end;
      for (let i = 0; i < steps; i++) history = undo(history);
      expect(serialiseProject(history.project)).toBe(serialiseProject(workbench()));
      expect(undo(history)).toBe(history);
      for (let i = 0; i < steps; i++) history = redo(history);
      expect(serialiseProject(history.project)).toBe(serialiseProject(end.project));
      expect(redo(history)).toBe(history);
    }),
    { numRuns: 60 },
  );
});

test('random sequences never leave a name without its object', () => {
  fc.assert(
    fc.property(sequences, (order) => {
      expect(referenceIssues(play(order).project)).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

test('a harness derived step by step equals one derived afresh, and keeps what an edit did not touch', () => {
  fc.assert(
    fc.property(sequences, (order) => {
      const context = { newId: countingIds(70_000), catalogue: [] };
      let history = startHistory(workbench());
      let harness = deriveHarness(history.project);
      for (const i of order) {
        const result = dispatch(history, calls[i]!, context);
        if (!result.ok) continue;
        history = result.value;
        harness = deriveHarness(history.project, harness);
      }
      const fresh = deriveHarness(history.project);
      for (const part of ['connectors', 'wires', 'mates', 'nets'] as const)
        expect(harness[part]).toEqual(fresh[part]);
    }),
    { numRuns: 60 },
  );
});
