import { createStore, useStore } from 'zustand';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { compareProjects, type Comparison } from '@latchwork/core/exports/compare/compare-projects';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { appStore } from './store';
import { today } from './today';

export interface Comparing {
  /** "the last saved state". */
  readonly with: string;
  readonly before: DocumentInput;
  readonly comparison: Comparison;
}

/** The state that the open project is compared with, and what differs; null while nothing is compared. */
export const compareStore = createStore<{ readonly comparing: Comparing | null }>()(() => ({
  comparing: null,
}));

export const useComparing = (): Comparing | null => useStore(compareStore, (s) => s.comparing);

/** Compares the open project with an earlier state, and keeps doing so as it is edited. */
export function startComparing(project: Project, called: string): void {
  const { catalogue } = appStore.getState();
  const check = checkHarness(deriveHarness(project), RULES, undefined, { catalogue });
  show(called, { harness: check.harness, check, date: today() });
}

export const stopComparing = (): void => compareStore.setState({ comparing: null });

function show(called: string, before: DocumentInput): void {
  const { check } = appStore.getState();
  const after = { harness: check.harness, check, date: today() };
  compareStore.setState({
    comparing: { with: called, before, comparison: compareProjects(before, after, EXPORTERS) },
  });
}

const REST_MS = 400;

/** Compares again when edits rest; another project ends the comparison. Returns how to stop. */
export function keepComparing(restMs = REST_MS): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = appStore.subscribe((now, was) => {
    const { comparing } = compareStore.getState();
    if (!comparing || now.check === was.check) return;
    clearTimeout(timer);
    if (now.history.project.id !== comparing.comparison.after.harness.project.id) return stopComparing();
    timer = setTimeout(() => {
      const current = compareStore.getState().comparing;
      if (current) show(current.with, current.before);
    }, restMs);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}
