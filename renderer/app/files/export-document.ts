import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { SheetSize } from '@latchwork/core/exports/paper/sheet';
import { documentInput } from './document-input';
import { type DRAWING_FORMATS, exportDrawing } from './export-drawing';
import { exportPdf } from './export-pdf';
import { exportTable, type TABLE_FORMATS } from './export-table';
import { exportXml } from './export-xml';

export type ExportFormat = 'pdf' | (typeof DRAWING_FORMATS)[number] | (typeof TABLE_FORMATS)[number] | 'xml';

/** One way to have a document as a file. */
export interface ExportChoice {
  readonly id: string;
  readonly format: ExportFormat;
  /** Added to what is asked of the document. */
  readonly options?: DocumentOptions;
  /** In a menu of the document: "Drawing (SVG)". */
  readonly name: string;
  /** In short, for commands: "SVG". */
  readonly code: string;
}

const choice = (format: ExportFormat, name: string, code = format.toUpperCase()): ExportChoice => ({
  id: format,
  format,
  name,
  code,
});

/** The ways to have a document as a file, the most finished first; one for each size of sheets that it can be cut into,
 * unless one is asked for. */
export const exportChoices = (document: Exporter, asked?: DocumentOptions): readonly ExportChoice[] => [
  ...(document.paper ? pageChoices(document, asked) : []),
  ...(document.drawing ? [choice('svg', 'Drawing (SVG)'), choice('dxf', 'Drawing for CAD (DXF R12)')] : []),
  choice('csv', 'Comma-separated values (CSV)'),
  choice('xlsx', 'Spreadsheet (XLSX)'),
  choice('json', 'JSON'),
  ...(document.xml ? [choice('xml', `${document.xml.standard} (XML)`, document.xml.standard)] : []),
];

const pageChoices = (document: Exporter, asked?: DocumentOptions): readonly ExportChoice[] =>
  document.asks?.includes('sheetSize')
    ? SheetSize.options
        .filter((s) => s === (asked?.sheetSize ?? s))
        .map((sheetSize) => ({
          id: `pdf-${sheetSize}`,
          format: 'pdf',
          options: { sheetSize },
          name: `Pages on ${sheetSize} (PDF)`,
          code: `PDF on ${sheetSize}`,
        }))
    : [choice('pdf', 'Pages (PDF)')];

/** Writes a document of the project as it stands now to a file of the user's choice. */
export function exportDocument(
  document: Exporter,
  { format, options: chosen }: ExportChoice,
  asked?: DocumentOptions,
): Promise<void> | void {
  const options = { ...asked, ...chosen };
  if (format === 'pdf') return exportPdf(document, options);
  if (format === 'xml') return exportXml(document, options);
  if (format === 'svg' || format === 'dxf') return exportDrawing(document, format, options);
  return exportTable(document.table(documentInput(options)), format);
}
