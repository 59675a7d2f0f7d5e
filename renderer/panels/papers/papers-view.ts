import { createStore, useStore } from 'zustand';
import type { DocumentOptions } from '@latchwork/core/exports/exporter';

/** Fitted to the width of the place, or whole pages in it, or times true size. */
export type PaperZoom = 'width' | 'page' | number;

/** What the user looks at on the Shop papers page, while the window is open. */
export interface PapersView {
  readonly chosen: string;
  /** For printing and exporting several at once. */
  readonly picked: ReadonlySet<string>;
  readonly mode: 'pages' | 'rows';
  readonly zoom: PaperZoom;
  /** What was asked of each document. */
  readonly options: Readonly<Record<string, DocumentOptions>>;
}

export const emptyPapersView: PapersView = {
  chosen: 'connection-table',
  picked: new Set(),
  mode: 'pages',
  zoom: 'width',
  options: {},
};

export const papersView = createStore<PapersView>()(() => emptyPapersView);

export const usePapersView = <T>(pick: (view: PapersView) => T): T => useStore(papersView, pick);

export function pickDocuments(ids: readonly string[], on: boolean): void {
  papersView.setState(({ picked }) => {
    const next = new Set(picked);
    for (const id of ids)
      if (on) next.add(id);
      else next.delete(id);
    return { picked: next };
  });
}

/** Changes what is asked of a document; undefined takes it back. */
export function askOf<K extends keyof DocumentOptions>(
  id: string,
  key: K,
  value: DocumentOptions[K] | undefined,
): void {
  papersView.setState(({ options }) => {
    const { [key]: _, ...rest } = options[id] ?? {};
    return { options: { ...options, [id]: value === undefined ? rest : { ...rest, [key]: value } } };
  });
}
