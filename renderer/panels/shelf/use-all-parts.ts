import { useMemo } from 'react';
import type { Part } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';

/** Every part that can be chosen: the catalogues', and those that only this project holds. */
export function useAllParts(): readonly Part[] {
  const catalogue = useApp((s) => s.catalogue);
  const own = useApp((s) => s.history.project.parts);
  return useMemo(() => {
    const known = new Set(catalogue.map((p) => p.id));
    const more = own.filter((p) => !known.has(p.id));
    return more.length ? [...more, ...catalogue] : catalogue;
  }, [catalogue, own]);
}
