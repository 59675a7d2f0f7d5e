import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { purchaseList } from '@latchwork/core/exports/purchase-list';
import { purchaseVolumes } from '@latchwork/core/exports/purchase-volumes';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import type { Project } from '@latchwork/core/model/project';
import { weatherStation } from '../../generate/demos/weather-station/weather-station';

const inputOf = (project: Project) => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};
const station = inputOf(weatherStation());

describe('volumes side by side', () => {
  const table = purchaseVolumes.table(station);
  const lines = table.rows.filter((r) => r['item'] !== null);
  const sum = (title: string) => table.rows.find((r) => r['description'] === title)!;

  it.each([
    [1, 'v1'],
    [10, 'v2'],
    [100, 'v3'],
    [1000, 'v4'],
  ] as const)('for %i say what the purchase list of that order says', (quantity, v) => {
    const list = purchaseList.table({ ...station, options: { quantity } });
    const pick = (rows: readonly Record<string, unknown>[], ...keys: string[]) =>
      rows.map((r) => keys.map((k) => r[k]));
    expect(
      pick(lines, 'partNumber', 'colour', `${v}-total`, `${v}-order`, `${v}-price`, `${v}-cost`),
    ).toEqual(pick(list.rows, 'partNumber', 'colour', 'total', 'orderQuantity', 'unitPrice', 'lineCost'));
    const cash = list.rows.reduce((n, r) => n + Number(r['lineCost']), 0);
    expect(sum('Cash to buy')[`${v}-cost`]).toBeCloseTo(cash, 6);
    expect(sum('Left over')[`${v}-cost`]).toBeCloseTo(
      list.rows.reduce((n, r) => n + Number(r['leftOverCost']), 0),
      6,
    );
    expect(sum('Lead time of the slowest line')[`${v}-leadTime`]).toBe(
      Math.max(...list.rows.map((r) => Number(r['leadTimeDays']))),
    );
    expect(sum('Lines without a price, not in the sums')[`${v}-order`]).toBe(0);
  });

  it('cost less by the harness the more there are', () => {
    const used = ['v1', 'v2', 'v3', 'v4'].map((v) => Number(sum('Material used per harness')[`${v}-cost`]));
    expect([...used].sort((a, b) => b - a)).toEqual(used);
  });

  it('are 1, 10, 100 and 1,000 where the project names one build only', () => {
    const titles = purchaseVolumes.table(inputOf(tiny())).columns.map((c) => c.title);
    expect(titles.filter((t) => t.endsWith(': order'))).toEqual([
      '1: order',
      '10: order',
      '100: order',
      '1000: order',
    ]);
    const two = tiny((t) => void (t.project.buildQuantities = [50, 5]));
    expect(
      purchaseVolumes
        .table(inputOf(two))
        .columns.map((c) => c.title)
        .filter((t) => t.endsWith(': order')),
    ).toEqual(['5: order', '50: order']);
  });

  it('count the lines that have no price', () => {
    const rows = purchaseVolumes.table(inputOf(tiny((t) => void t.project.parts.forEach((p) => delete p.offers)))).rows; // prettier-ignore
    expect(rows.at(-1)).toMatchObject({ 'v1-order': 7, 'v4-order': 7 });
    expect(rows.some((r) => r['description'] === 'Cash to buy')).toBe(false);
  });
});

describe('the purchase list as pages', () => {
  it('bears every line with its maker, order and supplier, and says what is not known', () => {
    const paper = Paper.parse(purchaseList.paper!({ ...station, options: { quantity: 100 } }));
    const table = paper.blocks.find((b) => b.kind === 'table')!;
    const rows = purchaseList.table({ ...station, options: { quantity: 100 } }).rows;
    expect(table.rows).toHaveLength(rows.length);
    for (const [i, row] of rows.entries()) {
      const text = table.rows[i]!.join(' ');
      for (const key of ['partNumber', 'maker', 'orderQuantity', 'supplier', 'orderCode'] as const)
        expect(text).toContain(String(row[key]));
    }
    const bare = purchaseList.paper!(inputOf(tiny()));
    expect(JSON.stringify(bare.blocks)).toContain('not known');
    expect(JSON.stringify(bare.blocks)).toContain('Not in the sums');
  });
});
