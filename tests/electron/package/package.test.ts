import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { extractFile, listPackage } from '@electron/asar';
import { validateConfiguration } from 'app-builder-lib/out/util/config/config';
import { DebugLogger } from 'builder-util';
import { describe, expect, it } from 'vitest';
import { ensureBuilt } from '../../../electron/start/build.mjs';
import { tempFolder } from '../temp-folder';
import { FUSE_MARK, stubRuntime } from './stub-runtime';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const config = createRequire(import.meta.url)(join(root, 'electron/builder.config.cjs'));

describe('the package', () => {
  it('has a valid configuration', async () => {
    await expect(validateConfiguration(config, new DebugLogger(false))).resolves.toBeUndefined();
  });

  it('would notice an invalid one', async () => {
    await expect(validateConfiguration({ ...config, asarr: true }, new DebugLogger(false))).rejects.toThrow(
      'asarr',
    );
  });

  it('opens the files of projects', () => {
    expect(config.fileAssociations).toMatchObject([{ ext: 'latchwork', role: 'Editor' }]);
  });

  it.runIf(process.platform === 'linux')(
    'carries the bundles and nothing else, with its fuses set',
    async () => {
      await ensureBuilt();
      const folder = tempFolder();
      const stub = stubRuntime(join(folder, 'runtime'), config.electronVersion);
      execFileSync(
        process.execPath,
        [
          join(root, 'node_modules/electron-builder/out/cli/cli.js'),
          '--config=electron/builder.config.cjs',
          '--linux=dir',
          '--x64',
          `-c.electronDist=${stub}`,
          `-c.directories.output=${join(folder, 'out')}`,
        ],
        { cwd: root, stdio: 'pipe' },
      );
      const unpacked = join(folder, 'out', 'linux-unpacked');
      const asar = join(unpacked, 'resources', 'app.asar');
      const files = listPackage(asar, { isPack: false }).filter((path) => /\.\w+$/.test(path));

      expect(files).toEqual(
        expect.arrayContaining([
          '/package.json',
          '/.out/electron/main.cjs',
          '/.out/electron/preload.cjs',
          '/.out/renderer/index.html',
          '/assets/third-party-licences.txt',
          '/assets/sbom.cdx.json',
        ]),
      );
      const expected =
        /^\/(package\.json|\.out\/(electron\/(main|preload)\.cjs|renderer\/.*)|assets\/((catalogues|fonts)\/.*|third-party-licences\.txt|sbom\.cdx\.json)|demo-projects\/.*|\.out)$/;
      expect(files.filter((path) => !expected.test(path))).toEqual([]);

      const packed = JSON.parse(extractFile(asar, 'package.json').toString());
      expect(extractFile(asar, packed.main).equals(readFileSync(join(root, '.out/electron/main.cjs')))).toBe(
        true,
      );

      // In the order of Electron's fuse list: run as Node, cookie encryption, NODE_OPTIONS, inspect arguments, asar
      // integrity, only from asar, own V8 snapshot, privileges of file:. The last place is left as the runtime has it.
      const binary = readFileSync(join(unpacked, 'latchwork'));
      const wire = binary.subarray(binary.indexOf(FUSE_MARK) + FUSE_MARK.length + 2).toString();
      expect(wire).toBe('010011000');
    },
    60_000,
  );
});
