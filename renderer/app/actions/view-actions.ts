import { openOverlay } from '../overlays';
import { PANELS, togglePanel } from '../panel-sizes';
import { appStore } from '../store';
import { PAGES, type Page } from '../view';
import type { Action } from './action';

export const PAGE_NAMES: Readonly<Record<Page, string>> = {
  diagram: 'Diagram',
  formboard: 'Formboard',
  findings: 'Findings',
  'parts-list': 'Parts list',
  'shop-papers': 'Shop papers',
};

export const VIEW_ACTIONS: readonly Action[] = [
  ...PAGES.map((page, i) => ({
    id: `go.${page}`,
    label: PAGE_NAMES[page],
    group: 'Go to' as const,
    keys: `Alt+Digit${i + 1}`,
    whileTyping: true,
    run: () => appStore.getState().setView({ page }),
  })),
  {
    id: 'go.project',
    label: 'Title block, signals and limits',
    group: 'Go to',
    run: () => {
      appStore.getState().select([]);
      appStore.getState().setView({ page: 'diagram' });
    },
  },
  {
    id: 'go.find',
    label: 'Find an object …',
    group: 'Go to',
    keys: '$mod+KeyF',
    whileTyping: true,
    run: () => openOverlay('finder'),
  },
  ...PANELS.map((panel) => ({
    id: `view.${panel.id}`,
    label: `Show or put away the ${panel.title.toLowerCase()}`,
    group: 'View' as const,
    keys: panel.keys,
    run: () => togglePanel(panel.id),
  })),
  ...(['light', 'dark', 'system'] as const).map((theme) => ({
    id: `view.theme-${theme}`,
    label:
      theme === 'system'
        ? 'Light or dark as the system has it'
        : `${theme === 'light' ? 'Light' : 'Dark'} look`,
    group: 'View' as const,
    run: () => appStore.getState().setView({ theme }),
  })),
  {
    id: 'view.length-unit',
    label: 'Switch between millimetres and inches',
    group: 'View',
    keys: '$mod+Shift+KeyU',
    run: () => {
      const { view, setView } = appStore.getState();
      setView({ lengthUnit: view.lengthUnit === 'mm' ? 'in' : 'mm' });
    },
  },
  {
    id: 'view.snap',
    label: 'Snap to the grid',
    group: 'View',
    run: () => {
      const { view, setView } = appStore.getState();
      setView({ snap: !view.snap });
    },
  },
  {
    id: 'help.palette',
    label: 'All actions …',
    group: 'Help',
    keys: '$mod+KeyK',
    whileTyping: true,
    run: () => openOverlay('palette'),
  },
  {
    id: 'help.keys',
    label: 'Keyboard …',
    group: 'Help',
    keys: 'F1',
    whileTyping: true,
    run: () => openOverlay('keys'),
  },
];
