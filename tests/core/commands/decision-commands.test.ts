import { describe, expect, it, test } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { redo, startHistory, type History } from '@latchwork/core/commands/history';
import { undoKeeping } from '@latchwork/core/commands/shared/undo-keeping';
import type { NewDecision } from '@latchwork/core/commands/shared/new-decision';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';

const record: NewDecision = {
  kind: 'deviation-permit',
  finding: 'strip-length | cavity x:1',
  rule: 'strip-length',
  ruleRevision: 1,
  requirement: 'The strip length suits the contact.',
  measured: '9 mm',
  limit: '3 mm',
  reason: 'No time',
  requester: 'R. Quester',
  approvals: [{ name: 'A. Prover', role: 'quality', date: '2026-02-01' }],
  decidedOn: '2026-02-01',
  expiresOn: '2026-06-30',
  basis: { severity: 'major', result: 'fail', values: [] },
};
const critical: NewDecision = { ...record, basis: { ...record.basis, severity: 'critical' } };
const second = { name: 'B. Prover', role: 'design', date: '2026-02-01' };

function carriedOut(project: Project, ...calls: Call[]): Project {
  return calls.reduce((p, call) => {
    const result = dispatch(startHistory(p), call, { newId: countingIds(9_000), catalogue: [] });
    if (!result.ok) throw new Error(result.problem.reason);
    return result.value.project;
  }, project);
}

function refused(project: Project, call: Call): string {
  const result = dispatch(startHistory(project), call, { newId: countingIds(9_000), catalogue: [] });
  return result.ok ? '' : result.problem.reason;
}

const add = (change: Partial<NewDecision>, from = record): Call => ({ id: 'decision.add', args: { decision: { ...from, ...change } } }); // prettier-ignore
const regulated = { ...tiny(), regulated: true };

test.each<[name: string, project: Project, call: Call, reason: RegExp]>([
  ['neither a day nor a quantity', tiny(), add({ expiresOn: undefined }), /no open-ended permits/],
  ['a last day before the first', tiny(), add({ expiresOn: '2026-01-31' }), /before it was decided/],
  ['a quantity of none', tiny(), add({ quantity: 0 }), /quantity/],
  ['no reason', tiny(), add({ reason: '  ' }), /reason/],
  ['no requester', tiny(), add({ requester: '' }), /requester/],
  ['no requirement', tiny(), add({ requirement: '' }), /requirement/],
  ['nothing measured', tiny(), add({ measured: '' }), /measured/],
  ['no approver', tiny(), add({ approvals: [] }), /who approved/],
  ['an approver without a role', tiny(), add({ approvals: [{ ...second, role: ' ' }] }), /name and a role/],
  ['an approval that comes later', tiny(), add({ approvals: [{ ...second, date: '2026-02-02' }] }), /after the decision/],
  ['a day that is none', tiny(), add({ expiresOn: '2026-02-30' }), /expiresOn/],
  ['one approver where two are needed', regulated, add({}, critical), /two approvers/],
  ['the same approver twice', regulated, add({ approvals: [...record.approvals, { ...second, name: 'a. prover ' }] }, critical), /two approvers/],
  ['several critical ones at once', tiny(), { id: 'decision.add-several', args: { decisions: [record, critical] } }, /by itself/],
  ['a single critical one by way of several', tiny(), { id: 'decision.add-several', args: { decisions: [critical] } }, /by itself/],
  ['several of which one is incomplete', tiny(), { id: 'decision.add-several', args: { decisions: [record, { ...record, expiresOn: undefined }] } }, /open-ended/],
])('a record with %s is refused', (_name, project, call, reason) => {
  expect(refused(project, call)).toMatch(reason);
}); // prettier-ignore

test.each<[name: string, project: Project, call: Call]>([
  ['a quantity instead of a day', tiny(), add({ expiresOn: undefined, quantity: 5 })],
  ['one approver, critical, not regulated', tiny(), add({}, critical)],
  ['one approver, major, regulated', regulated, add({})],
  ['two approvers, critical, regulated', regulated, add({ approvals: [...record.approvals, second] }, critical)], // prettier-ignore
])('a record with %s is taken', (_name, project, call) => {
  expect(carriedOut(project, call).decisions).toHaveLength(1);
});

describe('numbers', () => {
  it('are given in turn, and none is given twice', () => {
    const p = carriedOut(
      tiny(),
      add({}),
      add({}),
      { id: 'decision.add-several', args: { decisions: [record, record] } },
      add({}),
    );
    expect(p.decisions.map((d) => d.number)).toEqual(['D-1', 'D-2', 'D-3', 'D-4', 'D-5']);
  });

  it('leave alone those of another scheme', () => {
    const old = carriedOut(tiny(), add({}));
    const p = { ...old, decisions: old.decisions.map((d) => ({ ...d, number: 'QA/17' })) };
    expect(carriedOut(p, add({})).decisions.map((d) => d.number)).toEqual(['QA/17', 'D-1']);
  });
});

describe('what happens to a decision later', () => {
  const p = carriedOut(tiny(), add({ quantity: 3 }));
  const decision = p.decisions[0]!.id;
  const use = (quantity: number, date = '2026-03-01'): Call => ({
    id: 'decision.use',
    args: { decision, use: { date, quantity, recordedBy: 'B. Uilder' } },
  });
  const close = (date: string): Call => ({
    id: 'decision.close',
    args: { decision, closed: { date, by: 'A. Prover', reason: 'mended' } },
  });

  it('is added to it, and the record itself stays as it was', () => {
    const after = carriedOut(p, use(1), use(2), close('2026-04-01')).decisions[0]!;
    expect(after).toMatchObject(p.decisions[0]!);
    expect(after.uses?.map((u) => u.quantity)).toEqual([1, 2]);
    expect(after.closed?.reason).toBe('mended');
  });

  test.each<[string, Call[], Call, RegExp]>([
    ['more than is left', [use(1)], use(3), /has 2 left, not 3/],
    ['a use after its last day', [], use(1, '2026-07-01'), /expired with 2026-06-30/],
    ['a use after it was closed', [close('2026-02-03')], use(1), /closed/],
    ['a second closing', [close('2026-02-03')], close('2026-02-04'), /closed on 2026-02-03 already/],
    ['a closing before it was made', [], close('2026-01-01'), /decided on/],
  ])('%s is refused', (_name, first, call, reason) => {
    expect(refused(carriedOut(p, ...first), call)).toMatch(reason);
  });

  it('no command takes one away', () => {
    expect(refused(p, { id: 'objects.remove', args: { ids: [decision] } })).not.toBe('');
    expect(p.decisions).toHaveLength(1);
  });
});

describe('a step back', () => {
  const wire = tiny().wires[0]!.id;
  const note: Call = { id: 'wire.edit', args: { ids: [wire], change: { note: 'mind' } } };
  const done = (history: History, call: Call): History => {
    const result = dispatch(history, call, { newId: countingIds(9_000), catalogue: [] });
    if (!result.ok) throw new Error(result.problem.reason);
    return result.value;
  };
  const noted = done(startHistory(tiny()), note);
  const recorded = done(noted, add({ quantity: 3 }));
  const state = ({ project }: History) => [project.wires[0]!.note ?? null, project.decisions.length];

  it('takes back a record that was not saved yet', () => {
    expect(state(undoKeeping(recorded, { decisions: [], revisions: [] }))).toEqual(['mind', 0]);
  });

  it('passes over one that is in the saved file, back and forth', () => {
    const saved = recorded.project;
    const back = undoKeeping(recorded, saved);
    expect(state(back)).toEqual([null, 1]);
    expect(state(redo(back))).toEqual(['mind', 1]);
    expect(undoKeeping(back, saved).project).toBe(back.project);
  });

  it('keeps what was added to a saved record, too', () => {
    const decision = recorded.project.decisions[0]!.id;
    const used = done(recorded, { id: 'decision.use', args: { decision, use: { date: '2026-03-01', quantity: 1, recordedBy: 'B. Uilder' } } }); // prettier-ignore
    const closed = done(used, { id: 'decision.close', args: { decision, closed: { date: '2026-03-02', by: 'A. Prover', reason: 'built' } } }); // prettier-ignore
    expect(undoKeeping(closed, recorded.project).project).toEqual(used.project);
    expect(undoKeeping(used, used.project).project.decisions).toEqual(used.project.decisions);
    expect(undoKeeping(closed, closed.project).project.decisions).toEqual(closed.project.decisions); // prettier-ignore
  });
});
