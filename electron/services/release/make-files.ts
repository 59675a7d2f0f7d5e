import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import type { ManifestFile, ManifestGap } from '@latchwork/core/exports/release/manifest';
import type { PackageFile } from '@latchwork/core/exports/release/package-files';
import type { DocumentInput, DocumentOptions } from '@latchwork/core/exports/exporter';
import { documentFile } from '../document-file';

export interface MadeFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface Progress {
  /** Files that are made, of so many; total is 0 while the project is read and checked. */
  readonly done: number;
  readonly total: number;
  /** What is being made, in words. */
  readonly making: string;
}

export interface Making {
  readonly fontsFolder: string;
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

export interface AskedFile extends PackageFile {
  readonly options?: DocumentOptions | undefined;
}

export interface MadeFiles {
  readonly files: readonly MadeFile[];
  readonly leftOut: readonly ManifestGap[];
}

/** More is no package but a mistake, or an attempt to fill the disk. */
const MAX_FILES = 500;
const MAX_BYTES = 1024 * 1024 * 1024;

/**
 * Makes documents one after the other. What a format refuses, or `skip` has a reason against, is left out with the reason.
 * Between two files others get their turn, and the signal can end it: it then throws the reason of the signal.
 */
export async function makeFiles(
  asked: readonly AskedFile[],
  input: DocumentInput,
  { fontsFolder, signal, onProgress }: Making,
  skip: (file: AskedFile) => string | null = () => null,
): Promise<MadeFiles> {
  if (asked.length > MAX_FILES) throw new Error(`${asked.length} files are too many for one package`);
  const files: MadeFile[] = [];
  const leftOut: ManifestGap[] = [];
  let bytes = 0;
  for (const [done, file] of asked.entries()) {
    const { exporter, format, path, options } = file;
    onProgress?.({ done, total: asked.length, making: `${exporter.title}, ${format.toUpperCase()}` });
    await pause(signal);
    const reason = skip(file);
    const made =
      reason === null
        ? await documentFile(exporter, options ? { ...input, options } : input, format, fontsFolder)
        : { ok: false as const, problem: reason };
    if (!made.ok) {
      leftOut.push({ what: path, reason: made.problem });
      continue;
    }
    bytes += made.value.length;
    if (bytes > MAX_BYTES) throw new Error('The files are too large for one package');
    files.push({ path, bytes: made.value });
  }
  await pause(signal);
  return { files, leftOut };
}

/** Lets others have their turn, and stops where it was asked to. */
export async function pause(signal: AbortSignal | undefined): Promise<void> {
  await setImmediate();
  signal?.throwIfAborted();
}

export const manifestEntry = ({ path, bytes }: MadeFile): ManifestFile => ({
  path,
  bytes: bytes.length,
  sha256: createHash('sha256').update(bytes).digest('hex'),
});
