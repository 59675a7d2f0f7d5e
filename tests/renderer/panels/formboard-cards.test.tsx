import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { boardHarness } from '../canvas/board-harness';
import { axeFindings, freshWindow, openWindow, project } from '../window';

beforeEach(() => {
  freshWindow();
  const board = boardHarness();
  appStore.getState().open(board, { name: 'board.latchwork' });
  appStore.getState().setCatalogue(board.parts);
  appStore.getState().setView({ page: 'formboard' });
});

async function inspect(id: string) {
  appStore.getState().select([id]);
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
}

const type = async (
  card: Awaited<ReturnType<typeof inspect>>,
  label: string,
  text: string,
): Promise<void> => {
  await userEvent.fill(card.getByLabelText(label, { exact: true }), text);
  await userEvent.keyboard('{Enter}');
};

describe('a segment', () => {
  it('keeps a typed length beside the drawn one, and tells the difference', async () => {
    const card = await inspect(project().segments[0]!.id);
    await type(card, 'Typed length', '310');
    expect(project().segments[0]!.lengthMm).toBe(310);
    await expect.element(card.getByText(/^\+10 mm typed/)).toBeVisible();
  });

  it('locks its length, and lists what lies on it', async () => {
    const card = await inspect(project().segments[0]!.id);
    await userEvent.click(card.getByLabelText('Drawn length locked'));
    expect(project().segments[0]!.lengthLocked).toBe(true);
    await userEvent.click(card.getByRole('button', { name: 'clamp FX1' }));
    expect([...appStore.getState().view.selection]).toEqual([project().fixings[0]!.id]);
  });
});

describe('things on a run', () => {
  it('are moved by typing a station; beyond the end is refused in words', async () => {
    const card = await inspect(project().ties[0]!.id);
    await type(card, 'at', '75 mm');
    expect(project().ties[0]!.station.atMm).toBe(75);
    await type(card, 'at', '400 mm');
    await expect.element(card.getByText(/400 mm lies beyond its end/)).toBeVisible();
    expect(project().ties[0]!.station.atMm).toBe(75);
  });

  it('tell whether they go round the harness there', async () => {
    const card = await inspect(project().fixings[0]!.id);
    // Two wires of 22 AWG and a sleeve are far below the 9 mm of the clamp.
    await expect.element(card.getByText('fits', { exact: true })).toBeVisible();
  });

  it('say what a label says', async () => {
    const card = await inspect(project().labels[0]!.id);
    await type(card, 'Text', 'TRUNK');
    expect(project().labels[0]!.text).toBe('TRUNK');
  });

  it('cover from station to station in layers', async () => {
    const card = await inspect(project().coverings[0]!.id);
    await type(card, 'Layer', '2');
    expect(project().coverings[0]!.layer).toBe(2);
  });
});

it('a dimension shows what it measures, and changes its form', async () => {
  const [n1, n2, n3] = project().nodes;
  appStore.getState().dispatch({
    id: 'dimension.add',
    args: { form: 'chain', offsetMm: 20, datums: [n3!, n1!, n2!].map((n) => ({ at: 'node', node: n.id })) },
  });
  const card = await inspect(project().dimensions[0]!.id);
  await expect.element(card.getByText('N1–N2')).toBeVisible();
  await userEvent.selectOptions(card.getByLabelText('Form'), 'baseline');
  expect(project().dimensions[0]!.form).toBe('baseline');
  // From N3 over N1 to N2: 80 + 300.
  await expect.element(card.getByRole('button', { name: '380 mm' })).toBeVisible();
});

it('a wire shows what its length is made of', async () => {
  const card = await inspect(project().wires[0]!.id);
  await expect.element(card.getByText('route 300 mm + from 4 mm + to 4 mm')).toBeVisible();
});

it('the length table stands under the board: a row selects its wire and lights its way', async () => {
  appStore.getState().setView({ panelSizesPx: { ledger: 240 } });
  const screen = await openWindow();
  const row = screen.getByRole('row').filter({ hasText: /^W2/ });
  await userEvent.hover(row);
  expect(appStore.getState().view.hover?.id).toBe(project().wires[1]!.id);
  await userEvent.click(row);
  expect([...appStore.getState().view.selection]).toEqual([project().wires[1]!.id]);
});

it('has no flaw that axe finds', async () => {
  await inspect(project().segments[0]!.id);
  expect(await axeFindings()).toEqual([]);
});
