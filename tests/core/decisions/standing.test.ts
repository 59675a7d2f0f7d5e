import { describe, expect, it, test } from 'vitest';
import { standingOf, standingsOf } from '@latchwork/core/decisions/standing';
import { standingText } from '@latchwork/core/decisions/standing-words';
import type { Decision } from '@latchwork/core/model/decision';
import type { Project } from '@latchwork/core/model/project';
import { type TinyDraft } from '@latchwork/core/model/tiny';
import type { Finding } from '@latchwork/core/rules/finding';
import { faulty, findingsOf, permitOn, theFinding, withDecisions } from './sample';

const BEFORE = faulty();
const FINDING = theFinding(BEFORE);

function standing(decisions: readonly Partial<Decision>[], date: string, now = BEFORE, finding = FINDING) {
  const made = decisions.map((d, i) => permitOn(BEFORE, FINDING, { number: `D-${i + 1}`, ...d }));
  return standingOf(withDecisions(now, ...made), finding, date);
}
const text = (decisions: readonly Partial<Decision>[], date: string, now?: Project, finding?: Finding) =>
  standingText(standing(decisions, date, now, finding));
const used = (...quantities: number[]): Partial<Decision> => ({
  uses: quantities.map((quantity) => ({ date: '2026-03-01', quantity, recordedBy: 'B. Uilder' })),
});

test.each<[name: string, decisions: Partial<Decision>[], date: string, words: string]>([
  ['nobody decided', [], '2026-03-01', 'open'],
  ['the first day', [{}], '2026-02-01', 'accepted: deviation permit D-1 until 2026-06-30'],
  ['the day before', [{}], '2026-01-31', 'open: deviation permit D-1 is dated 2026-02-01'],
  ['the last day', [{}], '2026-06-30', 'accepted: deviation permit D-1 until 2026-06-30'],
  ['the day after it', [{}], '2026-07-01', 'expired: deviation permit D-1 expired with 2026-06-30'],
  ['years after it', [{}], '2031-01-01', 'expired: deviation permit D-1 expired with 2026-06-30'],
  ['a leap day', [{ expiresOn: '2028-02-29' }], '2028-03-01', 'expired: deviation permit D-1 expired with 2028-02-29'],
  ['a concession', [{ kind: 'concession' }], '2026-03-01', 'accepted: concession D-1 until 2026-06-30'],
  ['a quantity, nothing used', [{ expiresOn: undefined, quantity: 3 }], '2026-03-01', 'accepted: deviation permit D-1 3 of 3 left'],
  ['a quantity, some used', [{ expiresOn: undefined, quantity: 3, ...used(1, 1) }], '2026-03-01', 'accepted: deviation permit D-1 1 of 3 left'],
  ['a quantity, used up', [{ expiresOn: undefined, quantity: 3, ...used(1, 2) }], '2026-03-01', 'exhausted: deviation permit D-1 is used up: 3 of 3'],
  ['more used than there was', [{ expiresOn: undefined, quantity: 3, ...used(9) }], '2026-03-01', 'exhausted: deviation permit D-1 is used up: 3 of 3'],
  ['both, the day past', [{ quantity: 3, ...used(1) }], '2026-07-01', 'expired: deviation permit D-1 expired with 2026-06-30'],
  ['both, the quantity gone', [{ quantity: 3, ...used(3) }], '2026-06-01', 'exhausted: deviation permit D-1 is used up: 3 of 3'],
  ['neither, from a file made elsewhere', [{ expiresOn: undefined }], '2026-03-01', 'open: deviation permit D-1 names neither an expiry nor a quantity'],
  ['closed', [{ closed: { date: '2026-03-01', by: 'A. Prover', reason: 'mended' } }], '2026-03-01', 'open: deviation permit D-1 was closed on 2026-03-01'],
  ['closed later', [{ closed: { date: '2026-03-02', by: 'A. Prover', reason: 'mended' } }], '2026-03-01', 'accepted: deviation permit D-1 until 2026-06-30'],
  ['nobody approved', [{ approvals: [] }], '2026-03-01', 'open: deviation permit D-1 has 0 of 1 approvers'],
  ['approved later', [{ approvals: [{ name: 'A', role: 'q', date: '2026-04-01' }] }], '2026-03-01', 'open: deviation permit D-1 has 0 of 1 approvers'],
  ['expired, then decided anew', [{}, { decidedOn: '2026-07-01', expiresOn: '2026-12-31' }], '2026-08-01', 'accepted: deviation permit D-2 until 2026-12-31'],
  ['an older one that still holds', [{ expiresOn: '2027-01-01' }, {}], '2026-08-01', 'accepted: deviation permit D-1 until 2027-01-01'],
  ['a record without its values', [{ basis: undefined }], '2026-03-01', 'reopened: deviation permit D-1 was made on other values: values it was decided on was not there, is cannot be compared: not on record'],
])('%s', (_name, decisions, date, words) => {
  expect(text(decisions, date)).toBe(words);
}); // prettier-ignore

describe('a decision is reopened', () => {
  const day = '2026-03-01';
  const after = (change: (t: TinyDraft) => void, rule?: string) => {
    const now = faulty(change);
    return text([{}], day, now, theFinding(now, rule));
  };

  it('when the measured value changes', () => {
    expect(after((t) => void (t.wire('W1').ends[0].stripLengthMm = 10))).toMatch(
      /^reopened: deviation permit D-1 was made on other values: .*was 9 mm, is 10 mm/,
    );
  });

  it('when the limit changes, of the part or of the limit set', () => {
    const loose = (t: TinyDraft) => {
      for (const p of t.project.parts)
        if (p.kind === 'contact' && p.stripLengthMm !== undefined) p.stripLengthMm += 0.25;
    };
    expect(after(loose)).toMatch(/^reopened: .*limit was/);
  });

  it('when the rule is revised', () => {
    expect(text([{}], day, BEFORE, { ...FINDING, ruleRevision: FINDING.ruleRevision + 1 })).toBe(
      `reopened: deviation permit D-1 was made on other values: rule revision was ${FINDING.ruleRevision}, is ${FINDING.ruleRevision + 1}`,
    );
  });

  it('when it becomes graver, or can no longer be verified', () => {
    const said = (change: Partial<Finding>) => text([{}], day, BEFORE, { ...FINDING, ...change });
    expect(said({ severity: 'critical' })).toContain(`severity was ${FINDING.severity}, is critical`);
    expect(said({ result: 'cannot-verify', needs: [{ what: 'strip length' }] })).toMatch(
      /result was fail, is cannot-verify; missing was not there, is strip length/,
    );
  });

  it('and holds again when the value is put back', () => {
    const now = faulty((t) => void (t.wire('W1').ends[0].stripLengthMm = 9));
    expect(text([{}], day, now, theFinding(now))).toBe('accepted: deviation permit D-1 until 2026-06-30');
  });

  it('but not by a new name of the same object, nor by an edit elsewhere', () => {
    const now = faulty((t) => {
      t.connector('X1').designator = 'X77';
      t.wire('W1').designator = 'W99';
      t.wire('W2').note = 'looked at';
    });
    const finding = theFinding(now);
    expect(JSON.stringify(finding.data)).toContain('X77');
    expect(text([{}], day, now, finding)).toBe('accepted: deviation permit D-1 until 2026-06-30');
  });

  it('a decision on one object says nothing about another', () => {
    const two = faulty((t) => void (t.wire('W2').ends[0].stripLengthMm = 9));
    const findings = findingsOf(two).filter((f) => f.rule === 'strip-length');
    const standings = standingsOf(withDecisions(two, permitOn(two, findings[0]!)), findings, day);
    expect(findings.map((f) => standings.get(f.key)?.state)).toEqual(['accepted', 'open']);
  });
});

describe('a regulated project', () => {
  const critical: Finding = { ...FINDING, severity: 'critical' };
  const regulated = { ...BEFORE, regulated: true };
  const approved = (...names: string[]) =>
    permitOn(regulated, critical, {
      approvals: names.map((name) => ({ name, role: 'quality', date: '2026-02-01' })),
    });
  const state = (decision: Decision, finding = critical, project: Project = regulated) =>
    standingOf(withDecisions(project, decision), finding, '2026-03-01').state;

  test.each([
    [['A. Prover', 'B. Prover'], 'accepted'],
    [['A. Prover'], 'open'],
    [['A. Prover', 'A. Prover'], 'open'],
    [['A. Prover', ' a.  prover '], 'open'],
  ])('approved by %j a critical finding is %s', (names, expected) => {
    expect(state(approved(...names))).toBe(expected);
  });

  it('asks for one where the finding is lighter, or the project is not regulated', () => {
    expect(state(permitOn(regulated, FINDING), FINDING)).toBe('accepted');
    expect(state(approved('A. Prover'), critical, BEFORE)).toBe('accepted');
  });
});
