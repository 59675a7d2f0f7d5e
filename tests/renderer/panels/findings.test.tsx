import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { bandOf } from '../../../renderer/panels/findings/band-of';
import type { Finding } from '@latchwork/core/rules/finding';
import { freshWindow, idOf, openWindow, project } from '../window';

const line = (screen: Awaited<ReturnType<typeof openWindow>>, name: RegExp) =>
  screen.getByRole('listbox', { name: 'Findings' }).getByRole('option', { name });
const rules = () => appStore.getState().check.findings.map((f) => f.rule);

beforeEach(() => {
  // A pin contact in a housing for sockets, and a wire whose length cannot be known.
  freshWindow((t) => {
    const end = t.wire('W1').ends[0];
    const contact = t.project.contacts.find((c) => end.at === 'cavity' && c.id === end.contact)!;
    contact.part = t.part('contact', 'C-PIN').id;
    delete t.connector('X2').node;
  });
  appStore.getState().setView({ page: 'findings' });
});

describe('the findings page', () => {
  it('filters by result, and says how many are left', async () => {
    const screen = await openWindow();
    const all = rules().length;
    await userEvent.selectOptions(screen.getByLabelText('Result'), 'cannot verify');
    const left = appStore.getState().check.findings.filter((f) => f.result === 'cannot-verify').length;
    expect(left).toBeGreaterThan(0);
    expect(left).toBeLessThan(all);
    await expect.element(screen.getByText(`${left} of ${all} findings`)).toBeVisible();
    await userEvent.fill(screen.getByLabelText('Search findings'), 'no such words');
    await userEvent.click(screen.getByRole('button', { name: 'Show all findings' }));
    await expect.element(screen.getByText(`${all} findings`)).toBeVisible();
  });

  it('shows the working, and mends the design by the fix', async () => {
    const screen = await openWindow();
    await userEvent.click(line(screen, /contact-kind/));
    const finding = screen.getByRole('article');
    await expect.element(finding).toHaveTextContent('C-PIN in X1:1 is a pin contact');
    await expect.element(finding).toHaveTextContent('Why it matters');
    await userEvent.click(finding.getByRole('button', { name: /Choose the contact that fits/ }));
    await expect.poll(rules).not.toContain('contact-kind');
    appStore.getState().undo();
    await expect.poll(rules).toContain('contact-kind');
  });

  it('shows the object on the sheet', async () => {
    const screen = await openWindow();
    await userEvent.click(line(screen, /contact-kind/));
    await userEvent.click(screen.getByRole('button', { name: 'Show me' }));
    const { view } = appStore.getState();
    expect(view.page).toBe('diagram');
    expect(view.selection).toContain(`${idOf('X1')}:1`);
  });

  it('leads to the field that is missing', async () => {
    const screen = await openWindow();
    await userEvent.click(line(screen, /length-missing/).first());
    await userEvent.click(screen.getByRole('button', { name: 'Go there' }).first());
    await expect
      .poll(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field'))
      .toBe('node');
    expect([...appStore.getState().view.selection]).toEqual([idOf('X2')]);
  });

  it('says what was asked when nothing is found', async () => {
    freshWindow();
    appStore.getState().setView({ page: 'findings' });
    const screen = await openWindow();
    await expect
      .element(screen.getByText(/rules were asked/))
      .toHaveTextContent('Checked against the limits entered');
    expect(project().wires).toHaveLength(2);
  });
});

describe('the limit bar', () => {
  it.each([
    [
      { measured: '1.6 mm', limit: '0.89 to 1.53 mm' },
      { value: 1.6, min: 0.89, max: 1.53, unit: 'mm' },
    ],
    [
      { measured: '1.55 to 1.65 mm', limit: '0.89 to 1.53 mm' },
      { value: 1.55, valueTo: 1.65, min: 0.89, max: 1.53, unit: 'mm' },
    ],
    [
      { measured: '0.1407 mm2', limit: '0.2 mm2 or more' },
      { value: 0.1407, min: 0.2, unit: 'mm²' },
    ],
    [
      { measured: 4, limit: '2.5 ± 0.3 mm' },
      { value: 4, min: 2.2, max: 2.8, unit: 'mm' },
    ],
    [
      { thickness: '4 mm', range: '0.8 to 1.8 mm' },
      { value: 4, min: 0.8, max: 1.8, unit: 'mm' },
    ],
    [{ measured: 'pin', limit: 'socket' }, null],
    [{ measured: '26 AWG', limit: '0.2 to 0.6 mm2' }, null],
    [
      { measured: 8, needed: 17.33 },
      { value: 8, min: 17.33, unit: '' },
    ],
    [
      { measured: 150, limit: 100 },
      { value: 150, max: 100, unit: '' },
    ],
    [{}, null],
  ])('reads %j', (data, band) => {
    expect(bandOf({ data, evidence: [] } as unknown as Finding)).toEqual(band);
  });
});
