import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { purchaseOrder } from '@latchwork/core/exports/purchase/purchase-order';
import { lineForm } from '@latchwork/core/exports/purchase/line-words';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import { parseProject } from '@latchwork/core/model/parse';

const PART = 'BI2-S2630-01';
const text = readFileSync(new URL('./PURCHASE.md', import.meta.url), 'utf8');

const cells = (line: string): string[] => line.split('|').slice(1, -1).map((c) => c.trim()); // prettier-ignore

/** The table under "Figures": volume by volume, figure by figure, as it was worked by hand. */
function worked(): { harnesses: number; figures: Record<string, string> }[] {
  const [head = '', , ...rows] = text
    .slice(text.indexOf('## Figures'))
    .split('\n')
    .filter((l) => l.startsWith('|'));
  const volumes = cells(head).slice(1);
  return volumes.map((volume, i) => ({
    harnesses: Number(volume),
    figures: Object.fromEntries(rows.map((row) => [cells(row)[0]!, cells(row)[i + 1]!])),
  }));
}

const station = parseProject(
  readFileSync(new URL('../../../../demo-projects/weather-station.latchwork', import.meta.url), 'utf8'),
);
if (!station.ok) throw new Error('the demo does not open');
const harness = deriveHarness(station.value);

function lineAt(harnesses: number): PurchaseLine {
  const line = purchaseOrder(harness, harnesses).lines.find((l) => l.line.part?.partNumber === PART);
  if (!line) throw new Error(`no ${PART}`);
  return line;
}

describe('the line that is worked by hand', () => {
  it('is there at 1, 10, 100 and 1,000', () => {
    expect(worked().map((w) => w.harnesses)).toEqual([1, 10, 100, 1000]);
  });

  test.each(worked())('at $harnesses is what the program says', ({ harnesses, figures }) => {
    const l = lineAt(harnesses);
    const said: Record<string, number | string | null | undefined> = {
      need: l.need?.need,
      scrap: l.need?.scrap,
      'set-up': l.setUp,
      samples: l.samples,
      'needed in all': l.need?.total,
      form: lineForm(l),
      order: l.orderQuantity,
      'price from': l.chosen?.choice.breakQuantity,
      'price of one': l.chosen?.choice.price,
      cost: l.cost,
      'left over': l.leftOver,
      'cost left over': l.leftOverCost,
      'used up': l.usedCost,
    };
    expect(Object.keys(figures)).toEqual(Object.keys(said));
    const shown = (v: number | string | null | undefined): string =>
      typeof v === 'number' ? String(v) : (v ?? 'not known');
    for (const [name, value] of Object.entries(said))
      expect(shown(value), name).toBe(
        typeof value === 'number' ? String(Number(figures[name])) : figures[name],
      );
  });

  it('weighs the quantities that the page weighs', () => {
    for (const { harnesses } of worked()) {
      const choices = lineAt(harnesses).offers.flatMap((w) => w.choices);
      expect(choices.length).toBeGreaterThan(0);
      for (const c of choices)
        expect(text, `${c.quantity} for ${harnesses}`).toContain(
          `${c.quantity.toLocaleString('en')} x ${c.price} = ${c.cost.toLocaleString('en', { minimumFractionDigits: 2, maximumFractionDigits: 2 })}`,
        );
    }
  });

  it('stands on the terms that the page names', () => {
    const { offers, setUps } = lineAt(1);
    expect(setUps).toEqual(['TW-26-095']);
    expect(offers.map((w) => w.form)).toEqual(['strip', 'loose']);
    for (const { offer } of offers)
      for (const b of offer.priceBreaks)
        expect(text).toContain(`rom ${b.quantity.toLocaleString('en')} at ${b.price}`);
  });
});
