import { readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { sweepLeftovers } from '../../../electron/services/sweep-leftovers';
import { tempFolder } from '../temp-folder';

it('takes away what a broken-off write has left, and nothing else', async () => {
  const folder = tempFolder();
  const old = ['.lamp.latchwork.0123456789ab.tmp', '.lamp.latchwork.lock', 'lamp.latchwork', '.other.latchwork.0123456789ab.tmp', '.lamp.latchwork.mine.tmp']; // prettier-ignore
  for (const name of [...old, '.lamp.latchwork.aaaaaaaaaaaa.tmp']) writeFileSync(join(folder, name), '');
  for (const name of old) utimesSync(join(folder, name), new Date(0), new Date(0));
  await sweepLeftovers(join(folder, 'lamp.latchwork'));
  expect(readdirSync(folder).sort()).toEqual([...old.slice(1), '.lamp.latchwork.aaaaaaaaaaaa.tmp'].sort());
  await sweepLeftovers(join(folder, 'gone', 'lamp.latchwork'));
});
