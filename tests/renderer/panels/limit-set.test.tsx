import { compareLimitSets } from '@latchwork/core/model/limit-sets/compare-limit-sets';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { previewLimitSet } from '../../../renderer/panels/project/preview-limit-set';
import { freshWindow, idOf, openWindow, project } from '../window';

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
