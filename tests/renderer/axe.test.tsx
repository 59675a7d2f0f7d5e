import { beforeEach, describe, expect, it } from 'vitest';
import { openOverlay } from '../../renderer/app/overlays';
import { appStore } from '../../renderer/app/store';
import { PAGES } from '../../renderer/app/view';
import { axeFindings, freshWindow, idOf, openWindow } from './window';

// axe-core checks names, roles and contrast of what is on the screen (WCAG 2.2 A and AA).
describe.each(['light', 'dark'] as const)('in the %s look', (theme) => {
  beforeEach(() => {
    freshWindow((t) => {
      t.wire('W1').part = t.part('wire', 'WIRE-26').id;
      delete t.connector('X2').node;
    });
    document.documentElement.dataset.theme = theme;
  });

  it.each(PAGES)('the page %s has no accessibility finding', async (page) => {
    appStore.getState().setView({ page, panelSizesPx: { ledger: 200 } });
    await openWindow();
    await document.fonts.ready;
    expect(await axeFindings()).toEqual([]);
  });

  it.each(['X1', 'W1', 'A1', 'N1', 'S1'])('the inspector with %s has none', async (designator) => {
    appStore.getState().select([idOf(designator)]);
    await openWindow();
    expect(await axeFindings()).toEqual([]);
  });

  it.each(['palette', 'finder', 'keys'] as const)('the overlay %s has none', async (overlay) => {
    await openWindow();
    openOverlay(overlay);
    await expect.poll(() => document.querySelector('[role=dialog]')).not.toBeNull();
    expect(await axeFindings()).toEqual([]);
  });
});
