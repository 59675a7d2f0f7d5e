import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { callHost } from '../host';
import { documentInput } from './document-input';
import { exportAs } from './export-as';

export const DRAWING_FORMATS = ['svg', 'dxf'] as const;
export type DrawingFormat = (typeof DRAWING_FORMATS)[number];

/** Writes a document as one picture at true size to a file of the user's choice. */
export function exportDrawing(
  document: Exporter,
  format: DrawingFormat,
  options?: DocumentOptions,
): Promise<void> {
  const input = documentInput(options);
  const drawing = document.drawing?.(input);
  if (!drawing) throw new Error(`${document.id} is not made as a drawing`);
  const title = `${document.title}: ${input.harness.project.titleBlock.title}`;
  return exportAs(document, `.${format}`, (target) =>
    callHost('drawing:export', { drawing, title, format, ...target }),
  );
}
