import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { inspectionPlan } from '@latchwork/core/exports/inspection-plan';
import { samplingOf } from '@latchwork/core/exports/inspection-plan/sampling-cells';
import type { Characteristic } from '@latchwork/core/exports/inspection-plan/characteristic';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const inputOf = (change?: (t: TinyDraft) => void, quantity?: number) => {
  const harness = deriveHarness(tiny(change));
  const options = quantity === undefined ? {} : { quantity };
  return { harness, check: checkHarness(harness, []), date: '2026-03-01', options };
};
const rowsOf = (change?: (t: TinyDraft) => void, quantity?: number) =>
  inspectionPlan.table(inputOf(change, quantity)).rows;

const characteristic = (more: Partial<Characteristic>): Characteristic => ({
  what: 'x',
  at: '',
  requirement: '',
  class: 'major',
  method: '',
  perHarness: 1,
  sampling: 'plan',
  source: '',
  record: '',
  missing: [],
  objects: [],
  ...more,
});

describe('sampling', () => {
  // ISO 2859-1:1999, tables 1 and 2-A, level II, normal inspection.
  it.each([
    [400, 'major', 'sample, letter H, AQL 1.0', 50, 1, 2],
    [1000, 'major', 'sample, letter J, AQL 1.0', 80, 2, 3],
    [100, 'minor', 'sample, letter F, AQL 2.5', 20, 1, 2],
    [20, 'minor', 'sample, letter C, AQL 2.5', 5, 0, 1],
  ] as const)('takes from a lot of %i, %s: %s', (lot, cls, inspect, sampleSize, accept, reject) => {
    expect(samplingOf(characteristic({ class: cls }), lot)).toEqual({
      lot,
      inspect,
      sampleSize,
      accept,
      reject,
    });
  });

  it('looks at every item of a small lot, of a lot of one, and of what is critical', () => {
    for (const [c, order] of [
      [characteristic({}), 5],
      [characteristic({}), 1],
      [characteristic({ class: 'critical' }), 900],
    ] as const)
      // prettier-ignore
      expect(samplingOf(c, order)).toEqual({ lot: order, inspect: 'every item', sampleSize: order, accept: 0, reject: 1 });
  });

  it('counts the lot in items, not in harnesses', () => {
    expect(samplingOf(characteristic({ perHarness: 4 }), 100).lot).toBe(400);
  });
});

describe('inspection plan', () => {
  it('asks of the example for crimps, strips, connectors, locks, lengths and the electrical test', () => {
    expect([...new Set(rowsOf().map((r) => r.characteristic))]).toEqual([
      'crimp height',
      'pull-out force',
      'strip length',
      'crimp by eye',
      'connector',
      'wire and colour in each cavity',
      'contacts seated',
      'secondary lock closed',
      'cut length',
      'length between nodes',
      'continuity',
      'isolation',
      'insulation resistance and withstand',
    ]);
  });

  it('takes bounds from specification, record and default tolerance, and leaves blank what is not stated', () => {
    const rows = rowsOf((t) => {
      t.part('contact', 'C-PIN').crimps = [
        { size: { system: 'awg', gauge: 22 }, heightMm: 0.92, heightToleranceMm: 0.03, pullForceMinN: 45 },
      ];
      delete t.part('contact', 'C-SOCKET').crimps;
    });
    const of = (what: string, at: string) =>
      rows.find((r) => r.characteristic === what && String(r.at).startsWith(at));
    expect([of('crimp height', 'C-PIN')?.min, of('crimp height', 'C-PIN')?.max]).toEqual([0.89, 0.95]);
    expect(of('pull-out force', 'C-PIN')?.min).toBe(45);
    const open = of('crimp height', 'C-SOCKET');
    expect([open?.min, open?.max, open?.remarks]).toEqual([
      null,
      null,
      'cannot be verified, not stated: crimp height with tolerance',
    ]);
    // IPC/WHMA-A-620 B, final draft, table 11-1: up to 0.3 m, +25 -0.
    expect([of('length between nodes', 'S1')?.min, of('length between nodes', 'S1')?.max]).toEqual([
      300, 325,
    ]);
    expect(of('cut length', 'W1')?.max).toBe(358);
  });

  it('asks for the dimensions of the formboard, with their own tolerance or the default', () => {
    const rows = rowsOf((t) => {
      const [a, b] = t.project.nodes;
      if (!a || !b) throw new Error('no nodes');
      const datums = [a, b].map((n) => ({ at: 'node' as const, node: n.id }));
      t.project.dimensions.push({
        id: t.newId(),
        form: 'chain',
        datums,
        offsetMm: 20,
        plusMm: 5,
        minusMm: 5,
      });
      t.project.dimensions.push({ id: t.newId(), form: 'chain', datums, offsetMm: 30 });
    }).filter((r) => r.characteristic === 'dimension of the formboard');
    expect(rows.map((r) => [r.at, r.min, r.max])).toEqual([
      ['N1 to N2', 295, 305],
      ['N1 to N2', 300, 325],
    ]);
  });

  it('keeps what a test cannot see for the eye, and the test for every harness', () => {
    const rows = rowsOf(undefined, 100);
    expect(rows.find((r) => r.characteristic === 'wire and colour in each cavity')?.requirement).toContain(
      'does not see size or colour',
    );
    expect(rows.find((r) => r.characteristic === 'continuity')).toMatchObject({
      inspect: 'every item',
      sampleSize: 100,
    });
  });

  it('is made as paper', () => {
    expect(() => Paper.parse(inspectionPlan.paper?.(inputOf()))).not.toThrow();
  });
});
