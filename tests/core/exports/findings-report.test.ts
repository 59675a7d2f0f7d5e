import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { findingsReport } from '@latchwork/core/exports/findings-report';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import type { AnyRule } from '@latchwork/core/rules/rule';

/** Stands for the rule book: what is tested is how a finding is told, whichever rule made it. */
const sample = (severity: 'critical' | 'minor', id: string): AnyRule => ({
  meta: {
    id,
    revision: 3,
    severity,
    summary: 'A wire is red.',
    why: 'An example.',
    source: 'this test',
    message: '{{wire}} is {{colour}}',
    unknown: '{{wire}}: {{needs}}',
  },
  scope: 'wire',
  check(w, report) {
    const at = [{ type: 'wire' as const, id: w.wire.id }];
    const wire = w.wire.designator;
    if (!w.wire.colour)
      return report.cannotVerify({
        at,
        data: { wire },
        needs: [{ what: `colour of ${wire}`, field: 'colour' }],
      });
    if (w.wire.colour.base === 'RD') return report.pass();
    report.fail({
      at,
      data: { wire, colour: w.wire.colour.base },
      evidence: [
        { label: 'colour', value: w.wire.colour.base, source: 'typed' },
        { label: 'od', value: 1.2, unit: 'mm', source: 'Example parts 1' },
      ],
      fix: { label: 'Make it red', command: 'wire.edit', args: {} },
    });
  },
  examples: () => ({ good: [], bad: [], unknown: [] }),
});

const RULES = [sample('minor', 'sample-minor'), sample('critical', 'sample-critical')];
const tableOf = (project: Project, day = '2026-03-01') => {
  const harness = deriveHarness(project);
  return findingsReport.table({ harness, check: checkHarness(harness, RULES), date: day });
};
const rowsOf = (change?: (t: TinyDraft) => void, day?: string) => tableOf(tiny(change), day).rows;

describe('findings report', () => {
  it('tells each finding with objects in words, values used and their source, gravest first', () => {
    const rows = rowsOf();
    expect(rows.map((r) => [r.number, r.severity, r.rule, r.objects])).toEqual([
      [1, 'critical', 'sample-critical', 'W2'],
      [2, 'minor', 'sample-minor', 'W2'],
    ]);
    expect(rows[0]).toMatchObject({
      result: 'fail',
      ruleRevision: 3,
      evidence: 'colour = BK (typed); od = 1.2 mm (Example parts 1)',
      fix: 'Make it red',
      standing: 'open',
      decision: null,
      key: `sample-critical | wire ${tiny().wires[1]!.id}`,
    });
  });

  it('says what is needed where a rule cannot verify', () => {
    const rows = rowsOf((t) => void delete t.wire('W1').colour);
    expect(rows[0]).toMatchObject({ objects: 'W1', result: 'cannot verify', needs: 'colour of W1 [colour]', fix: null }); // prettier-ignore
  });

  it('names the decision on record, and that the rule has changed since', () => {
    const decided = (ruleRevision: number) =>
      rowsOf(
        (t) =>
          void t.project.decisions.push({
            id: t.newId(),
            number: 'DP-1',
            kind: 'deviation-permit',
            finding: `sample-critical | wire ${t.wire('W2').id}`,
            rule: 'sample-critical',
            ruleRevision,
            requirement: 'red',
            measured: 'BK',
            limit: 'RD',
            reason: 'stock',
            requester: 'R. Quester',
            approvals: [],
            decidedOn: '2026-02-03',
            expiresOn: '2026-06-30',
          }),
      )[0]?.decision;
    expect(decided(3)).toBe('deviation permit DP-1 of 2026-02-03, expires 2026-06-30');
    expect(decided(2)).toBe(
      'deviation permit DP-1 of 2026-02-03, expires 2026-06-30, made against rule revision 2',
    );
  });

  it('tells the standing on the day that is given, and in the head what keeps a release back', () => {
    const permit = (t: TinyDraft) =>
      void t.project.decisions.push({
        id: t.newId(),
        number: 'D-1',
        kind: 'concession',
        finding: `sample-critical | wire ${t.wire('W2').id}`,
        rule: 'sample-critical',
        ruleRevision: 3,
        requirement: 'red',
        measured: 'BK',
        limit: 'RD',
        reason: 'stock',
        requester: 'R. Quester',
        approvals: [{ name: 'A. Prover', role: 'quality', date: '2026-02-03' }],
        decidedOn: '2026-02-03',
        expiresOn: '2026-06-30',
        basis: {
          severity: 'critical',
          result: 'fail',
          values: [
            { label: 'wire', value: '‹1›' },
            { label: 'colour', value: 'BK' },
            { label: 'colour', value: 'BK' },
            { label: 'od', value: 1.2, unit: 'mm' },
          ],
        },
      });
    const told = (day: string) => {
      const { rows, head } = tableOf(tiny(permit), day);
      const release = head.find(([label]) => label === 'Release')?.[1];
      return [rows[0]?.standing, rows[1]?.standing, release];
    };
    expect(told('2026-06-30')).toEqual([
      'accepted: concession D-1 until 2026-06-30',
      'open',
      'no critical finding is open; 1 other open',
    ]);
    expect(told('2026-07-01')).toEqual([
      'expired: concession D-1 expired with 2026-06-30',
      'open',
      'blocked by 1 critical findings that are open',
    ]);
    expect(tableOf(tiny(permit)).head).toContainEqual(['Decision', expect.stringContaining('concession D-1 of 2026-02-03 on sample-critical revision 3; requirement: red; actual: BK; limit: RD; reason: stock; requested by R. Quester; approved by A. Prover (quality, 2026-02-03); holds until 2026-06-30')]); // prettier-ignore
  });

  it('lists the limits used in the head', () => {
    expect(tableOf(tiny()).head).toContainEqual(['Limit', 'strip length tolerance = 0.5 mm (common practice, where the contact states none, not verified)']); // prettier-ignore
  });

  it('states in the head how much was asked, so that an empty list is not taken for an unasked one', () => {
    const head = tableOf(tiny((t) => void (t.wire('W2').colour = { base: 'RD' }))).head;
    expect(head).toContainEqual(['Checks passed', '4 by 2 rules']);
    expect(head).toContainEqual(['Findings, critical', '0 fail, 0 cannot verify']);
  });
});
