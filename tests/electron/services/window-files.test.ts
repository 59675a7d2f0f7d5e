import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readWindowFile } from '../../../electron/services/window-files';
import { tempFolder } from '../temp-folder';

function builtWindow(): string {
  const top = tempFolder();
  const folder = join(top, 'window');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(top, 'window-secret'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html>');
  writeFileSync(join(folder, 'assets', 'a.js'), '1');
  writeFileSync(join(folder, 'assets', 'a.key'), 'secret');
  writeFileSync(join(top, 'secret.json'), 'secret');
  writeFileSync(join(top, 'window-secret', 'x.json'), 'secret');
  return folder;
}

it.each([
  ['/', 'text/html; charset=utf-8'],
  ['/index.html', 'text/html; charset=utf-8'],
  ['/assets/a.js', 'text/javascript; charset=utf-8'],
  ['/assets/../index.html', 'text/html; charset=utf-8'],
])('serves %s as %s', async (path, mediaType) => {
  expect((await readWindowFile(builtWindow(), path))?.mediaType).toBe(mediaType);
});

it.each([
  '/nothing.js',
  '/assets/',
  '/assets',
  '/assets/a.key',
  '/../secret.json',
  '/%2e%2e/secret.json',
  '/..%2fsecret.json',
  '/%2e%2e%5csecret.json',
  '/..\\secret.json',
  '/../window-secret/x.json',
  '/%',
  '/a%00.js',
])('does not serve %s', async (path) => {
  expect(await readWindowFile(builtWindow(), path)).toBeNull();
});
