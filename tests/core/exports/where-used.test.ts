import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { partsList } from '@latchwork/core/exports/parts-list';
import { whereUsed } from '@latchwork/core/exports/where-used';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { weatherStation } from '../../generate/demos/weather-station/weather-station';

const inputOf = (project: Project) => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};

describe('where-used', () => {
  it('names every place of a part in the tiny harness', () => {
    const table = whereUsed.table(
      inputOf(tiny((t) => void (t.part('contact', 'C-PIN').alternates = ['C-SOCKET']))),
    );
    const rows = table.rows.map((r) =>
      [r.partNumber, r.use, r.where, r.quantity, r.unit, r.suppliedWith]
        .filter((c) => c !== null)
        .join(' | '),
    );
    expect(rows).toEqual([
      'H-PIN | housing | X2 | 1 | pcs | harness',
      'H-SOCKET | housing | X1 | 1 | pcs | harness',
      'H-SOCKET | housing | X4 | 1 | pcs | equipment',
      'HEADER | header | X3 | 1 | pcs | equipment',
      'C-PIN | contact | X2:1 | 1 | pcs | harness',
      'C-PIN | contact | X2:2 | 1 | pcs | harness',
      'C-SOCKET | contact | X1:1 | 1 | pcs | harness',
      'C-SOCKET | contact | X1:2 | 1 | pcs | harness',
      'LOCK | secondary lock | X1 | 1 | pcs | harness',
      'LOCK | secondary lock | X2 | 1 | pcs | harness',
      'LOCK | secondary lock | X4 | 1 | pcs | equipment',
      'WIRE-22 | wire | W2 | 0.308 | m | harness',
      'WIRE-22 | wire | W1 | 0.308 | m | harness',
      'C-SOCKET | alternate of | C-PIN',
    ]);
    expect(table.objects.every((o) => o.length === 1)).toBe(true);
  });

  it('adds up to the parts list, part by part', () => {
    const input = inputOf(weatherStation());
    const sumOf = (rows: readonly Record<string, unknown>[]): Map<string, number> => {
      const out = new Map<string, number>();
      for (const r of rows) {
        const key = [r['partNumber'], r['colour'], r['suppliedWith']].join(' ');
        if (r['quantity'] !== null) out.set(key, (out.get(key) ?? 0) + Number(r['quantity']));
      }
      return out;
    };
    const used = sumOf(whereUsed.table(input).rows);
    const listed = sumOf(partsList.table(input).rows);
    expect([...used.keys()].sort()).toEqual([...listed.keys()].sort());
    for (const [key, n] of listed) expect(used.get(key), key).toBeCloseTo(n, 2);
  });
});
