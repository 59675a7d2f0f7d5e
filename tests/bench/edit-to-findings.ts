import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo, type History } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import type { Bench } from './bench';
import { projectOf, SIZES } from './sizes';

interface Open {
  history: History;
  harness: Harness;
  check: CheckResult;
}

const opened = new Map<number, Open>();
const newId = countingIds(90_000_000);

function open(wires: number): Open {
  let o = opened.get(wires);
  if (!o) {
    const history = startHistory(projectOf(wires));
    const harness = deriveHarness(history.project);
    o = { history, harness, check: checkHarness(harness, RULES) };
    opened.set(wires, o);
  }
  return o;
}

/** From a command to the findings of what it made: dispatch, derive, check. */
function edit(wires: number, callFor: (project: Project, run: number) => Call, run: number): void {
  const o = open(wires);
  const result = dispatch(o.history, callFor(o.history.project, run), { newId, catalogue: [] });
  if (!result.ok) throw new Error(result.problem.reason);
  take(o, result.value);
}

function take(o: Open, history: History): void {
  o.history = history;
  o.harness = deriveHarness(history.project, o.harness);
  o.check = checkHarness(o.harness, RULES, o.check);
}

function goBack(wires: number): void {
  const o = open(wires);
  take(o, undo(o.history));
}

const middle = <T>(list: readonly T[]): T => list[list.length >> 1]!;

const EDITS: Readonly<Record<string, (project: Project, run: number) => Call>> = {
  'move a connector': ({ connectors }, run) => {
    const { id, position } = middle(connectors);
    return { id: 'objects.move', args: { moves: [{ id, to: { x: position.x + 5 + run, y: position.y } }] } };
  },
  'colour a wire': ({ wires }, run) => ({
    id: 'wire.edit',
    args: { ids: [middle(wires).id], change: { colour: { base: run % 2 ? 'PK' : 'TQ' } } },
  }),
  'draw a wire': ({ connectors }) => {
    const housing = middle(connectors.filter((c) => c.supply === 'harness'));
    const from = { at: 'cavity' as const, connector: housing.id, cavity: '1' };
    return { id: 'wire.add', args: { from, to: { at: 'free', position: { x: 0, y: 0 } } } };
  },
  'delete a wire': ({ wires }) => ({ id: 'objects.remove', args: { ids: [middle(wires).id] } }),
  'edit a signal': ({ signals }, run) => ({
    id: 'signal.edit',
    args: { id: middle(signals).id, change: { currentA: 0.1 + (run % 2) / 100 } },
  }),
};

/** How long an edit takes until its findings are there. It should hardly grow with the project. Target: one frame. */
export const editToFindingsBench: Bench = {
  name: 'from an edit to its findings',
  cases: [
    ...Object.entries(EDITS).flatMap(([name, callFor]) =>
      SIZES.map((wires, i) => {
        let run = 0;
        return {
          name: `${name}, ${wires} wires`,
          ...(i > 0 ? { ratioTo: `${name}, ${SIZES[0]} wires` } : {}),
          ...(wires === 10_000 ? { targetMs: 16 } : {}),
          run: () => edit(wires, callFor, run++),
          after: () => goBack(wires),
        };
      }),
    ),
    ...SIZES.map((wires, i) => ({
      name: `undo, ${wires} wires`,
      ...(i > 0 ? { ratioTo: `undo, ${SIZES[0]} wires` } : {}),
      ...(wires === 10_000 ? { targetMs: 16 } : {}),
      run: () => goBack(wires),
      after: () => edit(wires, EDITS['move a connector']!, 0),
    })),
  ],
};
