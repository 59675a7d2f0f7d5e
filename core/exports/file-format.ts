import { z } from 'zod';
import type { Exporter } from './exporter';

/** The formats in which documents become files. */
export const FileFormat = z.enum(['csv', 'xlsx', 'json', 'pdf', 'svg', 'dxf', 'xml']);
export type FileFormat = z.infer<typeof FileFormat>;

/** The formats that a document can be written in. */
export const fileFormatsOf = (exporter: Exporter): readonly FileFormat[] =>
  FileFormat.options.filter((format) => {
    if (format === 'pdf') return exporter.paper !== undefined;
    if (format === 'svg' || format === 'dxf') return exporter.drawing !== undefined;
    return format !== 'xml' || exporter.xml !== undefined;
  });

/** Of a file name, without dot. */
export const fileEnding = (exporter: Exporter, format: FileFormat): string =>
  format === 'xml' && exporter.xml ? exporter.xml.extension : format;
