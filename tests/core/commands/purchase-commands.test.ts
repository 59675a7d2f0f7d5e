import { describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo, type History } from '@latchwork/core/commands/history';
import { countingIds } from '@latchwork/core/model/ids';
import type { Offer } from '@latchwork/core/model/parts/common';
import { PURCHASING_DEFAULTS, purchasingValue, scrapOf } from '@latchwork/core/model/purchasing';
import { tiny } from '@latchwork/core/model/tiny';

const context = () => ({ newId: countingIds(50_000), catalogue: [] });
const history = startHistory(tiny());
const pin = history.project.parts.find((p) => p.partNumber === 'C-PIN')!;

function done(from: History, call: Call): History {
  const result = dispatch(from, call, context());
  if (!result.ok) throw new Error(result.problem.reason);
  return result.value;
}
const refusal = (call: Call): string => {
  const result = dispatch(history, call, context());
  return result.ok ? 'not refused' : result.problem.reason;
};
const purchasing = (change: Extract<Call, { id: 'project.edit-purchasing' }>['args']['change']): Call => ({
  id: 'project.edit-purchasing',
  args: { change },
});
const offers = (list: readonly Partial<Offer>[]): Call => ({
  id: 'part.edit-offers',
  args: {
    id: pin.id,
    offers: list.map((o) => ({ supplier: 'Example (invented)', currency: 'EUR', priceBreaks: [], ...o })),
  },
});

describe('project.edit-purchasing', () => {
  it('enters a value, and null goes back to common practice', () => {
    const entered = done(history, purchasing({ setUpPieces: 25, scrap: { contact: 0.1 } }));
    expect(purchasingValue(entered.project, 'setUpPieces')).toEqual({
      value: 25,
      source: 'entered for this project',
    });
    expect(scrapOf(entered.project, 'contact').value).toBe(0.1);
    expect(scrapOf(entered.project, 'wire')).toEqual({
      value: PURCHASING_DEFAULTS.scrap.wire,
      source: 'common practice, not verified',
    });
    const back = done(entered, purchasing({ setUpPieces: null, scrap: { contact: null } }));
    expect(back.project).not.toHaveProperty('purchasing');
    expect(undo(back).project.purchasing).toEqual({ setUpPieces: 25, scrap: { contact: 0.1 } });
  });

  it('keeps zero apart from nothing entered', () => {
    const zero = done(history, purchasing({ samplesPerCrimp: 0 }));
    expect(purchasingValue(zero.project, 'samplesPerCrimp').value).toBe(0);
  });

  it('is no step where nothing changes', () => {
    expect(done(history, purchasing({ setUpPieces: null }))).toBe(history);
    const entered = done(history, purchasing({ scrap: { tie: 0.2 } }));
    expect(done(entered, purchasing({ scrap: { tie: 0.2 } }))).toBe(entered);
  });

  it.each([
    ['a share above one', purchasing({ scrap: { contact: 1.5 } }), 'scrap'],
    ['a negative number', purchasing({ setUpPieces: -1 }), 'setUpPieces'],
    ['a currency that is none', purchasing({ currency: 'Euro' }), 'currency'],
    ['stock of a part that is not there', purchasing({ stock: [{ part: '11111111-2222-4333-8444-555555555555', quantity: 1 }] }), 'part record'],
  ])('refuses %s and names it', (_, call, name) => {
    expect(refusal(call)).toContain(name);
  }); // prettier-ignore
});

describe('part.edit-offers', () => {
  it('replaces the list as one step, and takes it away when it is empty', () => {
    const one = done(history, offers([{ orderCode: 'T-1' }]));
    expect(one.project.parts.find((p) => p.id === pin.id)?.offers).toMatchObject([{ orderCode: 'T-1' }]);
    expect(one.undo).toHaveLength(1);
    expect(done(one, offers([{ orderCode: 'T-1' }]))).toBe(one);
    expect(done(one, offers([])).project.parts.find((p) => p.id === pin.id)).not.toHaveProperty('offers');
  });

  it('refuses two prices from the same quantity on, and names the offer', () => {
    const twice = [
      { quantity: 10, price: 1 },
      { quantity: 10, price: 2 },
    ];
    expect(refusal(offers([{}, { priceBreaks: twice }]))).toBe(
      'Offer 2 (Example (invented)) has two prices from 10 on.',
    );
  });

  it.each([
    ['a price below zero', { priceBreaks: [{ quantity: 1, price: -1 }] }, 'price'],
    ['a day that is none', { priceDate: '2026-02-30' }, 'priceDate'],
    ['a pack of zero', { multiple: 0 }, 'multiple'],
  ])('refuses %s', (_, offer, name) => {
    expect(refusal(offers([offer]))).toContain(name);
  });
});
