import { useDeferredValue, useMemo } from 'react';
import type { DocumentOptions } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { Table } from '@latchwork/core/exports/table';
import { useApp } from '../app/store';
import { useToday } from '../app/today';

/** A document of the project as it is now, by its id. A long one follows an edit a moment later, off its path.
 * Options must keep their identity while they stay the same. */
export function useDocument(id: string, options?: DocumentOptions): Table {
  const harness = useDeferredValue(useApp((s) => s.harness));
  const check = useDeferredValue(useApp((s) => s.check));
  const day = useToday();
  return useMemo(() => {
    const exporter = EXPORTERS.find((e) => e.id === id);
    if (!exporter) throw new Error(`There is no document ${id}`);
    return exporter.table({ harness, check, date: day, ...(options ? { options } : {}) });
  }, [id, harness, check, day, options]);
}
