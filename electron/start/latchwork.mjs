// npm run latchwork -- <subcommand>: the command line, built when needed.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import process from 'node:process';
import { ensureBuilt, root } from './build.mjs';
import { ensureInstalled } from './install.mjs';

if (!ensureInstalled(root)) process.exit(2);
await ensureBuilt();
const { status } = spawnSync(
  process.execPath,
  [join(root, '.out', 'electron', 'cli.cjs'), ...process.argv.slice(2)],
  { cwd: process.env.INIT_CWD ?? process.cwd(), stdio: 'inherit' },
);
process.exitCode = status ?? 2;
