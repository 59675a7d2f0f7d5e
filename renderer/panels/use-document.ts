import { useDeferredValue, useMemo } from 'react';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { Table } from '@latchwork/core/exports/table';
import { useApp } from '../app/store';
import { useToday } from '../app/today';

/** A document of the project as it is now, by its id. A long one follows an edit a moment later, off its path. */
export function useDocument(id: string): Table {
  const harness = useDeferredValue(useApp((s) => s.harness));
  const check = useDeferredValue(useApp((s) => s.check));
  const day = useToday();
  return useMemo(() => {
    const exporter = EXPORTERS.find((e) => e.id === id);
    if (!exporter) throw new Error(`There is no document ${id}`);
    return exporter.table({ harness, check, date: day });
  }, [id, harness, check, day]);
}
