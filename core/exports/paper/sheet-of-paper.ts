import type { Paper } from './paper';
import { A4_LANDSCAPE, A4_UPRIGHT, type Sheet } from './sheet';

/** More columns than these are not legible on an upright A4. */
const UPRIGHT_COLUMNS = 8;

/** The sheet of the pages that hold blocks: the one that the paper names, else A4, landscape where a table is wide. */
export function sheetOfPaper({ sheet, blocks }: Pick<Paper, 'sheet' | 'blocks'>): Sheet {
  if (sheet) return sheet;
  const wide = blocks.some((b) => b.kind === 'table' && b.columns.length > UPRIGHT_COLUMNS);
  return wide ? A4_LANDSCAPE : A4_UPRIGHT;
}
