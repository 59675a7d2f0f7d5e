import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Committed, or new and not ignored. */
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\n')
  .filter(Boolean);
const sources = files.filter(
  (file) => /^(core|renderer|electron)\/.*\.tsx?$/.test(file) && !file.endsWith('.d.ts'),
);
const json = (file: string) => JSON.parse(readFileSync(join(root, file), 'utf8'));

describe('the tree', () => {
  it('has nothing on top but what is agreed', () => {
    const tops = [...new Set(files.map((file) => file.split('/')[0]!))].filter(
      (name) => !name.startsWith('.'),
    );
    const agreed = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'electron',
      'renderer',
      'core',
      'tests',
      'assets',
      'demo-projects',
    ];
    expect(tops.filter((name) => !agreed.includes(name))).toEqual([]);
  });

  it('names source files in kebab-case', () => {
    const allowed = /^([a-z0-9]+(-[a-z0-9]+)*)(\.(config|d))?\.tsx?$/;
    expect(sources.filter((file) => !allowed.test(basename(file)))).toEqual([]);
  });

  it('gives every folder of core its layer in the import fences', () => {
    const { forbidden } = createRequire(import.meta.url)('./dependency-cruiser.config.cjs') as {
      forbidden: { name: string }[];
    };
    const folders = new Set(sources.map((file) => /^core\/([^/]+)\//.exec(file)?.[1]).filter((name) => name));
    const fenced = new Set(forbidden.map(({ name }) => /^core-(.+)-layer$/.exec(name)?.[1]));
    expect([...folders].filter((folder) => !fenced.has(folder))).toEqual([]);
  });

  it('has no drawer for odds and ends', () => {
    expect(sources.filter((file) => /^(utils?|helpers?|misc)\.tsx?$/.test(basename(file)))).toEqual([]);
  });

  it('gives every workspace the version of the whole', () => {
    const { version } = json('package.json');
    for (const workspace of ['core', 'renderer', 'electron'])
      expect(json(`${workspace}/package.json`).version, workspace).toBe(version);
  });

  it('pins every package exactly', () => {
    for (const place of ['.', 'core', 'renderer', 'electron']) {
      const { dependencies = {}, devDependencies = {} } = json(`${place}/package.json`);
      for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
        expect(version, name).toMatch(/^(npm:@?[a-z/0-9-]+@)?\d+\.\d+\.\d+$/);
    }
  });

  it('names no registry in the lock file', () => {
    const { packages } = json('package-lock.json') as {
      packages: Record<string, { resolved?: string; link?: boolean }>;
    };
    const named = Object.entries(packages).filter(([, { resolved, link }]) => resolved && !link);
    expect(named).toEqual([]);
  });

  it('lets core depend on zod and immer only', () => {
    expect(Object.keys(json('core/package.json').dependencies).sort()).toEqual(['immer', 'zod']);
  });
});
