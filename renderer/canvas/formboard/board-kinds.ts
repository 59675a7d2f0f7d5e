import type { PartKind } from '@latchwork/core/model/parts/part';

/** Parts that are put on a run of the formboard. */
export const BOARD_KINDS: ReadonlySet<PartKind> = new Set(['covering', 'tie', 'label', 'clamp', 'grommet']);
