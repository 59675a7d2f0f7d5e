import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { inspectionPlan } from '@latchwork/core/exports/inspection-plan';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { recordSheets } from '@latchwork/core/exports/record-sheets';
import { FORMS } from '@latchwork/core/exports/record-sheets/record-rows';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { demoFromFile } from '../demos/demo-files';

const harness = deriveHarness(demoFromFile('weather-station'));
const input = { harness, check: checkHarness(harness, []), date: '2026-03-01', options: { quantity: 10 } };
const { rows } = recordSheets.table(input);

describe('record sheets', () => {
  it('hold every characteristic of the inspection plan once, with its number and limits', () => {
    const plan = inspectionPlan.table(input).rows;
    const held = rows.flatMap((r) => {
      const [, number] = /^(\d+) /.exec(String(r.characteristic)) ?? [];
      return number === undefined ? [] : [{ number: Number(number), min: r.min, max: r.max, at: r.at }];
    });
    expect(held.sort((a, b) => a.number - b.number)).toEqual(
      plan.map((p) => ({ number: p.number, min: p.min, max: p.max, at: p.at })),
    );
  });

  it('leave blank what is entered by hand', () => {
    for (const row of rows)
      expect([row.result, row.gauge, row.lotOrSerial, row.verdict, row.nonconformity, row.signed]).toEqual(
        Array.from({ length: 6 }, () => null),
      );
  });

  it('have a form for parts, processes, characteristics, crimp heights and pulls', () => {
    expect([...new Set(rows.map((r) => r.form))]).toEqual(Object.values(FORMS));
    expect(rows.filter((r) => r.form === FORMS.heights).every((r) => r.readings === 5)).toBe(true);
    expect(rows.filter((r) => r.form === FORMS.pulls).every((r) => r.readings === 3)).toBe(true);
  });

  it('ask for no certificate of what comes with the equipment', () => {
    const at = rows.filter((r) => r.form === FORMS.parts).map((r) => String(r.at));
    expect(at.some((text) => /\bX1\b|\bX38\b/.test(text))).toBe(false);
  });

  it('are printed as boxes', () => {
    const paper = Paper.parse(recordSheets.paper?.(input));
    expect(paper.blocks.filter((b) => b.kind === 'drawing' && b.form).length).toBeGreaterThan(5);
  });
});
