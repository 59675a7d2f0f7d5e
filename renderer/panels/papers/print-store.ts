import { createStore } from 'zustand';
import type { Sheet } from '@latchwork/core/exports/paper/sheet';

export interface PrintSheet {
  readonly url: string;
  /** Null: a size that no sheet has; it is printed on the printer's own. */
  readonly sheet: Sheet | null;
  /** Of the picture, which reaches beyond the sheet a little. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Pages that wait for the printer, as pictures. */
export const printStore = createStore<{ readonly sheets: readonly PrintSheet[] }>()(() => ({ sheets: [] }));

export function clearPrint(): void {
  for (const { url } of printStore.getState().sheets) URL.revokeObjectURL(url);
  printStore.setState({ sheets: [] });
}
