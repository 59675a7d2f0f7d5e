import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const eslint = new ESLint({ cwd: root, overrideConfigFile: 'tests/architecture/eslint.config.js' });

async function rulesBroken(filePath: string, code: string): Promise<(string | null)[]> {
  const [result] = await eslint.lintText(`${code}\n`, { filePath, warnIgnored: true });
  return [...new Set(result!.messages.map((message) => message.ruleId))];
}

const bad: [file: string, code: string, rule: string][] = [
  [
    'core/model/x.ts',
    "import { readFile } from 'node:fs/promises';\nexport const x = readFile;",
    'no-restricted-imports',
  ],
  ['core/model/x.ts', "import { readFile } from 'fs';\nexport const x = readFile;", 'no-restricted-imports'],
  [
    'core/model/x.ts',
    "import { useState } from 'react';\nexport const x = useState;",
    'no-restricted-imports',
  ],
  ['core/model/x.ts', "import { type App } from 'electron';\nexport type X = App;", 'no-restricted-imports'],
  [
    'core/model/x.ts',
    "import { x } from '../../renderer/app/x';\nexport const y = x;",
    'no-restricted-imports',
  ],
  [
    'core/model/x.ts',
    "import { x } from '@latchwork/core/base/x';\nexport const y = x;",
    'no-restricted-imports',
  ],
  ['core/model/x.ts', "import { x } from './y.ts';\nexport const y = x;", 'no-restricted-imports'],
  ['core/model/x.ts', "export const x = () => import('../base/result');", 'no-restricted-syntax'],
  ['core/model/x.ts', "export type X = import('../base/result').Result<1, 2>;", 'no-restricted-syntax'],
  ['core/model/x.ts', 'export const x = () => new Date();', 'no-restricted-globals'],
  ['core/model/x.ts', 'export const x = () => Date.now();', 'no-restricted-globals'],
  ['core/model/x.ts', 'export const x = () => performance.now();', 'no-restricted-globals'],
  ['core/model/x.ts', 'export const x = () => Math.random();', 'no-restricted-properties'],
  ['core/model/x.ts', 'export const x = () => crypto.randomUUID();', 'no-restricted-globals'],
  ['core/model/x.ts', "export const x = () => console.log('x');", 'no-restricted-globals'],
  ['core/model/x.ts', "export const x = (a: string) => a.localeCompare('b');", 'no-restricted-syntax'],
  ['core/model/x.ts', 'export default 1;', 'no-restricted-syntax'],
  ['core/model/x.ts', 'export const x = (a: any) => a;', '@typescript-eslint/no-explicit-any'],
  ['core/model/x.ts', 'export const x = 1;\n'.repeat(501), 'max-lines'],
  [
    'renderer/app/x.ts',
    "import { ipcRenderer } from 'electron';\nexport const x = ipcRenderer;",
    'no-restricted-imports',
  ],
  ['renderer/app/x.ts', "import { join } from 'node:path';\nexport const x = join;", 'no-restricted-imports'],
  ['renderer/app/x.ts', "import { join } from 'path';\nexport const x = join;", 'no-restricted-imports'],
  [
    'renderer/app/x.ts',
    "import { x } from '../../electron/services/x';\nexport const y = x;",
    'no-restricted-imports',
  ],
  [
    'renderer/app/x.ts',
    "import { x } from '../../core/base/x';\nexport const y = x;",
    'no-restricted-imports',
  ],
  ['renderer/app/x.ts', 'export const x = process.env.HOME;', 'no-restricted-globals'],
  ['renderer/app/x.ts', "export const x = () => confirm('x');", 'no-restricted-globals'],
  [
    'electron/services/x.ts',
    "import { app } from 'electron';\nexport const x = app;",
    'no-restricted-imports',
  ],
  ['electron/host/x.ts', "import { app } from 'electron';\nexport const x = app;", 'no-restricted-imports'],
  [
    'electron/cli/x.ts',
    "import { Stage } from 'react-konva';\nexport const x = Stage;",
    'no-restricted-imports',
  ],
  [
    'electron/cli/x.ts',
    "import { x } from '../../renderer/app/x';\nexport const y = x;",
    'no-restricted-imports',
  ],
  ['electron/cli/x.ts', "export const x = () => console.log('x');", 'no-console'],
  [
    'electron/main/x.ts',
    "import { ipcMain } from 'electron';\nexport const x = ipcMain;",
    'no-restricted-imports',
  ],
  [
    'electron/preload/x.ts',
    "import { join } from 'node:path';\nexport const x = join;",
    'no-restricted-imports',
  ],
  [
    'electron/preload/x.ts',
    "import { contract } from '@latchwork/core/bridge/contract';\nexport const x = contract;",
    'no-restricted-imports',
  ],
];

const good: [file: string, code: string][] = [
  [
    'core/model/x.ts',
    "import { z } from 'zod';\nimport { produce } from 'immer';\nimport { ok } from '../base/result';\nexport const x = [z, produce, ok];",
  ],
  [
    'renderer/app/x.ts',
    "import { ok } from '@latchwork/core/base/result';\nimport { Stage } from 'react-konva';\nexport const x = [ok, Stage, document];",
  ],
  ['electron/services/x.ts', "import { join } from 'node:path';\nexport const x = join;"],
  ['electron/main/x.ts', "import { app } from 'electron';\nexport const x = app;"],
  ['electron/main/register.ts', "import { ipcMain } from 'electron';\nexport const x = ipcMain;"],
  [
    'electron/preload/x.ts',
    "import { channels } from '@latchwork/core/bridge/channels';\nimport { ipcRenderer } from 'electron';\nexport const x = [channels, ipcRenderer];",
  ],
];

describe('the lint fences', () => {
  it.each(bad)('%s refuses: %s (%s)', async (file, code, rule) => {
    expect(await rulesBroken(file, code)).toContain(rule);
  });

  it.each(good)('%s admits: %s', async (file, code) => {
    expect(await rulesBroken(file, code)).toEqual([]);
  });
});
