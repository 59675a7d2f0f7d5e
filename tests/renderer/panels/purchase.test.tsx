import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { TinyDraft } from '@latchwork/core/model/tiny';
import { appStore } from '../../../renderer/app/store';
import { orderView } from '../../../renderer/panels/purchase/order-view';
import { axeFindings, fakeHost, freshWindow, openWindow, project } from '../window';

const offered = (t: TinyDraft): void => {
  for (const p of t.project.parts)
    p.offers = [
      {
        supplier: 'Example Trading (invented)',
        currency: 'EUR',
        minimum: 100,
        multiple: 100,
        leadTimeDays: 12,
        priceDate: '2026-01-15',
        priceBreaks: [
          { quantity: 100, price: 0.05 },
          { quantity: 500, price: 0.02 },
        ],
      },
    ];
};
const pin = () => project().parts.find((p) => p.partNumber === 'C-PIN')!;

beforeEach(() => {
  freshWindow(offered);
  orderView.setState({ mode: 'harness', harnesses: null, line: null });
  appStore.getState().setView({ page: 'parts-list' });
});

async function openOrder() {
  const screen = await openWindow();
  await userEvent.click(screen.getByRole('button', { name: 'An order' }));
  const row = (text: string) => screen.getByRole('row').filter({ hasText: text });
  return { screen, row };
}

describe('the parts list for an order', () => {
  it('starts with one harness and switches to an order and its volumes', async () => {
    const { screen } = await openOrder();
    await expect.element(screen.getByText('Cash to buy')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Volumes' }));
    await expect.element(screen.getByText('For 1000 harnesses')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'One harness' }));
    await expect.element(screen.getByText('for one harness')).toBeVisible();
  });

  it('follows the number of harnesses that is typed', async () => {
    const { screen, row } = await openOrder();
    await userEvent.fill(screen.getByLabelText('Harnesses', { exact: true }), '100');
    await userEvent.keyboard('{Enter}');
    // By hand, as in the test of the document: 221 needed, 500 at 0.02.
    await expect.element(row('C-PIN').getByRole('button', { name: '221' })).toBeVisible();
    await expect.element(row('C-PIN').getByRole('button', { name: '500' })).toBeVisible();
    await userEvent.fill(screen.getByLabelText('Harnesses', { exact: true }), '0');
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByText('A number greater than zero is needed here.')).toBeVisible();
  });

  it('opens the working of a quantity, with every quantity that was weighed as a picture', async () => {
    orderView.setState({ harnesses: 100 });
    const { screen, row } = await openOrder();
    await userEvent.click(row('C-PIN').getByRole('button', { name: '500' }));
    const dialog = screen.getByRole('dialog');
    await expect.element(dialog.getByText('Order: C-PIN')).toBeVisible();
    await expect
      .element(dialog.getByRole('img'))
      .toHaveAccessibleName(
        '300 pcs of offer 1 cost 15.00 EUR; 500 pcs of offer 1 cost 10.00 EUR, the cheapest',
      );
  });

  it('edits the offers of a line, each field as one step that can be undone', async () => {
    orderView.setState({ harnesses: 100 });
    const { screen, row } = await openOrder();
    await userEvent.click(row('C-PIN').getByText('C-PIN'));
    await userEvent.fill(screen.getByLabelText('Lead time'), '30');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => pin().offers?.[0]?.leadTimeDays).toBe(30);
    await expect.element(screen.getByText('Slowest line')).toBeVisible();
    await userEvent.fill(screen.getByLabelText('New price'), '1000: 0.001');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => pin().offers?.[0]?.priceBreaks.length).toBe(3);
    await expect.element(row('C-PIN').getByRole('button', { name: '1000' })).toBeVisible();
    await userEvent.fill(screen.getByLabelText('New price'), '1000: 0.002');
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByText(/has two prices from 1000 on/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Add an offer' }));
    await expect.poll(() => pin().offers?.length).toBe(2);
    for (let i = 0; i < 3; i++) appStore.getState().undo();
    expect(pin().offers).toMatchObject([{ leadTimeDays: 12, priceBreaks: [{}, {}] }]);
  });

  it('edits what orders go by, and goes back to common practice when a field is emptied', async () => {
    orderView.setState({ harnesses: 100 });
    const { screen, row } = await openOrder();
    await expect.element(screen.getByLabelText('contact %')).toHaveAttribute('placeholder', '3');
    await userEvent.fill(screen.getByLabelText('contact %'), '10');
    await userEvent.keyboard('{Enter}');
    await expect.element(row('C-PIN').getByRole('button', { name: '235' })).toBeVisible();
    expect(project().purchasing).toEqual({ scrap: { contact: 0.1 } });
    await userEvent.fill(screen.getByLabelText('contact %'), '');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => project().purchasing).toBeUndefined();
    await userEvent.fill(screen.getByLabelText('Volumes'), '5, 50');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => project().buildQuantities).toEqual([5, 50]);
  });

  it('takes what lies in the own store off the order', async () => {
    orderView.setState({ harnesses: 100 });
    const { screen, row } = await openOrder();
    await userEvent.click(row('WIRE-22').filter({ hasText: 'RD' }).getByText('WIRE-22'));
    await userEvent.fill(screen.getByLabelText('In the own store'), '12.5');
    await userEvent.keyboard('{Enter}');
    const wire = project().parts.find((p) => p.partNumber === 'WIRE-22')!;
    await expect
      .poll(() => project().purchasing?.stock)
      .toEqual([{ part: wire.id, colour: { base: 'RD' }, quantity: 12.5 }]);
  });

  it('exports the order that is shown', async () => {
    const { asked } = fakeHost({ 'table:export': async ({ name }) => ({ status: 'saved', name: name! }) });
    orderView.setState({ harnesses: 100 });
    const { screen } = await openOrder();
    await userEvent.click(screen.getByRole('button', { name: 'Export' }));
    await userEvent.click(screen.getByRole('menuitem', { name: /CSV/ }));
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => asked.map((a) => a.channel)).toEqual(['table:export']);
    const { table } = asked[0]!.request as { table: { id: string; rows: Record<string, unknown>[] } };
    expect(table.id).toBe('purchase-list');
    expect(table.rows.find((r) => r['partNumber'] === 'C-PIN')).toMatchObject({ total: 221, samples: 5 });
  });

  it('asks one supplier for what this one offers, as XML of the standard', async () => {
    const { asked } = fakeHost({ 'file:export': async ({ name }) => ({ status: 'saved', name: name! }) });
    orderView.setState({ harnesses: 100 });
    const { screen } = await openOrder();
    await userEvent.selectOptions(screen.getByLabelText('Ask'), 'Example Trading (invented)');
    await userEvent.click(screen.getByRole('button', { name: 'Request for quotation' }));
    await userEvent.click(screen.getByRole('menuitem', { name: /UBL 2.1/ }));
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => asked.map((a) => a.channel)).toEqual(['file:export']);
    const { bytesBase64, name } = asked[0]!.request as { bytesBase64: string; name: string };
    expect(name).toMatch(/request-for-quotation\.xml$/);
    const document_ = new DOMParser().parseFromString(atob(bytesBase64), 'application/xml');
    expect(document_.documentElement.localName).toBe('RequestForQuotation');
    expect(document_.getElementsByTagName('cac:SellerSupplierParty')[0]?.textContent).toContain(
      'Example Trading (invented)',
    );
  });

  it('has nothing for axe to find, with a line and without', async () => {
    const { row } = await openOrder();
    expect(await axeFindings()).toEqual([]);
    await userEvent.click(row('C-PIN').getByText('C-PIN'));
    expect(await axeFindings()).toEqual([]);
  });
});
