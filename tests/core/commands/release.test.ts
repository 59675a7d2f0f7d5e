import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, type History } from '@latchwork/core/commands/history';
import { COMMANDS } from '@latchwork/core/commands/index';
import { undoKeeping } from '@latchwork/core/commands/shared/undo-keeping';
import { baselineOf, releaseStateOf, withoutOwnBaseline } from '@latchwork/core/model/baseline';
import { countingIds } from '@latchwork/core/model/ids';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { goodCalls, OFFERED, workbench } from './calls';

const context = { newId: countingIds(9_000), catalogue: OFFERED };
const done = (history: History, call: Call): History => {
  const result = dispatch(history, call, context);
  if (!result.ok) throw new Error(result.problem.reason);
  return result.value;
};
const RELEASE: Call = { id: 'project.release', args: { date: '2026-03-01', approvalPerson: 'A. Prover' } };
const drafted = startHistory(tiny((t) => void (t.project.titleBlock.identificationNumber = 'H-1')));
const released = done(drafted, RELEASE);
const record: Call = {
  id: 'decision.add',
  args: {
    decision: {
      kind: 'concession', finding: 'x', rule: 'x', ruleRevision: 1, requirement: 'r', measured: 'm', limit: 'l', reason: 'because', requester: 'Example',
      approvals: [{ name: 'Sample', role: 'quality', date: '2026-03-02' }], decidedOn: '2026-03-02', quantity: 2, basis: { severity: 'minor', result: 'fail', values: [] },
    },
  },
}; // prettier-ignore

describe('a released revision', () => {
  it('bears its day, its approver, and the hash of its own text as its baseline', () => {
    const { project } = released;
    expect(project.revisions.at(-1)).toMatchObject({ revision: 'A', status: 'released', date: '2026-03-01' });
    expect(project.titleBlock).toMatchObject({ dateOfIssue: '2026-03-01', approvalPerson: 'A. Prover' });
    const text = serialiseProject(withoutOwnBaseline(project));
    // Node's own SHA-256 as the second opinion.
    expect(project.revisions.at(-1)?.baseline).toBe(createHash('sha256').update(text).digest('hex'));
    expect(baselineOf(project)).toBe(project.revisions.at(-1)?.baseline);
    expect(releaseStateOf(project)).toBe('as-released');
  });

  it('is the same after saving and opening', () => {
    const reread = parseProject(serialiseProject(released.project));
    expect(reread.ok && releaseStateOf(reread.value)).toBe('as-released');
  });

  it('takes no change but decisions and the next revision', () => {
    const frozen = startHistory({ ...workbench(), revisions: released.project.revisions });
    const accepted = goodCalls(frozen.project).filter((call) => dispatch(frozen, call, context).ok);
    expect(accepted.map((c) => c.id).sort()).toEqual(['decision.add', 'decision.add-several', 'decision.close', 'decision.use', 'project.add-revision', 'project.take']); // prettier-ignore
    const refused = dispatch(frozen, { id: 'objects.remove', args: { ids: [] } }, context);
    expect(refused.ok ? '' : refused.problem.reason).toBe(
      'Revision A is released and frozen. Add a revision to go on from it.',
    );
    expect(COMMANDS.length).toBeGreaterThan(accepted.length);
  });

  it('keeps its baseline when a concession is recorded on it, and says that it was', () => {
    const decided = done(released, record);
    expect(baselineOf(decided.project)).toBe(baselineOf(released.project));
    expect(releaseStateOf(decided.project)).toBe('decided-since');
  });

  it('is told apart from one that was altered outside', () => {
    const altered = { ...released.project, notes: ['Written with another program'] };
    expect(releaseStateOf(altered)).toBe('altered');
  });

  it('is the ground of the next one, which is a draft and keeps the baseline in the history', () => {
    const next = done(released, {
      id: 'project.add-revision',
      args: { revision: { revision: 'B', author: 'Example', description: 'Longer wire' } },
    }).project;
    expect(next.revisions.map((r) => [r.revision, r.status, r.baseline === baselineOf(released.project)])).toEqual([['A', 'released', true], ['B', 'draft', false]]); // prettier-ignore
    expect(releaseStateOf(next)).toBe('draft');
    expect(next.titleBlock).not.toHaveProperty('dateOfIssue');
    expect(next.titleBlock).not.toHaveProperty('approvalPerson');
    expect(baselineOf(next)).not.toBe(baselineOf(released.project));
    expect(next.wires).toBe(released.project.wires);
    const edited = dispatch(
      startHistory(next),
      { id: 'project.edit', args: { change: { notes: ['x'] } } },
      context,
    );
    expect(edited.ok).toBe(true);
  });

  it('is not released twice, and not without an identification number', () => {
    const again = dispatch(released, RELEASE, context);
    expect(again.ok ? '' : again.problem.reason).toContain('released already');
    const nameless = dispatch(startHistory(tiny()), RELEASE, context);
    expect(nameless.ok ? '' : nameless.problem.reason).toContain('identification number');
  });

  it('can be taken back until it is saved, and not after', () => {
    expect(undoKeeping(released, drafted.project).project).toEqual(drafted.project);
    expect(undoKeeping(released, released.project)).toBe(released);
    const decided = done(released, record);
    expect(undoKeeping(decided, decided.project).project).toBe(decided.project);
  });
});
