import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { ACTIONS } from '../../../renderer/app/actions/index';
import { freshWindow, idOf, openWindow, project } from '../window';

const wires = () => project().wires.map((w) => w.designator);

beforeEach(() => freshWindow());

describe('the keyboard', () => {
  it('deletes, undoes and does again', async () => {
    appStore.getState().select([idOf('W1')]);
    await openWindow();
    await userEvent.keyboard('{Delete}');
    expect(wires()).toEqual(['W2']);
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(wires()).toEqual(['W1', 'W2']);
    await userEvent.keyboard('{Control>}{Shift>}z{/Shift}{/Control}');
    expect(wires()).toEqual(['W2']);
  });

  it('leaves keys to a field while one types', async () => {
    appStore.getState().select([idOf('W1')]);
    const screen = await openWindow();
    await userEvent.click(screen.getByLabelText('Designator'));
    await userEvent.keyboard('{Delete}{Control>}a{/Control}');
    expect(wires()).toEqual(['W1', 'W2']);
    expect([...appStore.getState().view.selection]).toEqual([idOf('W1')]);
  });

  it('goes through the pages', async () => {
    await openWindow();
    await userEvent.keyboard('{Alt>}3{/Alt}');
    expect(appStore.getState().view.page).toBe('findings');
    await userEvent.keyboard('{Alt>}1{/Alt}');
    expect(appStore.getState().view.page).toBe('diagram');
  });

  it('puts panels away and brings them back', async () => {
    const screen = await openWindow();
    await expect.element(screen.getByRole('region', { name: 'Parts shelf' })).toBeVisible();
    await userEvent.keyboard('{Control>}b{/Control}');
    await expect.poll(() => screen.getByRole('region', { name: 'Parts shelf' }).query()).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Parts shelf' }));
    await expect.element(screen.getByRole('region', { name: 'Parts shelf' })).toBeVisible();
  });
});

describe('the palette', () => {
  it('lists every action with its keys, and carries out the one that is chosen', async () => {
    const screen = await openWindow();
    await userEvent.keyboard('{Control>}k{/Control}');
    const dialog = screen.getByRole('dialog', { name: 'All actions' });
    await expect.element(dialog).toBeVisible();
    expect(dialog.getByRole('option').elements()).toHaveLength(ACTIONS.length);
    await userEvent.fill(screen.getByRole('combobox', { name: 'All actions' }), 'inches');
    await userEvent.keyboard('{Enter}');
    expect(appStore.getState().view.lengthUnit).toBe('in');
    await expect.poll(() => dialog.query()).toBeNull();
  });

  it('finds an object by its signal and shows it', async () => {
    const screen = await openWindow();
    await userEvent.keyboard('{Control>}f{/Control}');
    await userEvent.fill(screen.getByRole('combobox', { name: 'Find an object' }), 'rtn wire');
    await userEvent.keyboard('{Enter}');
    expect([...appStore.getState().view.selection]).toEqual([idOf('W2')]);
    expect(appStore.getState().view.reveal?.refs).toEqual([{ type: 'wire', id: idOf('W2') }]);
  });
});

describe('a refused command', () => {
  it('is said in words', async () => {
    const screen = await openWindow();
    appStore.getState().dispatch({ id: 'mate.add', args: { a: idOf('X1'), b: idOf('X1') } });
    await expect.element(screen.getByRole('log')).toHaveTextContent('A connector cannot mate with itself.');
  });
});
