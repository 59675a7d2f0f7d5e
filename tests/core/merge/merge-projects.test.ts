import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { changesOf } from '@latchwork/core/derive/changes-of';
import type { Side } from '@latchwork/core/merge/conflict';
import { type Merge, mergeProjects } from '@latchwork/core/merge/merge-projects';
import { countingIds } from '@latchwork/core/model/ids';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { generateProject } from '../../generate/harness-generator';
import { randomEdit } from '../../generate/random-edit';

function edited(project: Project, calls: readonly (Call | null)[], firstId = 50_000): Project {
  let history = startHistory(project);
  const context = { newId: countingIds(firstId), catalogue: [] };
  for (const call of calls) {
    const result = call && dispatch(history, call, context);
    if (result?.ok) history = result.value;
  }
  return history.project;
}

const merged = (merge: Merge): Project => {
  if (merge.status !== 'merged') throw new Error(JSON.stringify(merge));
  return merge.project;
};

const base = tiny();
const [w1, w2] = base.wires.map((w) => w.id) as [string, string];
const x1 = base.connectors.find((c) => c.designator === 'X1')!.id;
const colour = (id: string, code: 'PK' | 'GY'): Call => ({
  id: 'wire.edit',
  args: { ids: [id], change: { colour: { base: code } } },
});

describe('a merge of two states', () => {
  it('takes what only one side changed from that side', () => {
    const mine = edited(base, [colour(w1, 'PK')]);
    const theirs = edited(base, [
      colour(w2, 'GY'),
      { id: 'wire.edit', args: { ids: [w1], change: { note: 'short' } } },
    ]);
    const wires = merged(mergeProjects(base, mine, theirs)).wires;
    expect(wires.map((w) => [w.colour?.base, w.note])).toEqual([['PK', 'short'], ['GY', undefined]]); // prettier-ignore
  });

  it('keeps what both sides added', () => {
    const add: Call = { id: 'node.add', args: { position: { x: 1, y: 2 } } };
    const project = merged(mergeProjects(base, edited(base, [add], 1000), edited(base, [add], 2000)));
    expect(project.nodes).toHaveLength(base.nodes.length + 2);
  });

  it('asks where both changed the same value, and takes the side that is chosen', () => {
    const mine = edited(base, [colour(w1, 'PK')]);
    const theirs = edited(base, [colour(w1, 'GY')]);
    const open = mergeProjects(base, mine, theirs);
    expect(open).toMatchObject({
      status: 'conflicts',
      conflicts: [
        { collection: 'wires', id: w1, field: 'colour', mine: { base: 'PK' }, theirs: { base: 'GY' } },
      ],
    });
    const key = open.status === 'conflicts' ? open.conflicts[0]!.key : '';
    for (const [side, code] of [
      ['mine', 'PK'],
      ['theirs', 'GY'],
    ] as const)
      // prettier-ignore
      expect(merged(mergeProjects(base, mine, theirs, new Map([[key, side]]))).wires[0]?.colour?.base).toBe(code);
  });

  it('puts two changed ends of one wire together', () => {
    const strip = (end: 0 | 1, mm: number): Call => ({
      id: 'wire.set-strip-length',
      args: { id: w1, end, stripLengthMm: mm },
    });
    const project = merged(mergeProjects(base, edited(base, [strip(0, 3)]), edited(base, [strip(1, 4)])));
    expect(project.wires[0]?.ends.map((e) => e.stripLengthMm)).toEqual([3, 4]);
  });

  it('asks before an object goes that the other side still uses, and can bring it back or take all that hangs on it', () => {
    const mine = edited(base, [
      { id: 'wire.add', args: { from: { at: 'cavity', connector: x1, cavity: '3' }, to: { at: 'free', position: { x: 0, y: 9 } } } },
    ]); // prettier-ignore
    const theirs = edited(base, [{ id: 'objects.remove', args: { ids: [x1] } }]);
    const open = mergeProjects(base, mine, theirs);
    expect(open).toMatchObject({ status: 'conflicts' });
    const settle = (side: Side): Project => {
      let choices = new Map<string, Side>();
      for (let round = 0; round < 5; round++) {
        const merge = mergeProjects(base, mine, theirs, choices);
        if (merge.status !== 'conflicts') return merged(merge);
        choices = new Map([...choices, ...merge.conflicts.map((c) => [c.key, side] as const)]);
      }
      throw new Error('it asks for ever');
    };
    expect(settle('mine').connectors.some((c) => c.id === x1)).toBe(true);
    expect(settle('mine').wires.some((w) => !base.wires.some((b) => b.id === w.id))).toBe(true);
    expect(settle('theirs').connectors.some((c) => c.id === x1)).toBe(false);
  });

  it('keeps what both appended to a record', () => {
    const use = (recordedBy: string): Call => ({
      id: 'decision.use',
      args: { decision: DECISION.id, use: { date: '2026-01-05', quantity: 1, recordedBy } },
    });
    const start = tiny((t) => t.project.decisions.push(DECISION));
    const project = merged(mergeProjects(start, edited(start, [use('A')]), edited(start, [use('B')])));
    expect(project.decisions[0]?.uses?.map((u) => u.recordedBy)).toEqual(['A', 'B']);
  });
});

const DECISION: Project['decisions'][number] = {
  id: '00000000-0000-4000-8000-0000000d0001', number: 'D-1', kind: 'deviation-permit', finding: 'x', rule: 'x', ruleRevision: 1,
  requirement: 'r', measured: 'm', limit: 'l', quantity: 9, reason: 'because', requester: 'Example', decidedOn: '2026-01-02',
  approvals: [{ name: 'Sample', role: 'quality', date: '2026-01-02' }],
}; // prettier-ignore

describe('random edits on both sides', { timeout: 60_000 }, () => {
  const start = generateProject({ wires: 40 });
  const numbers = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { maxLength: 8 });
  const run = (list: readonly number[], firstId: number): Project => {
    let history = startHistory(start);
    const context = { newId: countingIds(firstId), catalogue: [] };
    for (const n of list) {
      const call = randomEdit(n, history.project);
      const result = call && dispatch(history, call, context);
      if (result?.ok) history = result.value;
    }
    return history.project;
  };

  it('are merged into a project that opens, or asked about, or refused; and nothing of theirs or mine is lost', () => {
    const count = { merged: 0, asked: 0, refused: 0 };
    fc.assert(
      fc.property(numbers, numbers, fc.boolean(), (left, right, mineWins) => {
        const [mine, theirs] = [run(left, 500_000), run(right, 700_000)];
        const before = [serialiseProject(mine), serialiseProject(theirs)];
        let choices = new Map<string, Side>();
        let merge = mergeProjects(start, mine, theirs);
        if (merge.status === 'conflicts') count.asked++;
        for (let round = 0; merge.status === 'conflicts'; round++) {
          if (round > 20) throw new Error('it asks for ever');
          choices = new Map([
            ...choices,
            ...merge.conflicts.map((c) => [c.key, mineWins ? 'mine' : 'theirs'] as const),
          ]);
          merge = mergeProjects(start, mine, theirs, choices);
        }
        expect([serialiseProject(mine), serialiseProject(theirs)]).toEqual(before);
        if (merge.status === 'refused') {
          count.refused++;
          expect(merge.issues.length).toBeGreaterThan(0);
          return;
        }
        count.merged++;
        expect(parseProject(serialiseProject(merge.project)).ok).toBe(true);
        if (choices.size > 0) return;
        // Without a choice, every object that a side added or changed is there as that side left it.
        for (const side of [mine, theirs]) {
          const other = side === mine ? theirs : mine;
          const touched = new Set(changesOf(start, other).map((c) => c.id));
          const differs = new Set(changesOf(side, merge.project).map((c) => c.id));
          for (const change of changesOf(start, side))
            if (!touched.has(change.id))
              expect(differs.has(change.id), `${change.what} ${change.collection}`).toBe(false);
        }
      }),
      { numRuns: 150 },
    );
    expect(count.merged).toBeGreaterThan(50);
  });

  it('give the other side where one side changed nothing', () => {
    fc.assert(
      fc.property(numbers, (list) => {
        const other = run(list, 500_000);
        expect(serialiseProject(merged(mergeProjects(start, start, other)))).toBe(serialiseProject(other));
        expect(serialiseProject(merged(mergeProjects(start, other, start)))).toBe(serialiseProject(other));
      }),
      { numRuns: 50 },
    );
  });
});
