import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo, type History } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { countingIds } from '@latchwork/core/model/ids';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';

const start = generateProject({ wires: 60 });

/** An edit for a number, on whatever is there now. */
function editFor(n: number, { project }: History): Call | null {
  const pick = <T>(list: readonly T[]): T | undefined => list[(n >> 3) % Math.max(1, list.length)];
  const [connector, wire, mate] = [pick(project.connectors), pick(project.wires), pick(project.mates)];
  const housing = pick(project.connectors.filter((c) => c.supply === 'harness'));
  switch (n % 8) {
    case 0:
      return connector
        ? { id: 'objects.move', args: { moves: [{ id: connector.id, to: { x: n, y: -n } }] } }
        : null;
    case 1:
      return wire ? { id: 'wire.edit', args: { ids: [wire.id], change: { colour: { base: 'PK' } } } } : null;
    case 2:
      return wire ? { id: 'objects.remove', args: { ids: [wire.id] } } : null;
    case 3:
      return mate ? { id: 'objects.remove', args: { ids: [mate.id] } } : null;
    case 4:
      return housing
        ? {
            id: 'wire.add',
            args: {
              from: { at: 'cavity', connector: housing.id, cavity: '1' },
              to: { at: 'free', position: { x: n, y: 0 } },
            },
          }
        : null;
    case 5:
      return wire && housing
        ? {
            id: 'wire.move-end',
            args: { id: wire.id, end: 1, to: { at: 'cavity', connector: housing.id, cavity: '2' } },
          }
        : null;
    case 6:
      return connector ? { id: 'objects.remove', args: { ids: [connector.id] } } : null;
    default: {
      const signal = pick(project.signals);
      return connector && signal
        ? { id: 'cavity.set-signal', args: { connector: connector.id, cavity: '1', signal: signal.id } }
        : null;
    }
  }
}

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
    from: w.from.connector?.connector,
    to: w.to.connector?.connector,
  })),
});

it('gives after any edits what deriving and checking from the start would give', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 1, maxLength: 8 }), (edits) => {
      const newId = countingIds(80_000_000);
      let history = startHistory(start);
      let harness = deriveHarness(start);
      let check = checkHarness(harness, RULES);
      for (const n of edits) {
        if (n % 17 === 0) history = undo(history);
        else {
          const call = editFor(n, history);
          const result = call && dispatch(history, call, { newId, catalogue: [] });
          if (result?.ok) history = result.value;
        }
        harness = deriveHarness(history.project, harness);
        check = checkHarness(harness, RULES, check);
        const fresh = deriveHarness(structuredClone(history.project));
        expect(seen(harness)).toEqual(seen(fresh));
      }
      const fresh = deriveHarness(structuredClone(history.project));
      expect(check.findings).toEqual(checkHarness(fresh, RULES).findings);
    }),
    { numRuns: 20 },
  );
}, 60_000);

it('starts from the same harness twice without mixing the two up', () => {
  const before = deriveHarness(start);
  const edit = (n: number) => {
    const result = dispatch(startHistory(start), editFor(n, startHistory(start))!, {
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
