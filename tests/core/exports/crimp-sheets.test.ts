import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { crimpSheets } from '@latchwork/core/exports/crimp-sheets';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const inputOf = (change?: (t: TinyDraft) => void, quantity?: number) => {
  const harness = deriveHarness(tiny(change));
  const options = quantity === undefined ? {} : { quantity };
  return { harness, check: checkHarness(harness, []), date: '2026-03-01', options };
};
const rowsOf = (change?: (t: TinyDraft) => void, quantity?: number) =>
  crimpSheets.table(inputOf(change, quantity)).rows;

const specified = (t: TinyDraft): void => {
  t.part('contact', 'C-SOCKET').crimps = [
    {
      size: { system: 'awg', gauge: 22 },
      heightMm: 0.92,
      heightToleranceMm: 0.03,
      widthMm: 1.6,
      pullForceMinN: 45,
      tool: 'AP-1',
      die: 'B',
      source: 'Sheet 7',
    },
  ];
};

const doubled = (t: TinyDraft): void => {
  const [first] = t.wire('W1').ends;
  const [second] = t.wire('W2').ends;
  if (first.at !== 'cavity' || second.at !== 'cavity' || !first.contact) throw new Error('no cavities');
  second.cavity = first.cavity;
  second.contact = first.contact;
};

describe('crimp sheets', () => {
  it('makes one sheet for each contact with its wire, with the limits of its specification', () => {
    const rows = rowsOf(specified, 10);
    expect(rows.map((r) => [r.sheet, r.part, r.wire, r.usedAt])).toEqual([
      [1, 'C-PIN', 'WIRE-22', 'X2:1, X2:2'],
      [2, 'C-SOCKET', 'WIRE-22', 'X1:1, X1:2'],
    ]);
    expect(rows[1]).toMatchObject({
      heightMm: 0.92,
      heightMinMm: 0.89,
      heightMaxMm: 0.95,
      pullMinN: 45,
      pullSource: 'Sheet 7',
      // 80 % of the least pull-out force: NASA-STD-8739.4 (change 6), 13.8.
      retentionMaxN: 36,
      tool: 'AP-1',
      die: 'B',
      stripMm: 2.5,
      quantity: 2,
      orderQuantity: 20,
    });
  });

  it('takes the pull-out force from the table of the limit set where the contact states none, and says which', () => {
    const row = rowsOf((t) => {
      const pin = t.part('contact', 'C-PIN');
      delete pin.crimps;
    }).find((r) => r.part === 'C-PIN');
    // IEC 60352-2, table 1, 22 AWG: 40 N (from memory).
    expect(row?.pullMinN).toBe(40);
    expect(row?.pullSource).toContain('IEC 60352-2');
    expect(row?.pullSource).toContain('not verified');
    expect([row?.heightMm, row?.heightMinMm]).toEqual([null, null]);
    expect(row?.remarks).toContain('not stated: crimp height');
  });

  it('keeps a double crimp apart, with no height taken from a single one and the weaker wire deciding', () => {
    const rows = rowsOf((t) => {
      specified(t);
      doubled(t);
      t.wire('W2').part = t.part('wire', 'WIRE-26').id;
    });
    const double = rows.find((r) => r.otherWires !== null);
    expect([double?.part, double?.wire, double?.otherWires, double?.heightMm]).toEqual([
      'C-SOCKET', 'WIRE-22', 'WIRE-26', null,
    ]); // prettier-ignore
    // IEC 60352-2, table 1, 26 AWG: 15 N (from memory).
    expect(double?.pullMinN).toBe(15);
    expect(double?.remarks).toContain('crimp height of 2 wires together');
    expect(double?.remarks).toContain('wires lie parallel');
  });

  it('knows nothing of a crimp on a wire that is not chosen', () => {
    const row = rowsOf((t) => void delete t.wire('W1').part).find((r) => r.wire === null);
    expect([row?.pullMinN, row?.size, row?.heightMm]).toEqual([null, null, null]);
    expect(row?.remarks).toContain('wire part of W1');
  });

  it('gives every sheet a page of its own with boxes to write in', () => {
    const paper = Paper.parse(crimpSheets.paper?.(inputOf()));
    expect(paper.blocks.filter((b) => b.kind === 'page-break')).toHaveLength(2);
    expect(paper.blocks.filter((b) => b.kind === 'drawing')).toHaveLength(4);
  });
});
