import { useDeferredValue, useMemo } from 'react';
import type { DocumentInput, DocumentOptions } from '@latchwork/core/exports/exporter';
import { useApp } from '../app/store';
import { useToday } from '../app/today';

/** What documents are made from, a moment behind an edit and off its path. Options must keep their identity while they stay
 * the same. */
export function useDocumentInput(options?: DocumentOptions): DocumentInput {
  const check = useDeferredValue(useApp((s) => s.check));
  const date = useToday();
  return useMemo(
    () => ({ harness: check.harness, check, date, ...(options ? { options } : {}) }),
    [check, date, options],
  );
}
