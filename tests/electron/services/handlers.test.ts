import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultSettings } from '@latchwork/core/bridge/settings';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { findingsReport } from '@latchwork/core/exports/findings-report';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { describe, expect, it } from 'vitest';
import { createHandlers, openServices } from '../../../electron/services/handlers';
import { type Dialogs, type Shell } from '../../../electron/services/shell';
import { tempFolder } from '../temp-folder';

const document = '0b7c3b52-5d8e-4d4f-9a52-5b7f5b0f3c11';
const demoText = JSON.stringify({ titleBlock: { title: 'Lamp', supplementaryTitle: 'A first harness' } });

interface Bench {
  readonly handlers: Handlers;
  readonly folder: string;
  readonly restart: () => Handlers;
}

function bench(shell: Partial<Shell> = {}): Bench {
  const folder = tempFolder();
  const places = {
    dataFolder: join(folder, 'data'),
    workFolder: join(folder, 'work'),
    demosFolder: join(folder, 'demos'),
    cataloguesFolder: join(folder, 'catalogues'),
    fontsFolder: join(process.cwd(), 'assets', 'fonts'),
    windowFolder: join(folder, 'window'),
  };
  mkdirSync(places.demosFolder);
  writeFileSync(join(places.demosFolder, 'lamp.latchwork'), demoText);
  writeFileSync(join(places.demosFolder, 'broken.latchwork'), '{');
  const whole: Shell = {
    host: 'browser',
    version: '1.2.3',
    dialogs: null,
    openExternal: async () => ({ status: 'here' }),
    initial: null,
    ...shell,
  };
  const restart = () =>
    createHandlers(
      openServices(places, () => new Date('2026-01-02T03:04:05Z')),
      whole,
    );
  return { handlers: restart(), folder, restart };
}

const dialogsAnswering = (path: string | null): Dialogs => ({
  openProject: async () => path,
  saveProject: async () => path,
  saveExport: async () => path,
  openCatalogue: async () => path,
  chooseFolder: async () => path,
});

async function savedProject({ handlers }: Bench, text = 'one') {
  const saved = await handlers['project:save-as']({ suggestedName: 'x', name: 'lamp', text, replace: false });
  if (saved.status !== 'saved') throw new Error(saved.status);
  return saved;
}

describe('saving and opening', () => {
  it('saves as, lists, opens again, the same', async () => {
    const b = bench();
    const saved = await savedProject(b, '{"a": "Ω"}\n');
    expect(saved.name).toBe('lamp.latchwork');
    expect(await b.handlers['project:list-folder']({})).toMatchObject({
      files: [{ name: 'lamp.latchwork', bytes: 12 }],
    });
    expect(await b.handlers['project:open']({ from: 'folder', name: 'lamp.latchwork' })).toEqual({
      status: 'opened',
      token: saved.token,
      name: 'lamp.latchwork',
      text: '{"a": "Ω"}\n',
      revision: saved.revision,
    });
  });

  it('never shows a path', async () => {
    const b = bench();
    const saved = await savedProject(b);
    const answers = [
      saved,
      await b.handlers['project:recent']({}),
      await b.handlers['project:open']({ from: 'token', token: saved.token }),
    ];
    expect(JSON.stringify(answers)).not.toContain(b.folder);
  });

  it('asks before it takes a name that is there', async () => {
    const b = bench();
    await savedProject(b, 'one');
    const again = { suggestedName: 'x', name: 'lamp.latchwork', text: 'two' };
    expect(await b.handlers['project:save-as']({ ...again, replace: false })).toEqual({
      status: 'exists',
      name: 'lamp.latchwork',
    });
    expect(readFileSync(join(b.folder, 'work', 'lamp.latchwork'), 'utf8')).toBe('one');
    expect(await b.handlers['project:save-as']({ ...again, replace: true })).toMatchObject({
      status: 'saved',
    });
    expect(readFileSync(join(b.folder, 'work', 'lamp.latchwork'), 'utf8')).toBe('two');
  });

  it('saves again and again with the revision it got', async () => {
    const b = bench();
    const { token, revision } = await savedProject(b);
    const second = await b.handlers['project:save']({ token, text: 'two', revision });
    if (second.status !== 'saved') throw new Error(second.status);
    expect(
      await b.handlers['project:save']({ token, text: 'three', revision: second.revision }),
    ).toMatchObject({
      status: 'saved',
    });
  });

  it('does not write over a change of somebody else', async () => {
    const b = bench();
    const { token, revision } = await savedProject(b);
    const path = join(b.folder, 'work', 'lamp.latchwork');
    writeFileSync(path, 'theirs');
    const answer = await b.handlers['project:save']({ token, text: 'mine', revision });
    expect(answer.status).toBe('changed-on-disk');
    expect(readFileSync(path, 'utf8')).toBe('theirs');
    expect(await b.handlers['project:on-disk']({ token, revision })).toMatchObject({ status: 'changed' });
    expect(await b.handlers['project:save']({ token, text: 'mine', revision: null })).toMatchObject({
      status: 'saved',
    });
    expect(readFileSync(path, 'utf8')).toBe('mine');
  });

  it('sees that nothing changed, and that a file is gone', async () => {
    const b = bench();
    const { token, revision } = await savedProject(b);
    expect(await b.handlers['project:on-disk']({ token, revision })).toEqual({ status: 'same' });
    rmSync(join(b.folder, 'work', 'lamp.latchwork'));
    expect(await b.handlers['project:on-disk']({ token, revision })).toEqual({ status: 'gone' });
    expect(await b.handlers['project:save']({ token, text: 'one', revision })).toMatchObject({
      status: 'saved',
    });
  });

  it('says why a save failed, and keeps the file', async () => {
    const b = bench();
    const { token, revision } = await savedProject(b);
    rmSync(join(b.folder, 'work'), { recursive: true });
    expect(await b.handlers['project:save']({ token, text: 'two', revision })).toEqual({
      status: 'failed',
      reason: 'The file or folder does not exist.',
    });
  });

  it.each(['../lamp.latchwork', '/etc/passwd', '..\\lamp.latchwork', 'settings.json', '.latchwork'])(
    'does not open %s',
    async (name) => {
      const b = bench();
      writeFileSync(join(b.folder, 'lamp.latchwork'), 'outside');
      expect(await b.handlers['project:open']({ from: 'folder', name })).toMatchObject({ status: 'failed' });
    },
  );

  it.each(['../x', 'a/b', 'con'])('does not save under %s', async (name) => {
    const b = bench();
    const request = { suggestedName: 'x', name, text: '', replace: true };
    expect(await b.handlers['project:save-as'](request)).toMatchObject({ status: 'failed' });
    expect(readdirSync(b.folder).filter((name) => name !== 'data')).toEqual(['demos']);
  });

  it('does not know a token of somebody else', async () => {
    const { handlers } = bench();
    expect(await handlers['project:save']({ token: 'x', text: '', revision: null })).toMatchObject({
      status: 'failed',
    });
    expect(await handlers['project:open']({ from: 'token', token: 'x' })).toMatchObject({ status: 'failed' });
  });

  it('refuses what is not UTF-8', async () => {
    const b = bench();
    mkdirSync(join(b.folder, 'work'));
    writeFileSync(join(b.folder, 'work', 'x.latchwork'), Buffer.from([0xff, 0xfe, 0x00]));
    expect(await b.handlers['project:open']({ from: 'folder', name: 'x.latchwork' })).toEqual({
      status: 'failed',
      reason: 'The file is not UTF-8 text.',
    });
  });

  it('remembers what was opened, also after a restart', async () => {
    const b = bench();
    await savedProject(b);
    const later = b.restart();
    const { recent } = await later['project:recent']({});
    expect(recent).toMatchObject([{ name: 'lamp.latchwork', opened: '2026-01-02T03:04:05.000Z' }]);
    expect(await later['project:open']({ from: 'recent', id: recent[0]!.id })).toMatchObject({ text: 'one' });
  });
});

describe('starting', () => {
  it('is empty when nothing was asked for', async () => {
    expect(await bench().handlers['project:initial']({})).toEqual({ status: 'empty' });
  });

  it('opens a demo as an unsaved copy', async () => {
    const { handlers } = bench({ initial: { demo: 'lamp' } });
    expect(await handlers['project:initial']({})).toEqual({
      status: 'opened',
      token: null,
      revision: null,
      name: 'lamp',
      text: demoText,
    });
  });

  it('says when the file is not there', async () => {
    const { handlers } = bench({ initial: { path: '/nowhere/x.latchwork' } });
    expect(await handlers['project:initial']({})).toMatchObject({ status: 'failed' });
  });

  it('lists the demos that can be read', async () => {
    expect(await bench().handlers['project:list-demos']({})).toEqual({
      demos: [{ demo: 'lamp', title: 'Lamp', supplementaryTitle: 'A first harness' }],
    });
  });

  it.each(['../work/x', 'nothing'])('opens no demo %s', async (demo) => {
    expect(await bench().handlers['project:new-from-demo']({ demo })).toMatchObject({ status: 'failed' });
  });
});

describe('dialogs of the system', () => {
  it('are asked where there are any', async () => {
    const folder = tempFolder();
    const path = join(folder, 'x');
    const { handlers } = bench({ host: 'electron', dialogs: dialogsAnswering(path) });
    const request = { suggestedName: 'x', name: null, text: 'one', replace: false };
    expect(await handlers['project:save-as'](request)).toMatchObject({
      status: 'saved',
      name: 'x.latchwork',
    });
    expect(readFileSync(`${path}.latchwork`, 'utf8')).toBe('one');
    expect((await handlers['app:info']({})).dialogs).toBe('native');
  });

  it('may be cancelled', async () => {
    const { handlers } = bench({ dialogs: dialogsAnswering(null) });
    const answers = [
      await handlers['project:open-dialog']({}),
      await handlers['project:save-as']({ suggestedName: 'x', name: null, text: '', replace: false }),
      await handlers['catalogue:import-dialog']({}),
    ];
    expect(answers).toEqual([{ status: 'cancelled' }, { status: 'cancelled' }, { status: 'cancelled' }]);
  });

  it('are not there in the browser host', async () => {
    const { handlers } = bench();
    expect(await handlers['project:open-dialog']({})).toMatchObject({ status: 'failed' });
    expect((await handlers['app:info']({})).dialogs).toBe('listed');
  });
});

describe('exporting', () => {
  const request = {
    suggestedName: 'parts list: lamp.csv',
    bytesBase64: Buffer.from('a;b\r\n').toString('base64'),
    mediaType: 'text/csv',
    filters: [{ name: 'CSV', extensions: ['csv'] }],
    name: null,
    replace: false,
  };

  it('writes the bytes beside the projects', async () => {
    const b = bench();
    expect(await b.handlers['file:export'](request)).toEqual({
      status: 'saved',
      name: 'parts list- lamp.csv',
    });
    expect(readFileSync(join(b.folder, 'work', 'exports', 'parts list- lamp.csv'), 'utf8')).toBe('a;b\r\n');
    expect(await b.handlers['file:export'](request)).toMatchObject({ status: 'exists' });
    expect(await b.handlers['file:export']({ ...request, replace: true })).toMatchObject({ status: 'saved' });
  });

  it.each(['../x.csv', 'a/b.csv'])('does not write to %s', async (name) => {
    expect(await bench().handlers['file:export']({ ...request, name })).toMatchObject({ status: 'failed' });
  });

  it('refuses bytes that did not arrive whole', async () => {
    const answer = await bench().handlers['file:export']({ ...request, bytesBase64: 'a?b=' });
    expect(answer).toMatchObject({ status: 'failed' });
  });

  it.each(['csv', 'json', 'xlsx'] as const)('writes a table as %s, under the same rules', async (format) => {
    const b = bench();
    const table = {
      id: 'list',
      title: 'List',
      head: [],
      columns: [{ key: 'wire', title: 'Wire' }],
      rows: [{ wire: 'W1' }],
      objects: [[]],
    };
    const wanted = { table, format, suggestedName: `list.${format}`, name: null, replace: false };
    expect(await b.handlers['table:export'](wanted)).toEqual({ status: 'saved', name: `list.${format}` });
    expect(readFileSync(join(b.folder, 'work', 'exports', `list.${format}`)).length).toBeGreaterThan(5);
    expect(await b.handlers['table:export'](wanted)).toMatchObject({ status: 'exists' });
  });
});

describe('a document as pages', () => {
  const harness = deriveHarness(tiny());
  const paper = findingsReport.paper!({ harness, check: checkHarness(harness, []), date: '2026-03-01' });
  const wanted = { paper, suggestedName: 'findings.pdf', name: null, replace: false };

  it('is drawn as PDF and written beside the other exports', async () => {
    const b = bench();
    expect(await b.handlers['paper:export'](wanted)).toEqual({ status: 'saved', name: 'findings.pdf' });
    const bytes = readFileSync(join(b.folder, 'work', 'exports', 'findings.pdf'));
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(await b.handlers['paper:export'](wanted)).toMatchObject({ status: 'exists' });
  }, 30_000);

  it('is shown as the very bytes that are written', async () => {
    const b = bench();
    await b.handlers['paper:export'](wanted);
    const answer = await b.handlers['paper:preview']({ paper });
    if (answer.status !== 'drawn') throw new Error(answer.reason);
    const written = readFileSync(join(b.folder, 'work', 'exports', 'findings.pdf'));
    expect(Buffer.from(answer.pdfBase64, 'base64').equals(written)).toBe(true);
  }, 30_000);

  it('has the shape that the contract asks for', () => {
    expect(Paper.parse(paper)).toEqual(paper);
    expect(Paper.safeParse({ ...paper, blocks: [{ kind: 'poem', text: 'x' }] }).success).toBe(false);
  });
});

describe('a document as a drawing', () => {
  const drawing = { widthMm: 50, heightMm: 20, items: [{ kind: 'circle' as const, at: { x: 10, y: 10 }, radiusMm: 5 }] }; // prettier-ignore

  it.each([
    ['svg', '<?xml'],
    ['dxf', '999'],
  ] as const)('is written as %s beside the other exports', async (format, start) => {
    const b = bench();
    const wanted = { drawing, title: 'Board', format, suggestedName: `board.${format}`, name: null, replace: false }; // prettier-ignore
    expect(await b.handlers['drawing:export'](wanted)).toEqual({ status: 'saved', name: `board.${format}` });
    const text = readFileSync(join(b.folder, 'work', 'exports', `board.${format}`), 'utf8');
    expect(text.startsWith(start)).toBe(true);
    expect(await b.handlers['drawing:export'](wanted)).toMatchObject({ status: 'exists' });
  });
});

describe('catalogues', () => {
  it('lists the bundled ones with their text', async () => {
    const b = bench();
    mkdirSync(join(b.folder, 'catalogues'));
    writeFileSync(join(b.folder, 'catalogues', 'demo.json'), '{}');
    expect(await b.handlers['catalogue:list']({})).toEqual({
      catalogues: [{ name: 'demo.json', text: '{}' }],
    });
  });

  it('reads one from the folder', async () => {
    const b = bench();
    mkdirSync(join(b.folder, 'work'));
    writeFileSync(join(b.folder, 'work', 'parts.csv'), 'kind\n');
    writeFileSync(join(b.folder, 'work', 'secret.key'), 'x');
    expect(await b.handlers['catalogue:list-folder']({})).toMatchObject({ files: [{ name: 'parts.csv' }] });
    expect(await b.handlers['catalogue:import']({ name: 'parts.csv' })).toEqual({
      status: 'opened',
      name: 'parts.csv',
      bytesBase64: Buffer.from('kind\n').toString('base64'),
    });
    expect(await b.handlers['catalogue:import']({ name: 'secret.key' })).toMatchObject({ status: 'failed' });
    expect(await b.handlers['catalogue:import']({ name: '../parts.csv' })).toMatchObject({
      status: 'failed',
    });
  });
});

describe('backups', () => {
  const unsaved = { document, token: null, revision: null, name: 'lamp', text: 'unsaved' };

  it('bring unsaved work back after a restart, and go when discarded', async () => {
    const b = bench();
    expect(await b.handlers['backup:write'](unsaved)).toEqual({ status: 'done' });
    const later = b.restart();
    expect((await later['backup:list']({})).backups).toMatchObject([{ document, name: 'lamp' }]);
    expect(await later['backup:open']({ document })).toMatchObject({ text: 'unsaved', token: null });
    await later['backup:discard']({ document });
    expect((await later['backup:list']({})).backups).toEqual([]);
    expect(await later['backup:discard']({ document })).toEqual({ status: 'done' });
  });

  it('stay outside the file and keep its revision', async () => {
    const b = bench();
    const { token, revision } = await savedProject(b);
    await b.handlers['backup:write']({ ...unsaved, token, revision });
    expect(readFileSync(join(b.folder, 'work', 'lamp.latchwork'), 'utf8')).toBe('one');
    writeFileSync(join(b.folder, 'work', 'lamp.latchwork'), 'theirs');
    const later = b.restart();
    const opened = await later['backup:open']({ document });
    if (opened.status !== 'opened' || !opened.token) throw new Error('not opened');
    const save = { token: opened.token, text: opened.text, revision: opened.revision };
    expect((await later['project:save'](save)).status).toBe('changed-on-disk');
  });
});

describe('settings', () => {
  it('start with defaults, survive a restart, and a damaged file falls back', async () => {
    const b = bench();
    expect(await b.handlers['settings:get']({})).toEqual(defaultSettings);
    await b.handlers['settings:set']({ ...defaultSettings, theme: 'dark', panelSizesPx: { shelf: 240 } });
    expect(await b.restart()['settings:get']({})).toMatchObject({
      theme: 'dark',
      panelSizesPx: { shelf: 240 },
    });
    writeFileSync(join(b.folder, 'data', 'settings.json'), '{"theme":');
    expect(await b.restart()['settings:get']({})).toEqual(defaultSettings);
  });
});

describe('addresses', () => {
  it.each(['https://example.org/a?b#c', 'http://example.org'])('hands on %s', async (url) => {
    expect(await bench().handlers['shell:open-external']({ url })).toEqual({ status: 'here' });
  });

  it.each([
    'file:///etc/passwd',
    'javascript:alert(1)',
    'smb://x',
    'mailto:a@b',
    'x',
    '',
    'https://a:b@example.org',
  ])('refuses %j', async (url) => {
    let opened = false;
    const openExternal = async () => {
      opened = true;
      return { status: 'here' } as const;
    };
    expect(await bench({ openExternal }).handlers['shell:open-external']({ url })).toMatchObject({
      status: 'refused',
    });
    expect(opened).toBe(false);
  });
});
