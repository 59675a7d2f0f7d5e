import { calculationById, CALCULATIONS } from '@latchwork/core/calc/index';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { openOverlay } from '../../../renderer/app/overlays';
import { askCalculation } from '../../../renderer/panels/calculators/ask-calculation';
import { calculatorsStore, resetCalculators } from '../../../renderer/panels/calculators/calculators-store';
import { searchCalculations } from '../../../renderer/panels/calculators/search-calculations';
import { axeFindings, freshWindow, openWindow, project } from '../window';

beforeEach(() => {
  freshWindow();
  resetCalculators();
});

async function openCalculator(id: string) {
  calculatorsStore.setState({ chosen: id });
  const screen = await openWindow();
  openOverlay('calculators');
  const dialog = screen.getByRole('dialog', { name: 'Calculators' });
  await expect.element(dialog).toBeVisible();
  return { dialog, result: dialog.getByRole('region', { name: 'Result' }) };
}

describe('the calculators', () => {
  it('open by key, and close with Escape', async () => {
    const screen = await openWindow();
    await userEvent.keyboard('{Control>}{Shift>}k{/Shift}{/Control}');
    const dialog = screen.getByRole('dialog', { name: 'Calculators' });
    await expect.element(dialog).toBeVisible();
    await userEvent.keyboard('{Escape}');
    await expect.element(dialog).not.toBeInTheDocument();
  });

  it('find a calculation by the words of its inputs, and show it', async () => {
    const { dialog } = await openCalculator('conductor-area');
    await userEvent.fill(dialog.getByLabelText('Search calculations'), 'melting');
    await expect.poll(() => dialog.getByRole('option').elements().length).toBeLessThan(5);
    await userEvent.click(dialog.getByRole('option', { name: 'Inrush current' }));
    await expect.element(dialog.getByRole('heading', { name: 'Inrush current' })).toBeVisible();
  });

  it('say what is needed, and answer as soon as it is typed', async () => {
    const { dialog, result } = await openCalculator('contact-heating');
    await expect.element(result).toHaveTextContent('Needs Current; Rated current of the contact; Ambient temperature.'); // prettier-ignore
    await userEvent.fill(dialog.getByLabelText('Current', { exact: true }), '1500 mA');
    await userEvent.fill(dialog.getByLabelText('Rated current of the contact'), '3');
    await userEvent.fill(dialog.getByLabelText('Ambient temperature'), '104 degF');
    // 30 K x (1.5/3)^2 above 40 degrees, by hand.
    await expect.element(result).toHaveTextContent('Rise7.5 K');
    await expect.element(result).toHaveTextContent('Contact temperature47.5 °C');
    await expect.element(result).toHaveTextContent('not verified');
    expect(result.element().querySelector('math')).not.toBeNull();
  });

  it('say at the field what cannot be read', async () => {
    const { dialog, result } = await openCalculator('conductor-mass');
    await userEvent.fill(dialog.getByLabelText('Metal area'), '22 AWG');
    await expect.element(dialog.getByRole('alert')).toHaveTextContent('"22 AWG" is not a number in mm2');
    await userEvent.fill(dialog.getByLabelText('Metal area'), '-1');
    await expect.element(dialog.getByRole('alert')).toHaveTextContent('must be greater than 0');
    await expect.element(result).toHaveTextContent('One input cannot be used.');
  });

  it('draw the bundle that is typed', async () => {
    const { dialog, result } = await openCalculator('bundle-diameter');
    await userEvent.fill(dialog.getByLabelText('Outside diameter of each wire'), '7 x 1.5');
    await userEvent.fill(dialog.getByLabelText('Wall 1'), '0.5');
    // Seven equal circles in three diameters, x 1.08 as laid, + 2 walls, by hand: 4.86 + 1.
    await expect.element(result).toHaveTextContent('Outside diameter5.86 mm');
    await expect.element(result.getByRole('img', { name: 'Cross-section of 7 wires' })).toBeVisible();
    expect(result.element().querySelectorAll('.section-wire')).toHaveLength(7);
    expect(result.element().querySelectorAll('.section-ring')).toHaveLength(1);
  });

  it('take a network line by line', async () => {
    const { dialog, result } = await openCalculator('circuit');
    const cells: [string, string, string][] = [
      ['Sources', 'Name 1', 'G'], ['Sources', 'Positive node 1', 'a'], ['Sources', 'Negative node 1', '0'], ['Sources', 'Voltage 1', '12'],
      ['Wires, contacts, splices and fuses', 'Name 1', 'w'], ['Wires, contacts, splices and fuses', 'From node 1', 'a'],
      ['Wires, contacts, splices and fuses', 'To node 1', 'b'], ['Wires, contacts, splices and fuses', 'Resistance 1', '1'],
      ['Loads', 'Name 1', 'e'], ['Loads', 'From node 1', 'b'], ['Loads', 'To node 1', '0'], ['Loads', 'Current 1', '2'],
    ]; // prettier-ignore
    for (const [group, label, text] of cells)
      await userEvent.fill(dialog.getByRole('group', { name: group }).getByLabelText(label, { exact: true }), text); // prettier-ignore
    await userEvent.selectOptions(dialog.getByLabelText('Draws 1'), 'current');
    // 12 V - 1 ohm x 2 A, by hand.
    await expect.element(result).toHaveTextContent('Lowest voltage at a load10 V');
  });

  it('keep what was typed for the next time, until it is cleared', async () => {
    const { dialog } = await openCalculator('conductor-mass');
    await userEvent.fill(dialog.getByLabelText('Metal area'), '2');
    openOverlay(null);
    openOverlay('calculators');
    await expect.element(dialog.getByLabelText('Metal area')).toHaveValue('2');
    await userEvent.click(dialog.getByRole('button', { name: 'Clear' }));
    await expect.element(dialog.getByLabelText('Metal area')).toHaveValue('');
  });

  it('copy the result with its working as text', async () => {
    const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
    const { dialog } = await openCalculator('conductor-mass');
    await userEvent.fill(dialog.getByLabelText('Metal area'), '1');
    await userEvent.click(dialog.getByRole('button', { name: 'Copy as text' }));
    expect(write).toHaveBeenCalledOnce();
    expect(write.mock.calls[0]![0]).toMatch(/^Mass of a conductor\n {2}Mass per length +9.0678 kg\/km/);
    expect(write.mock.calls[0]![0]).toContain('Formula: m = area x density x lay factor x length');
    write.mockRestore();
  });

  it('leave the drawing behind them alone', async () => {
    await openCalculator('conductor-mass');
    const before = project();
    appStore.getState().select(before.wires.map((w) => w.id));
    document.querySelector<HTMLElement>('.calc-item')!.focus();
    await userEvent.keyboard('{Delete}r');
    expect(project()).toBe(before);
  });
});

it.each(['light', 'dark'] as const)('the calculators have no accessibility finding in the %s look', async (theme) => {
  document.documentElement.dataset.theme = theme;
  const { dialog } = await openCalculator('bundle-diameter');
  await userEvent.fill(dialog.getByLabelText('Outside diameter of each wire'), '7 x 1.5');
  await expect.element(dialog.getByRole('img')).toBeVisible();
  expect(await axeFindings()).toEqual([]);
}); // prettier-ignore

describe('the form', () => {
  it('of every calculation can be shown empty, and then asks for what it needs', async () => {
    const { dialog, result } = await openCalculator('conductor-area');
    for (const entry of CALCULATIONS) {
      const asked = askCalculation(entry, {});
      expect(asked).toMatchObject({ report: null, reason: null });
      expect(asked.needs.length).toBeGreaterThan(0);
      calculatorsStore.setState({ chosen: entry.id });
      await expect.element(dialog.getByRole('form', { name: entry.title })).toBeVisible();
      await expect.element(result).toHaveTextContent('Needs ');
    }
  });

  it('names a missing input by its label', () => {
    const asked = askCalculation(calculationById('conductor-resistance')!, {});
    expect(asked.needs).toEqual(['Resistance at 20 C from the wire record or Metal area of the conductor']);
  });
});

describe('the search', () => {
  it('shows all without words, and nothing for nonsense', () => {
    expect(searchCalculations('').flatMap((g) => g.entries)).toHaveLength(CALCULATIONS.length);
    expect(searchCalculations('zzz')).toEqual([]);
    expect(searchCalculations('bend radius')[0]?.entries.map((e) => e.id)).toEqual(['bend-radius']);
  });
});
