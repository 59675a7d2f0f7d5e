import { isAccepted } from '@latchwork/core/decisions/standing';
import type { Finding } from '@latchwork/core/rules/finding';
import { Calculator, LayoutList, Redo2, Search, Undo2 } from 'lucide-react';
import { Button } from '../ui/button';
import { MARK_WORDS, type MarkKind, SeverityMark } from '../ui/severity-mark';
import { ActionMenu } from './action-item';
import { keysText } from './actions/action';
import { PAGE_NAMES } from './actions/view-actions';
import { FileMenu } from './file-menu';
import { FileState } from './file-state';
import { useStandings } from '../panels/findings/use-standings';
import { openOverlay } from './overlays';
import { useApp } from './store';
import './top-strip.css';
import { PAGES } from './view';

/** What is done with the selection on the formboard. */
function LayoutMenu() {
  const page = useApp((s) => s.view.page);
  return page === 'formboard' ? <ActionMenu label="Layout" groups={['Formboard']} /> : null;
}

/** The one strip on top: what is open, the five pages, the steps, the search, the state of the file. */
export function TopStrip() {
  return (
    <header className="strip">
      <div className="strip-menus">
        <FileMenu />
        <ActionMenu label="Edit" groups={['Edit', 'Arrange']} />
        <LayoutMenu />
        <ActionMenu label="View" groups={['View', 'Help']} />
      </div>
      <ProjectName />
      <PageTabs />
      <Steps />
      <Button look="outline" className="strip-search" onClick={() => openOverlay('finder')}>
        <Search size={14} aria-hidden />
        <span>Find</span>
        <kbd>{keysText('$mod+KeyF')}</kbd>
      </Button>
      <Button
        look="icon"
        aria-label={`All actions (${keysText('$mod+KeyK')})`}
        onClick={() => openOverlay('palette')}
      >
        <LayoutList size={15} aria-hidden />
      </Button>
      <Button
        look="icon"
        aria-label={`Calculators (${keysText('$mod+Shift+KeyK')})`}
        onClick={() => openOverlay('calculators')}
      >
        <Calculator size={15} aria-hidden />
      </Button>
      <FileState />
    </header>
  );
}

function ProjectName() {
  const title = useApp((s) => s.history.project.titleBlock.title);
  const revision = useApp((s) => s.history.project.revisions.at(-1));
  return (
    <h1 className="strip-title" title={title}>
      <span>{title || 'Untitled harness'}</span>
      {revision ? (
        <span className="strip-revision mono" title={`Revision ${revision.revision}, ${revision.status}`}>
          {revision.revision}
        </span>
      ) : null}
    </h1>
  );
}

function PageTabs() {
  const page = useApp((s) => s.view.page);
  const setView = useApp((s) => s.setView);
  return (
    <nav className="strip-pages" aria-label="Pages">
      {PAGES.map((p) => (
        <button
          key={p}
          type="button"
          className="strip-page"
          aria-current={p === page ? 'page' : undefined}
          onClick={() => setView({ page: p })}
        >
          {PAGE_NAMES[p]}
          {p === 'findings' ? <FindingsCount /> : null}
        </button>
      ))}
    </nav>
  );
}

const ORDER: readonly MarkKind[] = ['critical', 'major', 'minor', 'note', 'unknown'];

/** How many faults wait, with the shape of the gravest, and how many points are still open. */
function FindingsCount() {
  const findings = useApp((s) => s.check.findings);
  const standings = useStandings();
  // What a decision on record covers does not wait.
  const all = findings.filter((f) => !isAccepted(standings.get(f.key)));
  const open = all.filter((f) => f.open).length;
  return (
    <>
      <FaultCount findings={all.filter((f) => !f.open)} />
      {open > 0 ? (
        <span
          className="strip-open"
          title={`${open} open points: nothing wrong yet, something still to be said`}
        >
          {open} open
        </span>
      ) : null}
    </>
  );
}

function FaultCount({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const kinds = new Set(findings.map((f) => (f.result === 'fail' ? f.severity : 'unknown')));
  const worst = ORDER.find((k) => kinds.has(k)) ?? 'note';
  return (
    <span className="strip-count" title={`${findings.length} findings, gravest: ${MARK_WORDS[worst]}`}>
      <SeverityMark kind={worst} size={12} label={MARK_WORDS[worst]} />
      {findings.length}
    </span>
  );
}

function Steps() {
  const undoLabel = useApp((s) => s.history.undo.at(-1)?.label.toLowerCase());
  const redoLabel = useApp((s) => s.history.redo.at(-1)?.label.toLowerCase());
  const undo = useApp((s) => s.undo);
  const redo = useApp((s) => s.redo);
  return (
    <div className="strip-steps" role="group" aria-label="Steps">
      <Button
        look="icon"
        aria-label={undoLabel ? `Undo: ${undoLabel}` : 'Nothing to undo'}
        disabled={!undoLabel}
        onClick={undo}
      >
        <Undo2 size={15} aria-hidden />
      </Button>
      <Button
        look="icon"
        aria-label={redoLabel ? `Redo: ${redoLabel}` : 'Nothing to redo'}
        disabled={!redoLabel}
        onClick={redo}
      >
        <Redo2 size={15} aria-hidden />
      </Button>
    </div>
  );
}
