import { beforeEach, expect, it, vi } from 'vitest';
import { render } from 'vitest-browser-react';
import { userEvent } from 'vitest/browser';
import { parseProject } from '@latchwork/core/model/parse';
import { ErrorBoundary } from '../../../renderer/app/error-boundary';
import { appStore } from '../../../renderer/app/store';
import { fakeHost, freshWindow, project } from '../window';

beforeEach(() => freshWindow());

it('keeps the work when a part of the window fails, and saves it from there', async () => {
  // React reports what a boundary caught; here it is meant.
  const reported = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const saved: string[] = [];
  fakeHost({
    'project:save': async ({ text }) => {
      saved.push(text);
      return { status: 'saved', revision: 'r2' };
    },
    'project:recent': async () => ({ recent: [] }),
    'backup:discard': async () => ({ status: 'done' }),
  });
  appStore.getState().setDocument({ token: 't', revision: 'r' });
  let broken = true;
  const Part = () => {
    if (broken) throw new Error('no such thing');
    return <p>well again</p>;
  };
  const screen = await render(
    <ErrorBoundary what="The inspector">
      <Part />
    </ErrorBoundary>,
  );
  await expect.element(screen.getByRole('heading')).toHaveTextContent('The inspector stopped working');
  await userEvent.click(screen.getByRole('button', { name: 'Save the project' }));
  await expect.poll(() => saved.length).toBe(1);
  expect(parseProject(saved[0]!)).toEqual({ ok: true, value: project() });
  broken = false;
  await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
  await expect.element(screen.getByText('well again')).toBeVisible();
  reported.mockRestore();
});
