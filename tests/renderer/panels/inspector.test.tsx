import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { freshWindow, idOf, openWindow, project } from '../window';

const wire = (designator: string) => project().wires.find((w) => w.designator === designator)!;
const connector = (designator: string) => project().connectors.find((c) => c.designator === designator)!;
const steps = () => appStore.getState().history.undo.map((s) => s.label);

beforeEach(() => freshWindow());

async function inspect(...designators: string[]) {
  appStore.getState().select(designators.map(idOf));
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
}

describe('a wire', () => {
  it('takes a typed length in inches as one step that can be undone', async () => {
    const card = await inspect('W1');
    await userEvent.fill(card.getByLabelText('Typed length'), '12 in');
    await userEvent.keyboard('{Enter}');
    expect(wire('W1').lengthMm).toBe(304.8);
    expect(steps()).toEqual(['Edit wire']);
    appStore.getState().undo();
    expect(wire('W1').lengthMm).toBeUndefined();
  });

  it('shows the working of its cut length: 300 mm of segment and 4 mm into each housing', async () => {
    const card = await inspect('W1');
    await userEvent.click(card.getByRole('button', { name: '308 mm' }));
    const working = document.querySelector('.working')!;
    await expect.poll(() => working.textContent).toContain('Segment S1300 mm');
    expect(working.textContent).toContain('Into the housing at X1:14 mm');
    expect(working.textContent).toContain('Result308 mm');
  });

  it('is kept on its way, and let go again', async () => {
    const card = await inspect('W1');
    await userEvent.click(card.getByRole('button', { name: 'Keep it on this way' }));
    expect(wire('W1').path).toEqual([idOf('S1')]);
    await userEvent.click(card.getByRole('button', { name: /shortest way/ }));
    expect(wire('W1').path).toBeUndefined();
  });

  it('changes its colour', async () => {
    const card = await inspect('W1');
    await userEvent.click(card.getByRole('button', { name: /^Colour: RD/ }));
    await userEvent.click(document.querySelector<HTMLElement>('.colour-grid button[title=blue]')!);
    expect(wire('W1').colour).toEqual({ base: 'BU' });
  });

  it('offers contacts that fit before those that do not, and says why these do not', async () => {
    const card = await inspect('W1');
    await userEvent.click(card.getByRole('button', { name: /^Contact: C-SOCKET/ }).first());
    const list = document.querySelector('[role=dialog] [role=listbox]')!;
    await expect.poll(() => list.textContent).toContain('Fits housing and wire');
    const text = list.textContent;
    expect(text.indexOf('C-SOCKET')).toBeLessThan(text.indexOf('Does not fit'));
    expect(text.indexOf('C-PIN')).toBeGreaterThan(text.indexOf('Does not fit'));
    expect(text).toContain('contact kind: pin, takes socket');
  });
});

describe('a connector', () => {
  it('is renamed, and refuses to have no name', async () => {
    const card = await inspect('X1');
    const field = card.getByLabelText('Designator');
    await userEvent.fill(field, '');
    await userEvent.keyboard('{Enter}');
    await expect.element(card.getByRole('alert')).toHaveTextContent('cannot be empty');
    await userEvent.fill(field, 'X10');
    await userEvent.keyboard('{Enter}');
    expect(connector('X10')).toBeDefined();
  });

  it('switches the face that is drawn', async () => {
    const card = await inspect('X1');
    await userEvent.selectOptions(card.getByLabelText('Drawn as'), 'wire-entry face');
    expect(connector('X1').view).toBe('wire-entry-face');
  });

  it('declares an unwired cavity blocked', async () => {
    const card = await inspect('X1');
    await userEvent.selectOptions(card.getByLabelText('State of cavity 3'), 'blocked');
    expect(connector('X1').cavities.find((c) => c.cavity === '3')?.state).toBe('blocked');
  });

  it('says what keeps a half from mating, and plugs it when the user insists', async () => {
    freshWindow((t) => void (t.project.mates = []));
    const card = await inspect('X1');
    await userEvent.selectOptions(card.getByLabelText('Plug to'), idOf('X4'));
    await expect.element(card.getByRole('alert')).toHaveTextContent('They cannot mate');
    expect(project().mates).toEqual([]);
    await userEvent.click(card.getByRole('button', { name: /all the same/ }));
    expect(project().mates).toMatchObject([{ a: idOf('X1'), b: idOf('X4') }]);
  });
});

describe('several objects', () => {
  it('are changed together in one step', async () => {
    const card = await inspect('X1', 'X2');
    await userEvent.selectOptions(card.getByLabelText('Drawn as'), 'wire-entry face');
    expect([connector('X1').view, connector('X2').view]).toEqual(['wire-entry-face', 'wire-entry-face']);
    expect(steps()).toHaveLength(1);
  });
});

describe('a board', () => {
  it('takes its thickness and solder process', async () => {
    const card = await inspect('A1');
    await userEvent.fill(card.getByLabelText('Thickness'), '2.4');
    await userEvent.keyboard('{Enter}');
    await userEvent.selectOptions(card.getByLabelText('Soldered by'), 'reflow');
    const board = project().equipment.find((e) => e.designator === 'A1');
    expect(board).toMatchObject({ thicknessMm: 2.4, solderProcess: { process: 'reflow' } });
  });
});

describe('nothing', () => {
  it('shows the title block and adds a signal', async () => {
    const card = await inspect();
    await userEvent.fill(card.getByLabelText('Title', { exact: true }), 'Lamp harness');
    await userEvent.keyboard('{Enter}');
    expect(project().titleBlock.title).toBe('Lamp harness');
    await userEvent.fill(card.getByLabelText('New signal'), 'SENSE');
    await userEvent.keyboard('{Enter}');
    expect(project().signals.map((s) => s.name)).toEqual(['SUP', 'RTN', 'SENSE']);
  });
});
