import { expect, test } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { partsList } from '@latchwork/core/exports/parts-list';
import { purchaseVolumes } from '@latchwork/core/exports/purchase-volumes';
import { requestForQuotation } from '@latchwork/core/exports/request-for-quotation';
import { whereUsed } from '@latchwork/core/exports/where-used';
import { baselineOf } from '@latchwork/core/model/baseline';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const harness = deriveHarness(
  tiny((t) => {
    for (const p of t.project.parts)
      p.offers = [
        { supplier: 'Example (invented)', currency: 'EUR', priceBreaks: [{ quantity: 1, price: 0.5 }] },
      ];
  }),
);
const input: DocumentInput = { harness, check: checkHarness(harness, []), date: '2026-03-01' };

test.each([
  [partsList, ['partNumber', 'maker', 'designators', 'quantity']],
  [whereUsed, ['partNumber', 'maker', 'where', 'use']],
  [requestForQuotation, ['partNumber', 'maker', 'description', 'quantity']],
  [purchaseVolumes, ['partNumber', 'perHarness', 'v1-order', 'v4-order']],
] as const)('the pages of $id hold its rows, its cautions and the baseline', (exporter, keys) => {
  const paper = Paper.parse(exporter.paper!(input));
  const table = paper.blocks.find((b) => b.kind === 'table')!;
  for (const row of exporter.table(input).rows.filter((r) => r['partNumber'] !== null)) {
    const wanted = keys.map((k) => String(row[k] ?? ''));
    const found = table.rows.some((cells) => wanted.every((w) => cells.join(' | ').includes(w)));
    expect(found, wanted.join(', ')).toBe(true);
  }
  expect(table.rows.every((cells) => cells.length === table.columns.length)).toBe(true);
  expect(paper.baseline).toBe(baselineOf(harness.project));
  expect(paper.cautions.length).toBeGreaterThan(0);
});
