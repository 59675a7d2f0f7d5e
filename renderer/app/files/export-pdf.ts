import type { Exporter } from '@latchwork/core/exports/exporter';
import { callHost } from '../host';
import { appStore } from '../store';
import { today } from '../today';
import { exportAs } from './export-as';

/** Writes a document as pages to a file of the user's choice: what the window shows now, drawn by the host. */
export function exportPdf(document: Exporter): Promise<void> {
  const { check } = appStore.getState();
  const paper = document.paper?.({ harness: check.harness, check, date: today() });
  if (!paper) throw new Error(`${document.id} is not made as pages`);
  return exportAs(document, '.pdf', (target) => callHost('paper:export', { paper, ...target }));
}
