import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'latchwork-types-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Whether a file compiles under the settings of core. */
function compilesInCore(code: string): boolean {
  writeFileSync(join(folder, 'x.ts'), code);
  writeFileSync(
    join(folder, 'tsconfig.json'),
    JSON.stringify({
      extends: join(root, 'core', 'tsconfig.json'),
      compilerOptions: { rootDir: '.', outDir: 'out', tsBuildInfoFile: 'out/info' },
      include: ['x.ts'],
      references: [],
    }),
  );
  try {
    execFileSync(process.execPath, [join(root, 'node_modules/@typescript/native/bin/tsc'), '-p', folder]);
    return true;
  } catch {
    return false;
  }
}

it('compiles plain code', () => {
  expect(compilesInCore('export const x: number[] = [1, 2].toSorted();')).toBe(true);
});

it.each([
  ['console', "console.log('x');\nexport {};"],
  ['process', 'export const x = process.env;'],
  ['window', 'export const x = window;'],
  ['a Node module', "import { readFile } from 'node:fs';\nexport const x = readFile;"],
  ['a timer', 'setTimeout(() => 1, 1);\nexport {};'],
])('does not know %s', (_what, code) => {
  expect(compilesInCore(code)).toBe(false);
});
