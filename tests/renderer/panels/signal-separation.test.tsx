import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { freshWindow, idOf, openWindow, project } from '../window';

const rules = () => appStore.getState().check.findings.map((f) => f.rule);
const sup = () => project().signals.find((s) => s.name === 'SUP')!;

beforeEach(() => freshWindow());

it('a signal says what it is to be kept with, kept apart from and mated under', async () => {
  const screen = await openWindow();
  await userEvent.click(screen.getByRole('button', { name: 'SUP', exact: true }));
  await userEvent.selectOptions(screen.getByLabelText('Pair with'), 'RTN');
  await expect.poll(rules).toContain('pair-kept');
  await userEvent.selectOptions(screen.getByLabelText('Redundant to'), 'RTN');
  await expect.poll(rules).toContain('redundant-together');
  await userEvent.selectOptions(screen.getByLabelText('Mated under power'), 'yes');
  await expect.poll(rules).toContain('mate-under-power');
  await userEvent.selectOptions(screen.getByLabelText('Noise', { exact: true }), 'noisy');
  expect(sup()).toMatchObject({ noiseClass: 'noisy', liveMating: true });
  await userEvent.selectOptions(screen.getByLabelText('Mated under power'), 'not known');
  await userEvent.selectOptions(screen.getByLabelText('Pair with'), 'none');
  expect(sup()).not.toHaveProperty('liveMating');
  expect(sup()).not.toHaveProperty('pairedWith');
});

it('a segment lists the styles of wire that are approved for its place', async () => {
  const screen = await openWindow();
  appStore.getState().setView({ page: 'formboard' });
  appStore.getState().select([idOf('S1')]);
  const field = screen.getByLabelText('Approved wire styles');
  await userEvent.fill(field, 'thin wall,  cross-linked, ');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => project().segments[0]?.wireStyles).toEqual(['thin wall', 'cross-linked']);
  await expect.poll(rules).toContain('wire-class');
  await userEvent.fill(field, '');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => project().segments[0]).not.toHaveProperty('wireStyles');
});
