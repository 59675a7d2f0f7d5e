import { useEffect } from 'react';
import { Calculators } from '../panels/calculators/calculators';
import { FindingsPage } from '../panels/findings/findings-page';
import { LimitsPage } from '../panels/project/limits/limits-page';
import { PartsListPage } from '../panels/parts-list-page';
import { ShopPapersPage } from '../panels/shop-papers-page';
import '../ui/base.css';
import '../ui/controls.css';
import '../ui/overlay.css';
import { DialogHost } from '../ui/dialogs';
import { Toasts, say } from '../ui/toasts';
import './app.css';
import { ErrorBoundary } from './error-boundary';
import { Finder } from './finder';
import { KeyboardHelp } from './keyboard-help';
import { bindKeys } from './keys';
import { PAGE_NAMES } from './actions/view-actions';
import { Palette } from './palette';
import { DiagramPage } from '../panels/diagram-page';
import { FormboardPage } from '../panels/formboard-page';
import { appStore, useApp } from './store';
import { TopStrip } from './top-strip';
import type { Page } from './view';

const PAGE_PARTS: Readonly<Record<Page, () => React.JSX.Element>> = {
  diagram: DiagramPage,
  formboard: FormboardPage,
  findings: FindingsPage,
  'parts-list': PartsListPage,
  'shop-papers': ShopPapersPage,
};

/** The window. */
export function App() {
  const page = useApp((s) => s.view.page);
  const title = useApp((s) => s.history.project.titleBlock.title);
  useEffect(bindKeys, []);
  useEffect(sayRefusals, []);
  useEffect(() => {
    document.title = title ? `${title} – Latchwork` : 'Latchwork';
  }, [title]);
  const Shown = PAGE_PARTS[page];
  return (
    <div className="app">
      <TopStrip />
      <main className="page" aria-label={PAGE_NAMES[page]}>
        <ErrorBoundary key={page} what={PAGE_NAMES[page]}>
          <Shown />
        </ErrorBoundary>
      </main>
      <DialogHost />
      <Palette />
      <Finder />
      <KeyboardHelp />
      <Calculators />
      <LimitsPage />
      <Toasts />
    </div>
  );
}

/** A command that was refused says why. */
function sayRefusals(): () => void {
  return appStore.subscribe((state, before) => {
    if (!state.refusal || state.refusal === before.refusal) return;
    say('problem', state.refusal.reason);
    state.dismissRefusal();
  });
}
