import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { documentInput } from './document-input';
import { DRAWING_FORMATS, exportDrawing } from './export-drawing';
import { exportPdf } from './export-pdf';
import { exportTable, TABLE_FORMATS } from './export-table';
import { exportXml } from './export-xml';

export type ExportFormat = 'pdf' | (typeof DRAWING_FORMATS)[number] | (typeof TABLE_FORMATS)[number] | 'xml';

/** The formats that a document can be written in, the most finished first. */
export const formatsOf = (document: Exporter): readonly ExportFormat[] => [
  ...(document.paper ? (['pdf'] as const) : []),
  ...(document.drawing ? DRAWING_FORMATS : []),
  ...TABLE_FORMATS,
  ...(document.xml ? (['xml'] as const) : []),
];

const NAMES: Readonly<Record<Exclude<ExportFormat, 'xml'>, string>> = {
  pdf: 'Pages (PDF)',
  svg: 'Drawing (SVG)',
  dxf: 'Drawing for CAD (DXF R12)',
  csv: 'Comma-separated values (CSV)',
  xlsx: 'Spreadsheet (XLSX)',
  json: 'JSON',
};

export const formatName = (document: Exporter, format: ExportFormat): string =>
  format === 'xml' ? `${document.xml?.standard ?? 'XML'} (XML)` : NAMES[format];

/** In short, for commands: "PDF". */
export const formatCode = (document: Exporter, format: ExportFormat): string =>
  format === 'xml' ? (document.xml?.standard ?? 'XML') : format.toUpperCase();

/** Writes a document of the project as it stands now to a file of the user's choice. */
export function exportDocument(
  document: Exporter,
  format: ExportFormat,
  options?: DocumentOptions,
): Promise<void> | void {
  if (format === 'pdf') return exportPdf(document, options);
  if (format === 'xml') return exportXml(document, options);
  if (format === 'svg' || format === 'dxf') return exportDrawing(document, format, options);
  return exportTable(document.table(documentInput(options)), format);
}
