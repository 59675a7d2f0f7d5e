import { expect, test } from 'vitest';
import { draftDecision } from '@latchwork/core/decisions/draft-decision';
import { RULES } from '@latchwork/core/rules/index';
import { faulty, findingsOf, theFinding } from './sample';

const metaOf = (rule: string) => RULES.find((r) => r.meta.id === rule)?.meta;

test('a record begins with what the finding says: requirement, actual with its unit, limit', () => {
  const p = faulty();
  expect(draftDecision(p, theFinding(p), metaOf('strip-length'))).toMatchObject({
    rule: 'strip-length',
    requirement: metaOf('strip-length')!.summary,
    measured: '9 mm',
    limit: expect.stringMatching(/ mm$/),
    basis: { severity: 'major', result: 'fail' },
  });
});

test('what cannot be verified is recorded as such, with what is missing', () => {
  const p = faulty((t) => {
    for (const w of t.project.wires) delete w.lengthMm;
    for (const c of t.project.connectors) delete c.node;
  });
  const found = findingsOf(p).find((f) => f.result === 'cannot-verify')!;
  expect(draftDecision(p, found, metaOf(found.rule)).measured).toMatch(/^cannot verify, missing: \S/);
});
