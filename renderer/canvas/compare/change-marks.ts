import type { Box } from '@latchwork/core/base/point';
import type { Comparison } from '@latchwork/core/exports/compare/compare-projects';
import type { Area } from '@latchwork/core/exports/compare/change-row';
import type { ObjectRef } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { keyOfRef } from '../../app/store';

/** A change as it is marked on a sheet. */
export interface ChangeMark {
  readonly what: 'added' | 'removed' | 'changed';
  /** "+ W12". */
  readonly text: string;
  readonly box: Box;
}

type BoxOf = (keys: readonly string[]) => Box | null;

/** Areas whose changes have a place on a sheet of their own; others follow from them or from records. */
const MARKED: ReadonlySet<Area> = new Set([
  'Connectors', 'Wires', 'Mates', 'Fuses', 'Equipment', 'Topology', 'Labels',
]); // prettier-ignore

const SIGNS = { added: '+', removed: '−', changed: '~' } as const;

/** Each changed object once: added and changed where they are, removed where they were. `wanted` picks the kinds of a sheet. */
export function changeMarks(
  { rows, before, after }: Comparison,
  boxNow: BoxOf,
  boxThen: BoxOf,
  wanted: (ref: ObjectRef) => boolean,
): readonly ChangeMark[] {
  const marks = new Map<string, ChangeMark>();
  for (const row of rows) {
    if (!MARKED.has(row.area)) continue;
    const gone = row.gone.length > 0;
    const { project } = gone ? before.harness : after.harness;
    for (const ref of (gone ? row.gone : row.objects).filter(wanted)) {
      const key = keyOfRef(ref);
      const box = (gone ? boxThen : boxNow)([key]);
      if (!box || marks.has(key)) continue;
      const what = gone ? 'removed' : row.what === 'added' && row.field === '' ? 'added' : 'changed';
      marks.set(key, { what, box, text: `${SIGNS[what]} ${refText(project, ref)}` });
    }
  }
  return [...marks.values()];
}
