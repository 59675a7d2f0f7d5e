import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { freshWindow, idOf, openWindow, project } from '../window';

beforeEach(() => freshWindow());

async function inspector(...designators: string[]) {
  appStore.getState().select(designators.map(idOf));
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
}

it('takes a shipped limit set as one step, and undo brings the old one back', async () => {
  const card = await inspector();
  await userEvent.click(card.getByText(/^Limits: General/));
  await userEvent.selectOptions(card.getByLabelText('Limit set'), 'Aerospace, as shipped');
  expect(project().limitSet).toEqual(LIMIT_SETS.find((s) => s.name === 'Aerospace'));
  await expect.element(card.getByText(/^Limits: Aerospace/)).toBeVisible();
  appStore.getState().undo();
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
