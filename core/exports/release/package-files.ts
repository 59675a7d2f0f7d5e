import type { DocumentInput, Exporter } from '../exporter';
import { fileEnding, fileFormatsOf, type FileFormat } from '../file-format';

/** One document of a release package, before it is made. */
export interface PackageFile {
  /** Inside the package, with slashes. */
  readonly path: string;
  readonly exporter: Exporter;
  readonly format: FileFormat;
}

/** Where files of a format lie. JSON is left to programs: they can have it from the project file. */
const FOLDERS: Readonly<Partial<Record<FileFormat, string>>> = {
  pdf: 'papers',
  csv: 'tables',
  xlsx: 'tables',
  svg: 'drawings',
  dxf: 'drawings',
  xml: 'exchange',
};

/**
 * The documents of a release package, each in every format that it is made in. `stem` begins every name, so that a file
 * that is taken out of the package still says which revision it belongs to.
 */
export const packageFiles = (exporters: readonly Exporter[], stem: string): readonly PackageFile[] =>
  exporters.flatMap((exporter) =>
    fileFormatsOf(exporter).flatMap((format) => {
      const folder = FOLDERS[format];
      const name = `${stem}-${exporter.id}.${fileEnding(exporter, format)}`;
      return folder ? [{ path: `${folder}/${name}`, exporter, format }] : [];
    }),
  );

/** Empty of these is an answer in itself. */
const SPEAKS_WHEN_EMPTY = 'findings-report';

/** Why a document is not put into a package, or null. What a format refuses is not known before it is made. */
export function leftOutReason({ exporter, format }: PackageFile, input: DocumentInput): string | null {
  if (format === 'xml' || exporter.table(input).rows.length > 0) return null;
  if (exporter.id !== SPEAKS_WHEN_EMPTY) return 'Nothing in this project concerns it: it has no rows.';
  return format === 'csv'
    ? 'There is no finding, and a table without rows could not name its baseline. The PDF says so.'
    : null;
}
