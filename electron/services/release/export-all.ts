import { join } from 'node:path';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { DocumentOptions } from '@latchwork/core/exports/exporter';
import { fileEnding, fileFormatsOf, type FileFormat } from '@latchwork/core/exports/file-format';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { checkProject } from '../check-project';
import { nearestFileName } from '../file-name';
import { failed, isTaken, reasonOf } from '../reason';
import { type MadeAnswer, packageStem, type ReleaseMaking } from '../release';
import { type AskedFile, makeFiles, pause } from './make-files';
import { isThere, placeFiles } from './place-files';

export interface AskedDocument {
  readonly document: string;
  readonly format: FileFormat;
  readonly options?: DocumentOptions | undefined;
}

/**
 * Makes the chosen documents of a project in a folder of their own inside `folder`, under the first name that is free;
 * everything or nothing. Documents that cannot be made are left out with the reason.
 */
export async function exportAll(
  project: Project,
  documents: readonly AskedDocument[],
  date: string,
  folder: string,
  making: ReleaseMaking,
): Promise<MadeAnswer> {
  const stem = packageStem(project);
  const asked = askedFiles(documents, stem);
  if (typeof asked === 'string') return failed(asked);
  const { onProgress, signal, catalogue } = making;
  try {
    onProgress?.({ done: 0, total: 0, making: 'Findings' });
    await pause(signal);
    const check: ReturnType<typeof checkProject> = checkProject(project, catalogue as readonly Part[]);
    const made = await makeFiles(asked, { harness: check.harness, check, date }, making);
    if (made.files.length === 0) return failed(made.leftOut.map((l) => `${l.what}: ${l.reason}`).join(' '));
    const name = await freeName(folder, `${stem}-documents`);
    const files = made.files.map((f) => ({ ...f, path: `${name}/${f.path}` }));
    await placeFiles(folder, [name], files, signal);
    return {
      status: 'made',
      place: folder,
      files: files.map((f) => f.path),
      leftOut: [...made.leftOut],
      stoodAlready: false,
    };
  } catch (error) {
    if (signal?.aborted) return { status: 'cancelled' };
    if (isTaken(error)) return failed('A folder of this name appeared there meanwhile. Nothing was written.');
    if (error instanceof Error && 'code' in error) return failed(reasonOf(error));
    throw error;
  }
}

/** The files that are wanted, or what cannot be wanted, in words. Options that tell two files apart stand in their names. */
function askedFiles(documents: readonly AskedDocument[], stem: string): readonly AskedFile[] | string {
  const files = new Map<string, AskedFile>();
  for (const { document, format, options } of documents) {
    const exporter = EXPORTERS.find((e) => e.id === document);
    if (!exporter) return `There is no document "${document.slice(0, 60)}".`;
    if (!fileFormatsOf(exporter).includes(format))
      return `${exporter.title} is not made as ${format.toUpperCase()}.`;
    const { quantity, sheetSize, supplier, labelSheet, labelCode, labelStart } = options ?? {};
    const told = [supplier?.slice(0, 40), quantity, sheetSize, labelSheet, labelCode, labelStart].filter(
      (t) => t !== undefined,
    );
    const ending = fileEnding(exporter, format);
    const path = nearestFileName(
      `${[stem, exporter.id, ...told].join('-')}.${ending}`,
      `${exporter.id}.${ending}`,
    );
    files.set(path.toLowerCase(), { path, exporter, format, options });
  }
  return [...files.values()];
}

async function freeName(folder: string, wanted: string): Promise<string> {
  for (let n = 1; ; n++) {
    const name = n === 1 ? wanted : `${wanted}-${n}`;
    if (!(await isThere(join(folder, name)))) return name;
  }
}
