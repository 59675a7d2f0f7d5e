import { beforeEach, describe, expect, it } from 'vitest';
import { addTwin } from '@latchwork/core/rules/shared/example-twin';
import { appStore } from '../../../renderer/app/store';
import { placeHalves, wayBetween } from '../../../renderer/panels/findings/wrong-plug-layout';
import { freshWindow, openWindow } from '../window';

beforeEach(() => {
  freshWindow((t) => {
    addTwin(t);
    t.connector('X5').description = 'To the level sensor';
  });
  const finding = appStore.getState().check.findings.find((f) => f.rule === 'wrong-plug');
  appStore.getState().setView({ page: 'findings', finding: finding?.key ?? null });
});

describe('the picture of a wrong plug', () => {
  it('draws both ways of plugging, with the same halves in the same places', async () => {
    const screen = await openWindow();
    const designed = screen.getByRole('img', { name: 'As designed: X1 in X3, X5 in X6' });
    const confused = screen.getByRole('img', { name: 'Confused: X5 in X3, X1 in X6' });
    await expect.element(designed).toBeVisible();
    await expect.element(confused).toBeVisible();
    const places = (svg: Element): (string | null)[] =>
      [...svg.querySelectorAll('.plugged-half')].map((g) => g.getAttribute('transform'));
    expect(places(confused.element())).toEqual(places(designed.element()));
    await expect.element(confused).toHaveTextContent('To the level sens…');
  });

  it('lists what meets what, and what comes of it', async () => {
    const screen = await openWindow();
    const table = screen.getByRole('region', { name: 'Both ways of plugging' }).getByRole('table');
    await expect.element(table).toHaveTextContent('SUP 12 V (fed) meets DATA 5 V');
    await expect.element(table).toHaveTextContent('a supply comes onto a signal');
  });
});

describe('its layout', () => {
  it('gives a half that belongs to nothing a row of its own', () => {
    const halves = placeHalves([{ free: 'X1', into: 'X3' }], [{ free: 'X1', into: 'X6' }]);
    expect(halves.map((h) => [h.name, h.column])).toEqual([
      ['X1', 0],
      ['X3', 1],
      ['X6', 1],
    ]);
    expect(new Set(halves.map((h) => `${h.x} ${h.y}`)).size).toBe(3);
  });

  it('bows between two ends of the harness, away from their boxes', () => {
    const right = [
      { free: 'X1', into: 'X3' },
      { free: 'X7', into: 'X8' },
    ];
    const halves = placeHalves(right, [{ free: 'X7', into: 'X1' }]);
    const [x1, , x7] = halves;
    const way = wayBetween(x1!, x7!, { width: 104, height: 36 });
    expect(way.path).toContain('C');
    expect(way.x).toBeGreaterThan(104);
  });
});
