import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { compareText } from '@latchwork/core/base/stable-order';

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** Its folder, as the lock file names it. */
  readonly path: string;
  /** SPDX expression, or what stands in its package.json. */
  readonly licence: string;
  /** "sha512-…" over the archive, as the lock file holds it. */
  readonly integrity: string;
  /** Paths of the packages that it needs. */
  readonly needs: readonly string[];
  readonly licenceText: string | null;
}

interface LockEntry {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
}

type Lock = Readonly<Record<string, LockEntry>>;

const WORKSPACES = ['core', 'renderer', 'electron'];

/** The lock file's packages by their folders. */
export const readLock = (root: string): Lock =>
  (JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as { packages: Lock }).packages;

/** Every package whose code can be in the program: what the workspaces need, and all that these need. Types are no code. */
export function shippedPackages(root: string): readonly ShippedPackage[] {
  const lock = readLock(root);
  const found = new Map<string, ShippedPackage>();
  const visit = (path: string): void => {
    const entry = lock[path];
    if (!entry || found.has(path)) return;
    const needs = needsOf(lock, path);
    const name = path.split('node_modules/').at(-1) as string;
    found.set(path, {
      name,
      version: entry.version,
      path,
      licence: entry.license ?? licenceByText(root, path),
      integrity: entry.integrity ?? '',
      needs,
      licenceText: licenceText(root, path),
    });
    needs.forEach(visit);
  };
  for (const workspace of WORKSPACES) needsOf(lock, workspace).forEach(visit);
  return [...found.values()].sort((a, b) => compareText(a.name, b.name) || compareText(a.path, b.path));
}

function needsOf(lock: Lock, path: string): string[] {
  const { dependencies = {}, peerDependencies = {} } = lock[path] ?? ({} as LockEntry);
  const names = [...new Set([...Object.keys(dependencies), ...Object.keys(peerDependencies)])].sort(
    compareText,
  );
  return names
    .filter((name) => !name.startsWith('@types/') && !name.startsWith('@latchwork/'))
    .flatMap((name) => resolved(lock, path, name) ?? []);
}

/** As Node finds it: in the package's own node_modules, else in those of the folders above. */
function resolved(lock: Lock, from: string, name: string): string | null {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf('/node_modules/')))) {
    const path =
      folder === '' || WORKSPACES.includes(folder)
        ? `node_modules/${name}`
        : `${folder}/node_modules/${name}`;
    if (path in lock) return path;
    if (path === `node_modules/${name}`) return null;
  }
}

function licenceText(root: string, path: string): string | null {
  const folder = join(root, path);
  if (!existsSync(folder)) return null;
  const file = readdirSync(folder).sort(compareText).find((name) => /^(licen[cs]e|copying)([.-].*)?$/i.test(name)); // prettier-ignore
  return file === undefined ? null : readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim();
}

/** Where package.json does not say it, the text may. */
const licenceByText = (root: string, path: string): string =>
  /^MIT License/m.test(licenceText(root, path) ?? '') ? 'MIT' : 'NOASSERTION';
