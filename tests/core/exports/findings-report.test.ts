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
const tableOf = (project: Project) => {
  const harness = deriveHarness(project);
  return findingsReport.table(harness, checkHarness(harness, RULES));
};
const rowsOf = (change?: (t: TinyDraft) => void) => tableOf(tiny(change)).rows;

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

  it('states in the head how much was asked, so that an empty list is not taken for an unasked one', () => {
    const head = tableOf(tiny((t) => void (t.wire('W2').colour = { base: 'RD' }))).head;
    expect(head).toContainEqual(['Checks passed', '4 by 2 rules']);
    expect(head).toContainEqual(['Findings, critical', '0 fail, 0 cannot verify']);
  });
});
