import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { releaseObstacles } from '@latchwork/core/decisions/release-obstacles';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { type ManifestGap, manifestText, sumsText } from '@latchwork/core/exports/release/manifest';
import { leftOutReason, packageFiles } from '@latchwork/core/exports/release/package-files';
import { readmeText } from '@latchwork/core/exports/release/readme-text';
import { type ReleaseFacts, releaseFacts } from '@latchwork/core/exports/release/release-facts';
import { asReleased, withoutOwnBaseline } from '@latchwork/core/model/baseline';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { checkProject } from './check-project';
import { nearestFileName } from './file-name';
import { PROJECT_ENDING } from './project-file';
import { failed, isTaken, reasonOf } from './reason';
import { type MadeFile, makeFiles, type Making, manifestEntry, pause } from './release/make-files';
import { differenceFrom, isThere, placeFiles } from './release/place-files';
import { obstacleText } from './release/release-words';

export type MadeAnswer =
  | {
      readonly status: 'made';
      /** The folder in which it stands. */
      readonly place: string;
      readonly files: string[];
      readonly leftOut: ManifestGap[];
      readonly stoodAlready: boolean;
    }
  | { readonly status: 'blocked'; readonly findings: string[] }
  | { readonly status: 'cancelled' }
  | { readonly status: 'failed'; readonly reason: string };

export interface ReleaseMaking extends Making {
  /** What the records of the project are held against. */
  readonly catalogue?: readonly Part[];
}

/**
 * Makes the package of a released revision in `folder`, as a folder and as a zip of it; everything or nothing. It is made of
 * the project as it was released and judged on the day of the release: the same bytes whenever it is asked for.
 */
export async function makeRelease(
  project: Project,
  folder: string,
  making: ReleaseMaking,
): Promise<MadeAnswer> {
  const current = project.revisions.at(-1);
  if (current?.status !== 'released')
    return failed(`Revision ${current?.revision ?? '(none)'} is a draft. Release it first.`);
  const then = asReleased(project);
  const facts = then && releaseFacts(then);
  if (!then || !facts)
    return failed(
      `Revision ${current.revision} says that it is released, but it is not what was released: it was changed outside of the program. Go back to a copy of the release, or start the next revision from it.`,
    );
  const { onProgress, signal, catalogue } = making;
  try {
    onProgress?.({ done: 0, total: 0, making: 'Findings' });
    await pause(signal);
    const check = checkProject(then, catalogue);
    const input = { harness: check.harness, check, date: facts.date };
    const { blocking } = releaseObstacles(then, check.findings, facts.date);
    if (blocking.length > 0)
      return { status: 'blocked', findings: blocking.map((b) => obstacleText(then, b)) };
    const stem = packageStem(then);
    const other = await otherBaseline(join(folder, stem), facts);
    if (other !== null) return failed(other);
    const { files, leftOut } = await packageOf(then, facts, stem, input, making);
    return await putPackage(folder, stem, files, leftOut, signal);
  } catch (error) {
    if (signal?.aborted) return { status: 'cancelled' };
    if (isTaken(error))
      return failed('A package of this name appeared there meanwhile. Nothing was written.');
    if (error instanceof Error && 'code' in error) return failed(reasonOf(error));
    throw error;
  }
}

/** Begins the names of all files of a revision: "LW-104-B", whatever stands in the title block. */
export function packageStem(project: Project): string {
  const { identificationNumber, title } = project.titleBlock;
  const revision = project.revisions.at(-1)?.revision ?? '0';
  const name = (identificationNumber || title).slice(0, 60);
  return nearestFileName(`${name}-${revision.slice(0, 20)}`.replace(/\s+/g, '-'), 'harness');
}

async function packageOf(
  then: Project,
  facts: ReleaseFacts,
  stem: string,
  input: DocumentInput,
  making: Making,
): Promise<{ files: readonly MadeFile[]; leftOut: readonly ManifestGap[] }> {
  const documents = await makeFiles(packageFiles(EXPORTERS, stem), input, making, (file) =>
    leftOutReason(file, input),
  );
  const { leftOut } = documents;
  const text = (path: string, content: string): MadeFile => ({ path, bytes: Buffer.from(content, 'utf8') });
  const projectFile = `${stem}${PROJECT_ENDING}`;
  const listed = [
    text('README.txt', readmeText(facts, projectFile, leftOut)),
    text(projectFile, serialiseProject(withoutOwnBaseline(then))),
    ...documents.files,
  ];
  const manifest = text('manifest.json', manifestText(facts, input, listed.map(manifestEntry), leftOut));
  const summed = [manifest, ...listed];
  return { files: [text('SHA256SUMS', sumsText(summed.map(manifestEntry))), ...summed], leftOut };
}

/** Zips keep the time at which they were made; the first moment that the format knows stands for "none". */
const NO_TIME = new Date(1980, 0, 1);

async function putPackage(
  folder: string,
  stem: string,
  files: readonly MadeFile[],
  leftOut: readonly ManifestGap[],
  signal: AbortSignal | undefined,
): Promise<MadeAnswer> {
  const inFolder = files.map((f) => ({ ...f, path: `${stem}/${f.path}` }));
  const bytes = zipSync(Object.fromEntries(inFolder.map((f) => [f.path, f.bytes])), { mtime: NO_TIME, level: 6 });
  const zip: MadeFile = { path: `${stem}.zip`, bytes };
  const refusal = await otherThere(folder, stem, files, zip);
  if (refusal !== null) return failed(refusal);
  const missing: string[] = [];
  for (const name of [stem, zip.path]) if (!(await isThere(join(folder, name)))) missing.push(name);
  if (missing.length > 0)
    await placeFiles(folder, missing, [...inFolder, zip].filter((f) => missing.some((m) => f.path === m || f.path.startsWith(`${m}/`))), signal);
  return {
    status: 'made',
    place: folder,
    files: [...inFolder.map((f) => f.path), zip.path],
    leftOut: [...leftOut],
    stoodAlready: missing.length === 0,
  };
} // prettier-ignore

const KEPT = 'Nothing was written. Move it away, or release into another folder.';

/** Why a package of the same name is one of another content, or null: told before anything is made. */
async function otherBaseline(packageFolder: string, facts: ReleaseFacts): Promise<string | null> {
  const there = await baselineThere(packageFolder);
  return there === null || there === facts.baseline
    ? null
    : `A package of revision ${facts.revision} stands there already, with another baseline (${there.slice(0, 12)}… instead of ${facts.baseline.slice(0, 12)}…): the same revision with other content. ${KEPT}`;
}

/** Why what stands there already is not this package to the byte, or null. */
async function otherThere(
  folder: string,
  stem: string,
  files: readonly MadeFile[],
  zip: MadeFile,
): Promise<string | null> {
  if (await isThere(join(folder, stem))) {
    const other = await differenceFrom(join(folder, stem), files);
    if (other !== null)
      return `${stem} stands there already and differs from what was released, for example in ${other}. ${KEPT}`;
  }
  if (await isThere(join(folder, zip.path))) {
    const there = await readFile(join(folder, zip.path));
    if (Buffer.compare(there, zip.bytes) !== 0)
      return `${zip.path} stands there already and differs from what was released. ${KEPT}`;
  }
  return null;
}

async function baselineThere(packageFolder: string): Promise<string | null> {
  try {
    const manifest: unknown = JSON.parse(await readFile(join(packageFolder, 'manifest.json'), 'utf8'));
    const baseline =
      typeof manifest === 'object' && manifest && 'baseline' in manifest ? manifest.baseline : null;
    return typeof baseline === 'string' ? baseline : null;
  } catch {
    return null;
  }
}
