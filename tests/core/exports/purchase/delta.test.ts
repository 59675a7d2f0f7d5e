import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { deltaTable, purchaseDelta } from '@latchwork/core/exports/purchase/delta';
import { Table } from '@latchwork/core/exports/table';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { generateProject } from '../../../generate/harness-generator';

const offers = [
  { supplier: 'Example Trading (invented)', currency: 'EUR', priceBreaks: [{ quantity: 1, price: 0.5 }] },
];
const offered = (t: TinyDraft): void => {
  for (const p of t.project.parts) p.offers = offers;
  t.project.purchasing = {
    scrap: { contact: 0, wire: 0 },
    setUpPieces: 0,
    samplesPerCrimp: 0,
    runWasteMm: 0,
  };
};
const BEFORE = tiny(offered);
const rowsOf = (change: (t: TinyDraft) => void, harnesses = 10) =>
  deltaTable(deriveHarness(BEFORE), deriveHarness(tiny((t) => (offered(t), change(t)))), harnesses).rows.map(
    (r) =>
      [
        r.change,
        r.partNumber,
        r.colour,
        r.perHarnessBefore,
        r.perHarnessAfter,
        r.moreNeeded,
        r.moreCost,
        r.effect,
      ]
        .filter((c) => c !== null)
        .join(' | '),
  );

describe('the change of what is bought', () => {
  it('is none between equal states', () => {
    expect(rowsOf(() => {})).toEqual([]);
    const generated = deriveHarness(generateProject({ wires: 40 }));
    expect(purchaseDelta(generated, deriveHarness(generateProject({ wires: 40 })), 7)).toEqual([]);
  });

  it('of a wire that goes takes its contacts along', () => {
    // By hand: W2 is 0.308 m and bears one contact at each end; for ten harnesses 3.08 m, ordered by the metre: 4.
    expect(rowsOf((t) => void t.project.wires.pop())).toEqual([
      'changed | C-PIN | 2 | 1 | -10 | -5 | 10 pcs fewer to order',
      'changed | C-SOCKET | 2 | 1 | -10 | -5 | 10 pcs fewer to order',
      'removed | WIRE-22 | BK | 0.308 | 0 | -3.08 | -2 | 4 m of an order placed would be left over',
    ]);
  });

  it('of a colour is a line less and a line more', () => {
    expect(rowsOf((t) => void (t.wire('W2').colour = { base: 'BU' }))).toEqual([
      'added | WIRE-22 | BU | 0 | 0.308 | 3.08 | 2 | order 4 m more',
      'removed | WIRE-22 | BK | 0.308 | 0 | -3.08 | -2 | 4 m of an order placed would be left over',
    ]);
  });

  it('within one pack is covered', () => {
    expect(rowsOf((t) => void (t.wire('W2').lengthMm = 330))).toEqual([
      'changed | WIRE-22 | BK | 0.308 | 0.33 | 0.22 | 0 | covered by the same order',
    ]);
  });

  it('to a part without an offer cannot be priced, and to an unknown length cannot be told', () => {
    expect(rowsOf((t) => void (t.part('contact', 'C-PIN').partNumber = 'C-NEW'))).toContain(
      'added | C-NEW | 0 | 2 | 20 | 10 | order 20 pcs more',
    );
    const unpriced = rowsOf((t) => {
      t.part('contact', 'C-PIN').partNumber = 'C-NEW';
      delete t.part('contact', 'C-NEW').offers;
    });
    expect(unpriced).toContain('added | C-NEW | 0 | 2 | 20 | +20 pcs needed; what to order cannot be told');
    const unknown = rowsOf((t) => {
      t.project.segments = [];
      t.wire('W1').lengthMm = 308;
    });
    expect(unknown).toEqual(['changed | WIRE-22 | BK | 0.308 | cannot be told: a quantity is not known']);
  });

  it('is a table with both revisions in its head', () => {
    const after = tiny((t) => {
      offered(t);
      t.project.revisions.push({ id: t.newId(), revision: 'B', author: 'Example', description: 'Next', status: 'draft' }); // prettier-ignore
    });
    const table = Table.parse(deltaTable(deriveHarness(BEFORE), deriveHarness(after), 10));
    expect(table.head).toEqual(expect.arrayContaining([['From revision', 'A'], ['To revision', 'B'], ['Order', '10 harnesses']])); // prettier-ignore
  });
});
