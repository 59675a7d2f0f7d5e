import type { JobStateAnswer } from '@latchwork/core/bridge/answers';
import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { fileFormatsOf, type FileFormat } from '@latchwork/core/exports/file-format';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { appStore } from '../store';
import { today } from '../today';
import { followJob } from './follow-job';

export interface WantedFile {
  readonly document: string;
  readonly format: FileFormat;
  readonly options?: DocumentOptions;
}

/** One file for each document and each of the formats that it is made in. */
export const wantedFiles = (
  documents: readonly Exporter[],
  formats: ReadonlySet<FileFormat>,
  options: Readonly<Record<string, DocumentOptions>>,
): readonly WantedFile[] =>
  documents.flatMap((document) =>
    fileFormatsOf(document)
      .filter((format) => formats.has(format))
      .map((format) => {
        const asked = options[document.id];
        return { document: document.id, format, ...(asked && Object.keys(asked).length > 0 ? { options: asked } : {}) };
      }),
  ); // prettier-ignore

/** Has the host make many files of the project as it stands now, all or none. */
export function exportMany(files: readonly WantedFile[]): Promise<JobStateAnswer | null> {
  const { project } = appStore.getState().history;
  return followJob(`Exporting ${files.length} ${files.length === 1 ? 'file' : 'files'}`, {
    kind: 'export-all',
    text: serialiseProject(project),
    date: today(),
    documents: [...files],
  });
}
