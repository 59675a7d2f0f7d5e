import { openRuleBook } from '../../panels/rules/rule-book';
import { copyDiagnostics } from '../diagnostics';
import { openOverlay } from '../overlays';
import { PANELS, togglePanel } from '../panel-sizes';
import { type AppState, appStore } from '../store';
import { PAGES, type Page } from '../view';
import type { Action } from './action';

export const PAGE_NAMES: Readonly<Record<Page, string>> = {
  diagram: 'Diagram',
  formboard: 'Formboard',
  findings: 'Findings',
  'parts-list': 'Parts list',
  'shop-papers': 'Shop papers',
};

const ZOOMS = [
  ['all', 'Fit the whole sheet into the window', 'Digit0'],
  ['selection', 'Fit the selection into the window', 'Digit9'],
  ['in', 'Zoom in', 'Equal'],
  ['out', 'Zoom out', 'Minus'],
] as const;

const onSheet = (s: AppState): boolean => s.view.page === 'diagram' || s.view.page === 'formboard';

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
  {
    id: 'view.calculators',
    label: 'Calculators …',
    group: 'View',
    keys: '$mod+Shift+KeyK',
    whileTyping: true,
    run: () => openOverlay('calculators'),
  },
  {
    id: 'view.limits',
    label: 'Limit sets …',
    group: 'View',
    keys: '$mod+Shift+KeyL',
    whileTyping: true,
    run: () => openOverlay('limits'),
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
  ...ZOOMS.map(([to, label, keys]) => ({
    id: `view.zoom-${to}`,
    label,
    group: 'View' as const,
    keys,
    enabled: onSheet,
    run: () => {
      const { view, setView } = appStore.getState();
      setView({ zoom: { to, count: (view.zoom?.count ?? 0) + 1 } });
    },
  })),
  {
    id: 'view.findings-shown',
    label: 'Show or hide findings on the sheet',
    group: 'View',
    run: () => {
      const { view, setView } = appStore.getState();
      setView({ findingsShown: !view.findingsShown });
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
  { id: 'help.rules', label: 'Rule book …', group: 'Help', run: () => void openRuleBook() },
  {
    id: 'help.diagnostics',
    label: 'Copy diagnostics',
    group: 'Help',
    run: () => void copyDiagnostics(),
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
