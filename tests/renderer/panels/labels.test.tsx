import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { tiny } from '@latchwork/core/model/tiny';
import { appStore } from '../../../renderer/app/store';
import { axeFindings, freshWindow, openWindow, project } from '../window';

beforeEach(() => {
  freshWindow();
  appStore.getState().open(tiny(), { name: 'tiny.latchwork' });
  appStore.getState().setCatalogue([
    {
      kind: 'label',
      id: '00000000-0000-4000-8000-0000000e0001',
      maker: 'Example Works (invented)',
      partNumber: 'L-6',
      description: 'Invented label',
      bundleMaxMm: 6,
    },
  ]);
});

const inspector = async (id?: string) => {
  appStore.getState().select(id ? [id] : []);
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
};

it('are made from the card of the project by the method that it names, in one step back', async () => {
  const card = await inspector();
  await userEvent.click(card.getByText('Labels (0)'));
  await userEvent.selectOptions(card.getByLabelText('Marks say'), 'local-end');
  expect(project().labelMethod).toBe('local-end');
  await expect.element(card.getByText('6 new.')).toBeVisible();
  await userEvent.fill(card.getByLabelText('New ones, on wires'), '20 mm');
  await userEvent.keyboard('{Enter}');
  await userEvent.click(card.getByRole('button', { name: 'Make labels' }));
  expect(
    project()
      .labels.map((l) => l.text)
      .sort(),
  ).toEqual(['X1', 'X1:1', 'X1:2', 'X2', 'X2:1', 'X2:2']);
  expect(project().labels.filter((l) => l.datumDistanceMm === 20)).toHaveLength(4);
  await expect.element(card.getByText('0 new, 6 say it already.')).toBeVisible();
  expect(await axeFindings()).toEqual([]);
  appStore.getState().undo();
  expect(project().labels).toEqual([]);
});

it('are made for one wire from its card, and tell who says their text', async () => {
  appStore.getState().dispatch({ id: 'project.edit', args: { change: { labelMethod: 'remote-end' } } });
  const wire = project().wires[0];
  const card = await inspector(wire?.id);
  await userEvent.click(card.getByText('Labels (0)'));
  await userEvent.click(card.getByRole('button', { name: 'Make 2 labels' }));
  expect(project().labels.map((l) => l.text)).toEqual(['X2:1', 'X1:1']);

  appStore.getState().select([project().labels[0]?.id ?? '']);
  await expect.element(card.getByText('the method of the project')).toBeVisible();
  await userEvent.fill(card.getByLabelText('Text', { exact: true }), 'SPARE');
  await userEvent.keyboard('{Enter}');
  await expect.element(card.getByText('typed by hand')).toBeVisible();
  await userEvent.click(card.getByRole('button', { name: 'Follow the method' }));
  expect(project().labels[0]?.text).toBe('X2:1');
  expect(project().labels[0]?.made).toBe(true);
});
