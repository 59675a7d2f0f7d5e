import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { partsList } from '@latchwork/core/exports/parts-list';
import { purchaseOrder } from '@latchwork/core/exports/purchase/purchase-order';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { benchLamp } from '../../../generate/demos/bench-lamp';
import { weatherStation } from '../../../generate/demos/weather-station/weather-station';
import { workshopFaults } from '../../../generate/demos/workshop-faults/workshop-faults';
import { generateProject } from '../../../generate/harness-generator';

const PROJECTS: readonly (readonly [string, () => Project])[] = [
  ['bench lamp', benchLamp],
  ['weather station', weatherStation],
  ['workshop faults', workshopFaults],
  ...[1, 2, 3, 4, 5].map(
    (seed) => [`generated ${seed}`, () => generateProject({ wires: 60, seed })] as const,
  ),
];

const partsRows = (project: Project) => {
  const harness = deriveHarness(project);
  return partsList.table({ harness, check: checkHarness(harness, []), date: '2026-03-01' }).rows;
};

const sums = (pairs: readonly (readonly [string, number])[]): Record<string, number> => {
  const out: Record<string, number> = {};
  for (const [key, n] of pairs) out[key] = (out[key] ?? 0) + n;
  return out;
};

/** Contacts by part number, counted in the file itself: each contact object that an end or a cavity names, once. */
function contactsInFile(project: Project): Record<string, number> {
  const used = new Set<string>();
  for (const w of project.wires)
    for (const e of w.ends) if (e.at === 'cavity' && e.contact) used.add(e.contact);
  for (const c of project.connectors) for (const e of c.cavities) if (e.contact) used.add(e.contact);
  const numberOf = new Map(project.parts.map((p) => [p.id, p.partNumber]));
  return sums(project.contacts.filter((c) => used.has(c.id)).map((c) => [numberOf.get(c.part)!, 1]));
}

describe.each(PROJECTS)('V2 in %s', (_, make) => {
  const project = make();
  const harness = deriveHarness(project);

  it('the contacts of the cavities are those of the parts list, by part number', () => {
    const listed = partsRows(project).filter((r) => r['kind'] === 'contact' && r['partNumber'] !== null);
    expect(sums(listed.map((r) => [String(r['partNumber']), Number(r['quantity'])]))).toEqual(
      contactsInFile(project),
    );
  });

  it.each([1, 10, 100, 1000])('scrap, set-up and samples stand in the order of %i alone', (harnesses) => {
    const listed = partsRows(project).filter((r) => r['suppliedWith'] === 'harness');
    const { lines } = purchaseOrder(harness, harnesses);
    expect(lines.map((l) => l.line.part?.partNumber ?? null)).toEqual(listed.map((r) => r['partNumber']));
    for (const [i, l] of lines.entries()) {
      if (l.perHarness === null || !l.need) continue;
      expect(l.perHarness).toBe(listed[i]?.['quantity']);
      expect(l.need.need).toBeCloseTo(l.perHarness * harnesses, 6);
      const exact = l.perHarness * harnesses * (1 + l.scrap.value) + l.setUp + l.samples;
      expect(l.need.total - exact).toBeGreaterThanOrEqual(-1e-6);
      expect(l.need.total - exact).toBeLessThan(l.line.unit === 'm' ? 0.001 : 1);
    }
  });

  it.each([1, 10, 100, 1000])(
    'the order of %i covers what is needed and pays for nothing else',
    (harnesses) => {
      const order = purchaseOrder(harness, harnesses);
      for (const l of order.lines) {
        if (l.orderQuantity === null || !l.need) continue;
        expect(l.orderQuantity + l.need.fromStock).toBeGreaterThanOrEqual(l.need.total);
        expect(l.leftOver).toBeCloseTo(l.orderQuantity + l.need.fromStock - l.need.total, 6);
      }
      for (const total of order.totals) {
        const mine = order.lines.filter((l) => l.chosen?.weighed.offer.currency === total.currency);
        const cash = mine.reduce((n, l) => n + (l.cost ?? 0), 0);
        const left = mine.reduce((n, l) => n + (l.leftOverCost ?? 0), 0);
        expect(total.cash).toBeCloseTo(cash, 6);
        // The share of one harness is told to four digits.
        const off = Math.abs(total.usedPerHarness * harnesses + left - cash);
        expect(off).toBeLessThanOrEqual(0.00005 * harnesses + 1e-6);
      }
    },
  );

  // Outside: exhaustive search over every quantity of every offer that may be ordered.
  it.each([1, 10, 100, 1000])('no other quantity of any offer is cheaper for %i', (harnesses) => {
    for (const l of purchaseOrder(harness, harnesses).lines) {
      const least = searchedCost(l);
      if (least === undefined) expect(l.chosen).toBeUndefined();
      else expect(l.chosen!.choice.cost).toBeCloseTo(least, 6);
    }
  });
});

/** The least cost of a line, quantity by quantity, pack by pack. All demo offers are in one currency. */
function searchedCost({ need, offers, wish }: PurchaseLine): number | undefined {
  if (!need || need.toBuy === 0) return undefined;
  let least: number | undefined;
  for (const { offer, form } of offers) {
    if (wish && wish.forms.length > 0 && (!form || !wish.forms.includes(form))) continue;
    const pack = offer.multiple ?? 1;
    const breaks = [...offer.priceBreaks].sort((a, b) => a.quantity - b.quantity);
    const end = Math.max(need.toBuy, offer.minimum ?? 0, ...offer.priceBreaks.map((b) => b.quantity)) + pack;
    for (let packs = 1; packs * pack <= end + 1e-9; packs++) {
      const quantity = packs * pack;
      if (quantity < need.toBuy - 1e-9 || quantity < (offer.minimum ?? 0)) continue;
      const price = breaks.findLast((b) => b.quantity <= quantity)?.price;
      if (price !== undefined && (least === undefined || quantity * price < least)) least = quantity * price;
    }
  }
  return least;
}
