import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { Backups } from '../../../electron/services/backups';
import { tempFolder } from '../temp-folder';

/** More with KILL_CYCLES=5000 in the environment. */
const CYCLES = Number(process.env['KILL_CYCLES'] ?? 500);
const BACKUP_EVERY_MS = 30;
const DOCUMENT = '0b7c3b52-5d8e-4d4f-9a52-5b7f5b0f3c11';
/** Small texts are often between two steps when the end comes, large ones in the middle of a write. */
const SIZES = [100, 20_000, 2_000_000];

interface Step {
  readonly what: 'edit' | 'backup' | 'saving' | 'saved';
  readonly edit: number;
  readonly at: number;
}

it(
  `is killed at random moments in ${CYCLES} saves, and the file is always the one before or the one after`,
  { timeout: 240_000 },
  async () => {
    const folder = tempFolder();
    const script = join(folder, 'save-loop.cjs');
    await build({ entryPoints: ['tests/electron/crash/save-loop.ts'], bundle: true, platform: 'node', format: 'cjs', outfile: script, logLevel: 'error' }); // prettier-ignore
    const path = join(folder, 'lamp.latchwork');
    const backups = new Backups(join(folder, 'data'), () => new Date());
    const figures = { cycles: 0, kills: 0, inTheMiddle: 0, oldestBackupMs: 0 };
    let edit = 0;

    while (figures.cycles < CYCLES) {
      const size = SIZES[figures.kills % SIZES.length]!;
      const before = existsSync(path) ? readEdit(readFileSync(path, 'utf8')) : null;
      const args = [
        script,
        path,
        join(folder, 'data'),
        DOCUMENT,
        String(edit),
        String(size),
        String(BACKUP_EVERY_MS),
      ];
      const { steps, killedAt } = await runAndKill(args, 20 + Math.random() * 200);
      figures.kills++;
      const done = steps.filter((s) => s.what === 'saved');
      figures.cycles += done.length;
      edit = Math.max(edit, ...steps.map((s) => s.edit));

      const begun = steps.filter((s) => s.what === 'saving').at(-1)?.edit;
      const ended = done.at(-1)?.edit ?? before;
      if (begun !== undefined && begun !== ended) figures.inTheMiddle++;
      if (existsSync(path)) expect([ended, begun]).toContain(readEdit(readFileSync(path, 'utf8')));
      else expect(ended).toBeNull();

      const backedUp = steps.filter((s) => s.what === 'backup').at(-1);
      if (!backedUp) continue;
      const backup = await backups.read(DOCUMENT);
      expect(readEdit(backup!.text)).toBeGreaterThanOrEqual(backedUp.edit);
      figures.oldestBackupMs = Math.max(figures.oldestBackupMs, killedAt - backedUp.at);
    }

    console.log(
      'killed while saving:',
      JSON.stringify(figures),
      `leftovers: ${readdirSync(folder).filter((f) => f.endsWith('.tmp')).length}`,
    );
    expect(figures.inTheMiddle).toBeGreaterThan(0);
  },
);

async function runAndKill(
  args: readonly string[],
  afterMs: number,
): Promise<{ steps: readonly Step[]; killedAt: number }> {
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  child.stdout.on('data', (chunk: Buffer) => (said += chunk.toString()));
  const closed = once(child, 'close');
  // The clock starts when it works: the start of a process takes longer than some of its lives.
  await once(child.stdout, 'data');
  await new Promise((resolve) => setTimeout(resolve, afterMs));
  const killedAt = Date.now();
  child.kill('SIGKILL');
  await closed;
  const lines = said.split('\n').slice(0, -1);
  const steps = lines.map((line): Step => {
    const [what, edit, at] = line.split(' ');
    return { what: what as Step['what'], edit: Number(edit), at: Number(at) };
  });
  return { steps, killedAt };
}

/** The edit that a text holds; throws where it is not whole. */
function readEdit(text: string): number {
  const value = JSON.parse(text) as { edit: number; end: number };
  expect(value.end).toBe(value.edit);
  return value.edit;
}
