import { Printer } from 'lucide-react';
import { useMemo } from 'react';
import type { DocumentInput, DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { cautionsOf, SHOP_CAUTIONS } from '@latchwork/core/exports/cautions';
import { PAGE_NAMES } from '../../app/actions/view-actions';
import { appStore } from '../../app/store';
import { Button } from '../../ui/button';
import { EmptyPlace } from '../../ui/empty-place';
import { ExportMenu } from '../export-menu';
import { emptyWords } from './empty-words';
import { PaperAsks } from './paper-asks';
import { PaperBand } from './paper-band';
import { PaperPages } from './paper-pages';
import { PaperRows } from './paper-rows';
import { papersView, usePapersView, type PapersView } from './papers-view';
import { printDocuments } from './print-dialog';
import type { PaperState } from './use-survey';

const NO_OPTIONS: DocumentOptions = {};

export interface PaperViewProps {
  readonly exporter: Exporter;
  readonly input: DocumentInput;
  readonly state: PaperState | undefined;
}

/** The document that is shown: what is asked of it, its pages or its rows, and what one must know before using it. */
export function PaperView({ exporter, input: bare, state }: PaperViewProps) {
  const options = usePapersView((v) => v.options[exporter.id]) ?? NO_OPTIONS;
  const wanted = usePapersView((v) => v.mode);
  const input = useMemo(() => ({ ...bare, options }), [bare, options]);
  const mode = exporter.paper ? wanted : 'rows';
  const isEmpty = state?.rows === 0 && exporter.id !== 'findings-report';
  const { project } = bare.harness;
  return (
    <section className="paper" aria-label={exporter.title}>
      <header className="paper-top">
        <div>
          <h2>{exporter.title}</h2>
          <p className="second">{exporter.summary}</p>
        </div>
        <div className="paper-tools">
          <ModeSwitch mode={mode} hasPages={exporter.paper !== undefined} />
          <Button disabled={!exporter.paper} onClick={() => void printDocuments([{ exporter, input }])}>
            <Printer size={14} aria-hidden />
            Print
          </Button>
          <ExportMenu document={exporter} options={options} />
        </div>
      </header>
      <PaperBand />
      <PaperAsks document={exporter} options={options} />
      {mode === 'rows' ? (
        <PaperRows exporter={exporter} input={input} />
      ) : isEmpty ? (
        <Nothing exporter={exporter} />
      ) : (
        <PaperPages exporter={exporter} input={input} />
      )}
      <div className="paper-cautions" role="note" aria-label="Cautions" tabIndex={0}>
        {[...cautionsOf(project), ...SHOP_CAUTIONS].map((text) => (
          <p key={text}>{text}</p>
        ))}
      </div>
    </section>
  );
}

const MODES: readonly (readonly [PapersView['mode'], string])[] = [
  ['pages', 'Pages'],
  ['rows', 'Rows'],
];

function ModeSwitch({ mode, hasPages }: { mode: PapersView['mode']; hasPages: boolean }) {
  return (
    <div className="paper-modes" role="group" aria-label="Show as">
      {MODES.map(([id, text]) => (
        <Button
          key={id}
          aria-pressed={id === mode}
          disabled={id === 'pages' && !hasPages}
          title={id === 'pages' && !hasPages ? 'This document is not made as pages.' : undefined}
          onClick={() => papersView.setState({ mode: id })}
        >
          {text}
        </Button>
      ))}
    </div>
  );
}

function Nothing({ exporter }: { exporter: Exporter }) {
  const { text, page } = emptyWords(exporter.id);
  return (
    <EmptyPlace
      title={`${exporter.title}: nothing to say yet`}
      action={
        <Button look="primary" onClick={() => appStore.getState().setView({ page })}>
          Go to {PAGE_NAMES[page]}
        </Button>
      }
    >
      <p>{text}</p>
    </EmptyPlace>
  );
}
