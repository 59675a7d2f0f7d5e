import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { takeOpened } from '../../../renderer/app/files/opened';
import { appStore, isDirty } from '../../../renderer/app/store';
import { fakeHost, freshWindow, openWindow, project } from '../window';

beforeEach(() => freshWindow());

it('a damaged file is not opened; what can be read of it is offered as a new project that is not saved', async () => {
  fakeHost({});
  const text = serialiseProject(project());
  const broken = text.slice(0, text.indexOf('"designator":"W2"'));
  const screen = await openWindow();
  const before = project();
  expect(
    await takeOpened({ status: 'opened', token: 't', name: 'lamp.latchwork', text: broken, revision: 'r' }),
  ).toBe(false);
  expect(project()).toBe(before);
  await userEvent.click(screen.getByRole('button', { name: 'See what can be rescued' }));
  await expect
    .element(screen.getByRole('region', { name: 'Lost' }))
    .toHaveTextContent('segments: not in the file any more');
  await userEvent.click(screen.getByRole('button', { name: 'Open it as a new project' }));
  await expect.poll(() => project().wires.map((w) => w.designator)).toEqual(['W1']);
  expect(appStore.getState().document).toMatchObject({ token: null, name: 'lamp rescued' });
  expect(isDirty(appStore.getState())).toBe(true);
});
