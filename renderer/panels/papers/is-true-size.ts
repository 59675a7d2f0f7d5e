import type { Paper } from '@latchwork/core/exports/paper/paper';

/** Whether there are drawings on the pages that one measures on: they must not be printed at another size. */
export const isTrueSize = ({ blocks }: Paper): boolean =>
  blocks.some((b) => b.kind === 'sheet' || (b.kind === 'drawing' && !b.form && (b.scale ?? 1) === 1));
