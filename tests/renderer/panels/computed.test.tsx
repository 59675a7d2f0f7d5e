import { addCovering } from '@latchwork/core/rules/shared/example-route';
import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { axeFindings, freshWindow, idOf, openWindow, project } from '../window';

beforeEach(() => freshWindow());

async function inspect(...designators: string[]) {
  appStore.getState().select(designators.map(idOf));
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
}
const limit = (id: string) => project().limitSet.limits.find((l) => l.id === id);

describe('a wire', () => {
  it('opens a computed number to formula, figures and sources', async () => {
    freshWindow((t) => (t.part('wire', 'WIRE-22').resistanceOhmPerKm = 50));
    const card = await inspect('W1');
    await expect.element(card.getByText('at 20 °C, catalogue')).toBeVisible();
    await userEvent.click(card.getByRole('button', { name: '15.4 mΩ' }));
    const working = document.querySelector('.working')!;
    await expect.poll(() => working.textContent).toContain('Resistance: W1');
    expect(working.querySelector('math mfrac')).not.toBeNull();
    expect(working.textContent).toContain('50 Ω/km');
    expect(working.textContent).toContain('source seen');
  });

  it('says what is needed instead of a number', async () => {
    const card = await inspect('W1');
    await expect.element(card.getByText('needs mass per metre of WIRE-22')).toBeVisible();
  });

  it('holds its current against what it may carry', async () => {
    const card = await inspect('W1');
    await userEvent.click(card.getByRole('button', { name: '1 A' }));
    await expect.poll(() => document.querySelector('.working .limit-bar')).not.toBeNull();
  });
});

describe('a segment', () => {
  it('is drawn cut across; two wires of 1.2 mm are 2.4 mm, 3.4 mm in a sleeve of 0.5 mm', async () => {
    freshWindow((t) => addCovering(t, { wallMm: 0.5 }, { fromMm: 100, toMm: 300 }));
    const card = await inspect('S1');
    const picture = card.getByRole('img', { name: 'Cross-section of S1: 2 wires' });
    await expect.element(picture).toHaveTextContent('⌀ 2.4 mm');
    await userEvent.click(card.getByLabelText('100 to 300'));
    await expect.element(picture).toHaveTextContent('⌀ 3.4 mm');
    expect(picture.element().querySelectorAll('.section-ring')).toHaveLength(1);
    await userEvent.hover(picture.element().querySelector('.section-wire text, .section-wire circle')!, { force: true }); // prettier-ignore
    await expect.element(card.getByText(/^W1 · RD · 22 AWG · SUP$/).first()).toBeInTheDocument();
    expect(await axeFindings()).toEqual([]);
  });

  it('names what the diameter needs', async () => {
    freshWindow((t) => delete t.part('wire', 'WIRE-22').odMm);
    const card = await inspect('S1');
    await expect.element(card.getByText(/^Cannot verify the bundle diameter: needs .*WIRE-22/)).toBeVisible();
  });

  it('draws the wires of a twist inside the circle that it sweeps', async () => {
    freshWindow((t) => {
      const wires = t.project.wires.map((w) => w.id);
      t.project.groups.push({ id: t.newId(), designator: 'G1', form: 'twisted', wires });
    });
    const card = await inspect('S1');
    const picture = card.getByRole('img', { name: /^Cross-section/ });
    await expect.element(picture).toHaveTextContent('⌀ 2.4 mm');
    const [a, b] = picture.element().querySelectorAll('.section-insulation');
    const gap = Math.abs(Number(a!.getAttribute('cx')) - Number(b!.getAttribute('cx')));
    expect(gap).toBeCloseTo(1.2, 6);
    expect(picture.element().querySelectorAll('.section-hull[data-form=twist]')).toHaveLength(1);
  });
});

describe('a cavity', () => {
  it('holds the current of its contact against the ratings of the records', async () => {
    appStore.getState().select([`${idOf('X1')}:1`]);
    const screen = await openWindow();
    const card = screen.getByRole('region', { name: 'Inspector' });
    await userEvent.click(card.getByRole('button', { name: '1 A' }));
    await expect.poll(() => document.querySelector('.working .limit-bar')).not.toBeNull();
    await userEvent.keyboard('{Escape}');
    await userEvent.click(card.getByRole('button', { name: '5 A' }));
    await expect.poll(() => document.querySelector('.working')?.textContent).toContain('rating of H-');
  });
});

describe('a covering', () => {
  it('says how much of it is cut', async () => {
    freshWindow((t) => addCovering(t, { takeUp: 0.1 }));
    appStore.getState().select([project().coverings[0]!.id]);
    const screen = await openWindow();
    const card = screen.getByRole('region', { name: 'Inspector' });
    // 300 mm x 1.1.
    await expect.element(card.getByRole('button', { name: '330 mm' })).toBeVisible();
  });
});

describe('a limit', () => {
  const openLimits = async () => {
    const card = await inspect();
    await userEvent.click(card.getByText(/^Limits: General/));
    return card;
  };

  it('takes a value, and is then no longer verified', async () => {
    const card = await openLimits();
    await userEvent.fill(card.getByLabelText('bend radius factor'), '8');
    await userEvent.keyboard('{Enter}');
    expect(limit('bend-radius-factor')).toMatchObject({
      value: 8,
      source: 'typed in this project',
      verified: false,
    });
  });

  it('takes a source, which counts as verified only when one says so', async () => {
    const card = await openLimits();
    await userEvent.click(card.getByRole('button', { name: 'Edit the source of bend radius factor' }));
    await userEvent.fill(card.getByLabelText('Source of bend radius factor'), 'Works standard 12');
    await userEvent.keyboard('{Enter}');
    expect(limit('bend-radius-factor')).toMatchObject({ source: 'Works standard 12', verified: false });
    await userEvent.click(card.getByLabelText('I have seen this value in its source'));
    expect(limit('bend-radius-factor')?.verified).toBe(true);
  });

  it('that is missing can be set', async () => {
    freshWindow((t) => (t.project.limitSet.limits = []));
    const card = await openLimits();
    await userEvent.fill(card.getByLabelText('tie spacing max'), '250');
    await userEvent.keyboard('{Enter}');
    expect(limit('tie-spacing-max')).toMatchObject({ value: 250, unit: 'mm', verified: false });
  });

  it('by table is chosen among the published ones', async () => {
    const card = await openLimits();
    await userEvent.selectOptions(card.getByLabelText('Pull-out force by'), 'UL 486A-486B');
    expect(project().limitSet.tables).toContainEqual({ id: 'pull-force', table: 'ul-486a' });
    await userEvent.selectOptions(card.getByLabelText('Pull-out force by'), 'not chosen: cannot verify');
    expect(project().limitSet.tables?.some((t) => t.id === 'pull-force')).toBe(false);
  });
});
