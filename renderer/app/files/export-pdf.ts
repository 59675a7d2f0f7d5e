import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { callHost } from '../host';
import { documentInput } from './document-input';
import { exportAs } from './export-as';

/** Writes a document as pages to a file of the user's choice: what the window shows now, drawn by the host. */
export function exportPdf(document: Exporter, options?: DocumentOptions): Promise<void> {
  const paper = document.paper?.(documentInput(options));
  if (!paper) throw new Error(`${document.id} is not made as pages`);
  return exportAs(document, '.pdf', (target) => callHost('paper:export', { paper, ...target }));
}
