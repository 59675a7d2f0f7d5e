import { compareLimitSets } from '@latchwork/core/model/limit-sets/compare-limit-sets';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { beforeEach, describe, expect, it } from 'vitest';
import { page as pageOf, userEvent } from 'vitest/browser';
import { openOverlay } from '../../../renderer/app/overlays';
import { appStore } from '../../../renderer/app/store';
import { previewLimitSet } from '../../../renderer/panels/project/preview-limit-set';
import { axeFindings, freshWindow, idOf, openWindow, project } from '../window';

beforeEach(() => freshWindow());

async function inspector(...designators: string[]) {
  appStore.getState().select(designators.map(idOf));
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
}

it('takes a shipped limit set as one step after it was compared, and undo brings the old one back', async () => {
  const screen = await openWindow();
  const card = screen.getByRole('region', { name: 'Inspector' });
  await userEvent.click(card.getByText(/^Limits: General/));
  await userEvent.selectOptions(card.getByLabelText('Limit set'), 'Aerospace, as shipped');
  expect(project().limitSet.name).toBe('General');
  await userEvent.click(screen.getByRole('button', { name: 'Use Aerospace' }));
  await expect.poll(() => project().limitSet).toEqual(LIMIT_SETS.find((s) => s.name === 'Aerospace'));
  await expect.element(card.getByText(/^Limits: Aerospace/)).toBeVisible();
  appStore.getState().undo();
  expect(project().limitSet.name).toBe('General');
});

it('shows which limits and which findings a set would change, and keeps the old one when told to', async () => {
  const screen = await openWindow();
  const card = screen.getByRole('region', { name: 'Inspector' });
  await userEvent.click(card.getByText(/^Limits: General/));
  await userEvent.selectOptions(card.getByLabelText('Limit set'), 'Aerospace, as shipped');
  const dialog = screen.getByRole('dialog');
  const before = LIMIT_SETS[0]!;
  const after = LIMIT_SETS.find((s) => s.name === 'Aerospace')!;
  for (const { id } of compareLimitSets(before, after))
    await expect.element(dialog.getByRole('cell', { name: id.replaceAll('-', ' '), exact: true })).toBeInTheDocument(); // prettier-ignore
  const changes = previewLimitSet(appStore.getState().check, after);
  const changed = changes.gone.length + changes.added.length + changes.changed.length;
  await expect
    .element(dialog)
    .toHaveTextContent(
      changed === 0 ? 'No finding goes, comes or changes.' : /Findings that (go|come|change)/,
    );
  await userEvent.click(dialog.getByRole('button', { name: 'Keep General' }));
  expect(project().limitSet.name).toBe('General');
});

it('takes and clears what the board provides for a header', async () => {
  const card = await inspector('X3');
  await userEvent.click(card.getByText('More', { exact: true }));
  const pitch = card.getByLabelText('Footprint pitch');
  await userEvent.fill(pitch, '2.54');
  await userEvent.keyboard('{Enter}');
  const footprint = () => project().connectors.find((c) => c.designator === 'X3')?.footprint;
  expect(footprint()).toEqual({ pitchMm: 2.54 });
  await userEvent.fill(pitch, '');
  await userEvent.keyboard('{Enter}');
  expect(footprint()).toBeUndefined();
});

describe('the page of limit sets', () => {
  const page = async () => {
    const screen = await openWindow();
    openOverlay('limits');
    const dialog = screen.getByRole('dialog');
    await expect.element(dialog.getByRole('heading', { name: 'Limit sets' })).toBeVisible();
    return dialog;
  };
  const row = (dialog: Awaited<ReturnType<typeof page>>, name: string) =>
    dialog.getByRole('row', { name: new RegExp(`^${name}`) });

  it('is reached from the project card and from the palette', async () => {
    const screen = await openWindow();
    const card = screen.getByRole('region', { name: 'Inspector' });
    await userEvent.click(card.getByText(/^Limits: General/));
    await userEvent.click(card.getByRole('button', { name: 'Open the page of limit sets' }));
    await expect.element(screen.getByRole('heading', { name: 'Limit sets' })).toBeVisible();
    expect(await axeFindings()).toEqual([]);
  });

  it('shows each limit beside another set, and marks what differs as compareLimitSets has it', async () => {
    const dialog = await page();
    await userEvent.click(dialog.getByLabelText('Only what differs'));
    const rows = dialog.getByRole('row').elements().slice(1);
    const different = compareLimitSets(LIMIT_SETS[0]!, LIMIT_SETS[1]!).map((d) => d.id.replaceAll('-', ' '));
    expect(rows.map((r) => r.querySelector('th')?.textContent)).toHaveLength(different.length);
    for (const name of different) await expect.element(row(dialog, name)).toHaveTextContent('≠');
  });

  it('tells which findings a typed value would change before it is applied, and applies it as one step', async () => {
    const dialog = await page();
    await userEvent.click(dialog.getByRole('button', { name: 'ambient temperature', exact: true }));
    const editor = dialog.getByRole('region', { name: 'Limit: ambient temperature' });
    await userEvent.fill(editor.getByLabelText(/^Value/), '200');
    await userEvent.keyboard('{Enter}');
    const effect = dialog.getByRole('region', { name: 'What the draft changes' });
    await expect.element(effect).toHaveTextContent(/Findings that come: \d+/);
    expect(project().limitSet).toEqual(LIMIT_SETS[0]);
    const before = appStore.getState().history.undo.length;
    await userEvent.click(dialog.getByRole('button', { name: 'Apply to the project' }));
    const limit = () => project().limitSet.limits.find((l) => l.id === 'ambient-temperature');
    await expect.poll(limit).toMatchObject({ value: 200, source: 'typed in this project', verified: false });
    expect(appStore.getState().history.undo.length).toBe(before + 1);
    await expect
      .poll(() => appStore.getState().check.findings.some((f) => f.rule === 'contact-temperature'))
      .toBe(true);
  });

  it('takes a value of another set with its source, and does not drop a draft unasked', async () => {
    const dialog = await page();
    await userEvent.click(dialog.getByRole('button', { name: 'bend radius factor', exact: true }));
    await userEvent.click(dialog.getByRole('button', { name: /Take what Aerospace says/ }));
    await expect.element(row(dialog, 'bend radius factor')).toHaveTextContent(/10.*AC 43.13-1B/);
    await userEvent.click(dialog.getByRole('button', { name: 'Close', exact: true }));
    await userEvent.click(pageOf.getByRole('button', { name: 'Stay here' }));
    await expect.element(row(dialog, 'bend radius factor')).toHaveTextContent('changed');
    expect(project().limitSet).toEqual(LIMIT_SETS[0]);
  });
});
