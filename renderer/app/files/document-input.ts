import type { DocumentInput, DocumentOptions } from '@latchwork/core/exports/exporter';
import { appStore } from '../store';
import { today } from '../today';

/** What documents are made from: the project as it stands now, on this day. */
export function documentInput(options?: DocumentOptions): DocumentInput {
  const { check } = appStore.getState();
  return { harness: check.harness, check, date: today(), ...(options ? { options } : {}) };
}
