import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { cutPlan } from '@latchwork/core/exports/cut-list/cut-plan';
import { cutList } from '@latchwork/core/exports/cut-list';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const tableOf = (change?: (t: TinyDraft) => void, quantity?: number) => {
  const harness = deriveHarness(tiny(change));
  return cutList.table({
    harness,
    check: checkHarness(harness, []),
    date: '2026-03-01',
    options: quantity === undefined ? {} : { quantity },
  });
};
const lineOf = (wire: string, change?: (t: TinyDraft) => void) =>
  tableOf(change).rows.find((r) => String(r.wires).split(', ').includes(wire));

describe('cut list', () => {
  it('states a wire as it is cut: length with tolerance, both strips, contacts and tools', () => {
    const row = lineOf('W1');
    expect(row).toMatchObject({
      wirePart: 'WIRE-22',
      size: '22 AWG',
      colour: 'RD',
      lengthMm: 308,
      // IPC/WHMA-A-620 B, final draft of February 2012, table 11-1: over 0.3 to 1.5 m, +50 -0.
      plusMm: 50,
      minusMm: 0,
      endA: 'X1:1',
      stripAMm: 2.5,
      contactA: 'C-SOCKET',
      endB: 'X2:1',
      stripBMm: 2.5,
      contactB: 'C-PIN',
      quantity: 1,
    });
  });

  it('puts wires that are cut alike on one line, and multiplies by the order', () => {
    const change = (t: TinyDraft): void => void (t.wire('W2').colour = { base: 'RD' });
    const [row] = tableOf(change, 25).rows;
    expect(row).toMatchObject({ wires: 'W1, W2', quantity: 2, orderQuantity: 50, endA: 'X1:1, X1:2' });
    expect(tableOf(change).rows).toHaveLength(1);
  });

  it('turns a wire that is drawn the other way round instead of changing the machine', () => {
    const plan = cutPlan(
      deriveHarness(tiny((t) => void (t.wire('W2').ends = [t.wire('W2').ends[1], t.wire('W2').ends[0]]))),
    );
    expect(plan.lines.map((l) => l.swapped)).toContain(true);
    // Spool, two contacts and two strips for the first wire; then the spool alone.
    expect([plan.changes, plan.proven]).toEqual([6, true]);
    expect(plan.byDesignator).toBeGreaterThan(plan.changes);
  });

  it('leaves blank what is not known, and names it', () => {
    const row = lineOf('W1', (t) => {
      t.project.segments = [];
      delete t.wire('W1').ends[0].stripLengthMm;
    });
    expect([row?.lengthMm, row?.plusMm]).toEqual([null, null]);
    expect([row?.stripAMm, row?.stripBMm]).toContain(null);
    expect(row?.remarks).toContain('length not known');
    expect(row?.remarks).toContain('strip length not stated');
    expect(row?.remarks).toContain('tool not stated');
  });

  it('crimps two wires of one contact after cutting, and says so', () => {
    const row = lineOf('W2', (t) => {
      const [first] = t.wire('W1').ends;
      const [second] = t.wire('W2').ends;
      if (first.at !== 'cavity' || second.at !== 'cavity' || !first.contact) throw new Error('no cavities');
      second.cavity = first.cavity;
      second.contact = first.contact;
    });
    expect(row?.remarks).toContain('shares its contact with W1');
  });

  it('says in the head what the order saves against the wire numbers', () => {
    const head = new Map(tableOf().head);
    expect(head.get('Set-ups')).toMatch(
      /^\d+ changes in 2 set-ups \(no order has fewer\); \d+ in the order of/,
    );
  });

  it.each([
    [undefined, null],
    ['identification', 'W1'],
    ['signal', 'SUP'],
    ['both-ends', 'X1:1/X2:1'],
    ['local-end', 'X1:1 at X1:1, X2:1 at X2:1'],
    ['remote-end', 'X2:1 at X1:1, X1:1 at X2:1'],
  ] as const)('marks the wire by the method of the project (IEC 62491): %s', (method, mark) => {
    const row = lineOf('W1', (t) => {
      if (method) t.project.labelMethod = method;
    });
    expect(row?.mark).toBe(mark);
  });

  it('tells of a fuse in the wire', () => {
    const row = lineOf('W1', (t) => {
      t.project.fuses.push({ id: t.newId(), designator: 'F1', wire: t.wire('W1').id, fromSourceMm: 120 });
    });
    expect(row?.remarks).toContain('fuse F1 in it, 120 mm from the source');
  });
});
