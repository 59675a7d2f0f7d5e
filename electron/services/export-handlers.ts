import { mkdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { type ExportAnswer } from '@latchwork/core/bridge/answers';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { writeAtomically } from './atomic-write';
import { base64Of, bytesOfBase64 } from './base64';
import { type DocumentFormat, documentBytes } from './document-bytes';
import { drawingBytes, type DrawingFormat } from './drawing-bytes';
import { paperBytes } from './paper-bytes';
import { bareFileName, nearestFileName } from './file-name';
import { type Places } from './places';
import { failed, isTaken, reasonOf } from './reason';
import { type Shell } from './shell';

type Exports = Pick<
  Handlers,
  'file:export' | 'table:export' | 'paper:export' | 'paper:preview' | 'drawing:export'
>;

export function exportHandlers(places: Places, shell: Shell): Exports {
  const exportBytes = async (bytes: Uint8Array, wanted: Wanted): Promise<ExportAnswer> => {
    const suggestion = nearestFileName(wanted.suggestedName, 'document');
    if (shell.dialogs) {
      const path = await shell.dialogs.saveExport(suggestion, wanted.filters);
      return path ? write(path, bytes, true) : { status: 'cancelled' };
    }
    const bare = bareFileName(wanted.name ?? suggestion);
    if (!bare.ok) return failed(bare.problem);
    const folder = join(places.workFolder, 'exports');
    try {
      await mkdir(folder, { recursive: true });
    } catch (error) {
      return failed(reasonOf(error));
    }
    return write(join(folder, bare.value), bytes, wanted.replace);
  };

  return {
    'file:export': async ({ bytesBase64, ...wanted }) => {
      const bytes = bytesOfBase64(bytesBase64);
      return bytes ? exportBytes(bytes, wanted) : failed('The document did not arrive whole.');
    },
    'table:export': async ({ table, format, ...wanted }) =>
      exportBytes(await documentBytes(table, format), { ...wanted, filters: [FILTERS[format]] }),
    'paper:export': async ({ paper, ...wanted }) => {
      const pdf = await paperBytes(paper, places.fontsFolder);
      return pdf.ok ? exportBytes(pdf.value, { ...wanted, filters: [FILTERS.pdf] }) : failed(pdf.problem);
    },
    'paper:preview': async ({ paper }) => {
      const pdf = await paperBytes(paper, places.fontsFolder);
      return pdf.ok ? { status: 'drawn', pdfBase64: base64Of(pdf.value) } : failed(pdf.problem);
    },
    'drawing:export': ({ drawing, title, format, ...wanted }) =>
      exportBytes(drawingBytes(drawing, title, format), { ...wanted, filters: [FILTERS[format]] }),
  };
}

interface Wanted {
  readonly suggestedName: string;
  readonly filters: readonly { name: string; extensions: string[] }[];
  readonly name: string | null;
  readonly replace: boolean;
}

const FILTERS: Readonly<
  Record<DocumentFormat | DrawingFormat | 'pdf', { name: string; extensions: string[] }>
> = {
  csv: { name: 'Comma-separated values', extensions: ['csv'] },
  xlsx: { name: 'Spreadsheet', extensions: ['xlsx'] },
  json: { name: 'JSON', extensions: ['json'] },
  pdf: { name: 'PDF', extensions: ['pdf'] },
  svg: { name: 'SVG drawing', extensions: ['svg'] },
  dxf: { name: 'DXF drawing (R12)', extensions: ['dxf'] },
};

async function write(path: string, bytes: Uint8Array, replace: boolean): Promise<ExportAnswer> {
  const name = basename(path);
  try {
    await writeAtomically(path, bytes, { mustBeNew: !replace });
    return { status: 'saved', name };
  } catch (error) {
    return isTaken(error) ? { status: 'exists', name } : failed(reasonOf(error));
  }
}
