import { dispatch } from '@latchwork/core/commands/dispatch';
import { redo, startHistory, undo, type History } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { countingIds } from '@latchwork/core/model/ids';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';
import { OFFERED } from '../commands/calls';
import { commandFor, crowdedWorkbench, deepFreeze, editFor, preparations } from './random-edits';

const seen = (h: Harness) => ({
  nets: h.nets.map((n) => ({
    key: n.key,
    points: n.points.map((p) => `${p.connector.connector.id}:${p.cavity} ${p.declared?.id ?? ''}`),
    wires: n.wires.map((w) => w.wire),
    signals: n.signals,
    splices: n.splices,
  })),
  supplies: h.supplies.map((s) => ({
    key: s.key,
    nets: s.nets.map((n) => n.key),
    wires: s.wires.map((w) => w.wire),
    mates: s.mates.map((m) => m.mate),
    uses: s.uses.map((u) => u.resolved.connector),
  })),
  ends: h.connectors.map((c) => c.cavities.map((v) => v.ends.map((e) => `${e.wire.wire.id} ${e.index}`))),
  wires: h.wires.map((w) => ({
    wire: w.wire,
    length: w.length,
    segments: w.segments,
    group: w.group,
    from: w.from.connector?.connector,
    to: w.to.connector?.connector,
  })),
  segments: h.segments.map((s) => ({
    segment: s.segment,
    wires: s.wires.map((w) => w.wire),
    diametersMm: s.diametersMm,
    at: [s.fromConnectors, s.toConnectors].map((list) => list.map((c) => c.connector)),
  })),
  byId: [h.connectorById.size, h.wireById.size, h.mateById.size],
});

interface State {
  readonly history: History;
  readonly harness: Harness;
  readonly check: CheckResult;
}

const stateOf = (history: History, before?: State): State => {
  deepFreeze(history.project);
  const harness = deriveHarness(history.project, before?.harness);
  return { history, harness, check: checkHarness(harness, RULES, before?.check) };
};

/** The history after an edit that a number stands for: undo, redo, any command, or an edit of anything. */
function edited(history: History, n: number, newId: () => string): History {
  if (n % 17 === 0) return undo(history);
  if (n % 19 === 0) return redo(history);
  const { project } = history;
  if (n % 23 === 0) return startHistory(preparations[n % preparations.length]!(project));
  const call = n % 2 ? commandFor(n >> 1, project) : editFor(n >> 1, project);
  const result = call && dispatch(history, call, { newId, catalogue: OFFERED });
  return result?.ok ? result.value : history;
}

const edits = fc.array(fc.nat(1_000_000), { minLength: 1, maxLength: 12 });
const bench = crowdedWorkbench(120);

it('gives after any commands what deriving and checking from the start would give', () => {
  fc.assert(
    fc.property(edits, (numbers) => {
      const newId = countingIds(80_000_000);
      const states = [stateOf(startHistory(bench))];
      for (const n of numbers) {
        // Now and then it goes on from an older state, from which another way was already taken.
        const before = states.at(n % 7 === 0 ? -(1 + (n % states.length)) : -1)!;
        const state = stateOf(edited(before.history, n, newId), before);
        states.push(state);
        const fresh = stateOf(startHistory(structuredClone(state.history.project)));
        expect(seen(state.harness)).toEqual(seen(fresh.harness));
        expect(state.check.findings).toEqual(fresh.check.findings);
        expect(state.check.tally()).toEqual(fresh.check.tally());
      }
    }),
    { numRuns: 15 },
  );
}, 120_000);

it('starts from the same harness twice without mixing the two up', () => {
  const start = generateProject({ wires: 60 });
  const before = deriveHarness(start);
  const edit = (n: number) => {
    const result = dispatch(startHistory(start), editFor(n, start)!, {
      newId: countingIds(81_000_000),
      catalogue: [],
    });
    if (!result.ok) throw new Error(result.problem.reason);
    return result.value.project;
  };
  const [removed, moved] = [edit(2), edit(0)];
  deriveHarness(removed, before);
  expect(seen(deriveHarness(moved, before))).toEqual(seen(deriveHarness(moved)));
});
