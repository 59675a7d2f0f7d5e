import { existsSync, mkdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FileLocks, GONE_AFTER_MS, isProcessAlive, lockOf } from '../../../electron/services/file-lock';
import { tempFolder } from '../temp-folder';

const [ONE, TWO] = ['0b7c3b52-5d8e-4d4f-9a52-5b7f5b0f3c11', '0b7c3b52-5d8e-4d4f-9a52-5b7f5b0f3c12'] as const;

function bench() {
  const path = join(tempFolder(), 'lamp.latchwork');
  writeFileSync(path, 'text');
  const clock = { now: new Date() };
  const alive = new Set([1, 2]);
  const program = (user: string, host: string, processId: number): FileLocks =>
    new FileLocks({ user, host, processId, now: () => clock.now, isAlive: (id) => alive.has(id) });
  return {
    path,
    clock,
    alive,
    program,
    ana: program('ana', 'bench-1', 1),
    ben: program('ben', 'bench-2', 2),
  };
}

describe('a file that is being worked on', () => {
  it('is held by the first, and the second is told by whom and since when', async () => {
    const { path, ana, ben, clock } = bench();
    expect(await ana.hold(path, ONE)).toBeNull();
    expect(await ben.hold(path, TWO)).toMatchObject({
      user: 'ana',
      host: 'bench-1',
      since: clock.now.toISOString(),
    });
    expect(await ana.hold(path, ONE)).toBeNull();
  });

  it('is held against a second window of the same program too', async () => {
    const { path, ana } = bench();
    await ana.hold(path, ONE);
    expect(await ana.hold(path, TWO)).toMatchObject({ window: ONE });
  });

  it('is free after it was let go, and only the holder lets go', async () => {
    const { path, ana, ben } = bench();
    await ana.hold(path, ONE);
    await ben.letGo(path, TWO);
    expect(existsSync(lockOf(path))).toBe(true);
    await ana.letGo(path, ONE);
    expect(existsSync(lockOf(path))).toBe(false);
    expect(await ben.hold(path, TWO)).toBeNull();
  });

  it('can be taken over, and the one before learns of it', async () => {
    const { path, ana, ben } = bench();
    await ana.hold(path, ONE);
    expect(await ben.hold(path, TWO, true)).toBeNull();
    expect(await ana.hold(path, ONE)).toMatchObject({ user: 'ben' });
  });

  it('is free when the process of the same machine and user died', async () => {
    const { path, ana, alive, program } = bench();
    await ana.hold(path, ONE);
    alive.delete(1);
    expect(await program('ana', 'bench-1', 2).hold(path, TWO)).toBeNull();
  });

  it('is free when nothing was heard of its holder for long', async () => {
    const { path, ana, ben, clock } = bench();
    await ana.hold(path, ONE);
    clock.now = new Date(Date.now() + GONE_AFTER_MS + 5_000);
    expect(await ben.hold(path, TWO)).toBeNull();
  });

  it('stays held while its holder renews it', async () => {
    const { path, ana, ben, clock } = bench();
    await ana.hold(path, ONE);
    clock.now = new Date(Date.now() + GONE_AFTER_MS - 1_000);
    await ana.hold(path, ONE);
    clock.now = new Date(Date.now() + GONE_AFTER_MS + 10_000);
    expect(await ben.hold(path, TWO)).toMatchObject({ user: 'ana' });
  });

  it('counts as held while its lock is unreadable and fresh, and as free when it is old', async () => {
    const { path, ben } = bench();
    writeFileSync(lockOf(path), '{"window"');
    expect(await ben.hold(path, TWO)).toMatchObject({ user: 'someone' });
    utimesSync(lockOf(path), new Date(0), new Date(0));
    expect(await ben.hold(path, TWO)).toBeNull();
    expect(JSON.parse(readFileSync(lockOf(path), 'utf8'))).toMatchObject({ user: 'ben' });
  });

  it('goes to exactly one of many who ask at once', async () => {
    const { path, program } = bench();
    const windows = Array.from({ length: 20 }, (_, i) => `0b7c3b52-5d8e-4d4f-9a52-5b7f5b0f3c${10 + i}`);
    const answers = await Promise.all(
      windows.map((w, i) => program(`user${i}`, `host${i}`, 1).hold(path, w)),
    );
    expect(answers.filter((a) => a === null)).toHaveLength(1);
  });

  it('gives the error of a folder that takes no lock', async () => {
    const { ana } = bench();
    const folder = tempFolder();
    mkdirSync(join(folder, 'x'));
    await expect(ana.hold(join(folder, 'gone', 'lamp.latchwork'), ONE)).rejects.toThrow(/ENOENT/);
  });
});

it('a process is known to run or not', () => {
  expect(isProcessAlive(process.pid)).toBe(true);
  expect(isProcessAlive(2 ** 22 + 1)).toBe(false);
});
