import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Handlers } from '@latchwork/core/bridge/contract';
import { diagnosticsText } from '../../../electron/services/diagnostics';
import { errorFacts, FileLog, framesOf, MemoryLog } from '../../../electron/services/log';
import { loggedHandlers } from '../../../electron/services/logged-handlers';
import { tempFolder } from '../temp-folder';

const now = () => new Date('2026-01-02T03:04:05Z');

describe('the log', () => {
  it('stands in the data folder, a line for each event', () => {
    const folder = tempFolder();
    const log = new FileLog(folder, now);
    log.write('call', { channel: 'project:save', status: 'saved', ms: 12 });
    expect(readFileSync(join(folder, 'logs', 'latchwork.log'), 'utf8')).toBe('2026-01-02T03:04:05.000Z call channel=project:save status=saved ms=12\n'); // prettier-ignore
  });

  it('rotates: it never grows beyond a few files of bounded size', () => {
    const folder = tempFolder();
    const log = new FileLog(folder, now);
    const word = 'x'.repeat(190);
    for (let i = 0; i < 6_000; i++) log.write('call', { channel: word, n: i });
    const files = readdirSync(join(folder, 'logs')).sort();
    expect(files).toEqual(['latchwork.log', 'latchwork.log.1', 'latchwork.log.2']);
    for (const name of files) expect(statSync(join(folder, 'logs', name)).size).toBeLessThan(257 * 1024);
    expect(readFileSync(join(folder, 'logs', 'latchwork.log'), 'utf8')).toContain('n=5999\n');
  });

  it('lets no sentence in: whatever could be content becomes dots', () => {
    const log = new MemoryLog();
    log.write('call', {
      a: 'Harness for the secret lamp',
      b: '/home/ana/lamp.latchwork',
      c: 'plain-word',
      d: 7,
    });
    expect(log.lines).toEqual(['call a=… b=… c=plain-word d=7']);
  });

  it('keeps of an error its kind and the places in the program', () => {
    const error = new TypeError('cannot read W12 of Secret lamp');
    error.stack =
      'TypeError: cannot read W12\n    at save (/home/ana/app/main.cjs:10:5)\n    at async run (file:///c/x/host.cjs:7:1)';
    expect(errorFacts(error)).toEqual({
      name: 'TypeError',
      code: 'none',
      at: 'save@main.cjs:10,run@host.cjs:7',
    });
    expect(framesOf('no stack')).toEqual([]);
  });

  it('does without a file where none can be written', () => {
    const folder = tempFolder();
    mkdirSync(join(folder, 'data'));
    writeFileSync(join(folder, 'data', 'logs'), 'in the way');
    const log = new FileLog(join(folder, 'data'), now);
    log.write('call');
    expect(log.recent()).toHaveLength(1);
  });
});

describe('calls', () => {
  it('are logged with what came of them and without what they carried', async () => {
    const log = new MemoryLog();
    const handlers = loggedHandlers(
      {
        'project:save': async () => ({ status: 'saved', revision: 'r' }),
        'project:on-disk': async () => ({ status: 'same' }),
        'settings:get': () => Promise.reject(new RangeError('Secret lamp')),
      } as unknown as Handlers,
      log,
    );
    await handlers['project:save']({ token: 't', text: 'Secret lamp', revision: null });
    await handlers['project:on-disk']({ token: 't', revision: 'r' });
    await expect(handlers['settings:get']({})).rejects.toThrow('Secret lamp');
    expect(log.lines).toHaveLength(2);
    expect(log.lines[0]).toMatch(/^call channel=project:save status=saved ms=\d+$/);
    expect(log.lines[1]).toMatch(/^fault channel=settings:get name=RangeError code=none at=\S+$/);
    expect(log.lines.join()).not.toContain('Secret');
    expect(diagnosticsText({ version: '1.2.3', host: 'browser' }, log)).toMatch(
      /Latchwork: 1\.2\.3 \(browser host\)[^]*Node v?\d+[^]*channel=project:save/,
    );
  });
});
