import { useEffect } from 'react';
import type { DocumentInput, DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { createStore, useStore } from 'zustand';
import { drawPaper, optionsKey } from './draw-paper';
import { openPdf } from './pdf-file';
import { whenIdle } from './when-idle';

export interface PaperState {
  /** Undefined until they are counted. */
  readonly rows?: number;
  readonly pages?: number;
  /** The project is too large to count everything ahead. */
  readonly waits?: true;
}

export type Survey = Readonly<Record<string, PaperState>>;

/** How much there is in each document, as far as it is counted. */
export const surveyStore = createStore<{ readonly survey: Survey }>()(() => ({ survey: {} }));

/** What was counted last. */
let countedOf: DocumentInput | null = null;

/** Pages of an earlier state are not told any longer; rows stand until they are counted anew, a moment later. */
function beginCount(input: DocumentInput): void {
  if (countedOf === input) return;
  countedOf = input;
  surveyStore.setState(({ survey }) => ({
    survey: Object.fromEntries(Object.entries(survey).map(([id, { pages: _, ...state }]) => [id, state])),
  }));
}

/** What was counted of an earlier state says nothing about this one. */
const forget = (exporters: readonly Exporter[]): void =>
  exporters.forEach(({ id }) =>
    surveyStore.setState(({ survey }) => ({ survey: { ...survey, [id]: { waits: true } } })),
  );

export function tellState(id: string, state: PaperState): void {
  surveyStore.setState(({ survey }) => ({ survey: { ...survey, [id]: { ...survey[id], ...state } } }));
}

/** The window stands still while a table is made: where one takes so long, the others are counted when they are shown. */
const STILL_MS = 400;
/** Pages are drawn ahead, so that a document shows at once; a project that takes so long for one is left to be asked. */
const AHEAD_MS = 5000;
/** Before they are drawn ahead the window is left alone for so long. */
const REST_MS = 800;

/** Counts what is in each document one by one in idle moments, anew when the project or a wish changes. */
export function useSurvey(input: DocumentInput, options: Readonly<Record<string, DocumentOptions>>): Survey {
  const key = Object.entries(options).map(([id, o]) => `${id} ${optionsKey(o)}`).join('\n'); // prettier-ignore
  useEffect(() => {
    const stop = new AbortController();
    count(input, options, stop.signal).catch((error: unknown) => {
      if (!stop.signal.aborted) throw error;
    });
    return () => stop.abort();
    // The key says all of the options.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [input, key]);
  // What was counted before stays on the screen until it is counted anew.
  return useStore(surveyStore, (s) => s.survey);
}

async function count(
  input: DocumentInput,
  options: Readonly<Record<string, DocumentOptions>>,
  signal: AbortSignal,
): Promise<void> {
  const inputOf = (id: string): DocumentInput => ({ ...input, options: options[id] ?? {} });
  beginCount(input);
  for (const [i, exporter] of EXPORTERS.entries()) {
    await whenIdle(signal);
    const start = performance.now();
    tellState(exporter.id, { rows: exporter.table(inputOf(exporter.id)).rows.length });
    // The first one also waits for code to be read.
    if (i > 0 && performance.now() - start > STILL_MS) return forget(EXPORTERS.slice(i + 1));
  }
  await new Promise((resolve) => setTimeout(resolve, REST_MS));
  for (const exporter of EXPORTERS.filter((e) => e.paper)) {
    await whenIdle(signal);
    const start = performance.now();
    const answer = await drawPaper(exporter, inputOf(exporter.id), signal);
    if (answer.status === 'failed') return;
    const tookMs = performance.now() - start;
    const pdf = await openPdf(answer.drawn.bytes);
    const pages = pdf.pages.length;
    pdf.close();
    signal.throwIfAborted();
    tellState(exporter.id, { pages });
    if (tookMs > AHEAD_MS) return;
  }
}
