import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Handlers } from '@latchwork/core/bridge/contract';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { keepBackups, offerBackups } from '../../../renderer/app/files/backups';
import { exportTable } from '../../../renderer/app/files/export-table';
import { mayReplace, openFile } from '../../../renderer/app/files/open';
import { takeOpened } from '../../../renderer/app/files/opened';
import { save, saveAs } from '../../../renderer/app/files/save';
import { hostStore } from '../../../renderer/app/host';
import { appStore, isDirty } from '../../../renderer/app/store';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { fakeHost, freshWindow, openWindow, project } from '../window';

const done = async () => ({ status: 'done' as const });
const recent = async () => ({ recent: [] });
const base: Partial<Handlers> = { 'project:recent': recent, 'backup:discard': done };
const host = (more: Partial<Handlers>) => fakeHost({ ...base, ...more });
const rename = (designator: string) =>
  appStore
    .getState()
    .dispatch({ id: 'wire.edit', args: { ids: [project().wires[0]!.id], change: { designator } } });
const press = (name: string | RegExp) => {
  const button = [...document.querySelectorAll<HTMLElement>('[role=dialog] button')].find((b) =>
    typeof name === 'string' ? b.textContent === name : name.test(b.textContent),
  );
  if (!button) throw new Error(`no button ${String(name)}`);
  return userEvent.click(button);
};
const dialogText = () => document.querySelector('[role=dialog]')?.textContent ?? '';

beforeEach(() => freshWindow());

describe('saving', () => {
  it('asks for a name the first time, then saves over its own revision', async () => {
    const { asked } = host({
      'project:save-as': async ({ name }) => ({
        status: 'saved',
        token: 't1',
        name: name ?? '?',
        revision: 'r1',
      }),
      'project:save': async () => ({ status: 'saved', revision: 'r2' }),
    });
    const screen = await openWindow();
    rename('W9');
    const first = save();
    await userEvent.fill(screen.getByLabelText('File name'), 'lamp');
    await press('Save');
    expect(await first).toBe(true);
    expect(appStore.getState().document).toMatchObject({
      token: 't1',
      name: 'lamp.latchwork',
      revision: 'r1',
    });
    expect(isDirty(appStore.getState())).toBe(false);
    await expect.element(screen.getByText(/^saved \d\d:\d\d$/)).toBeVisible();
    rename('W10');
    await expect.element(screen.getByText('changes not saved')).toBeVisible();
    expect(await save()).toBe(true);
    const sent = asked.filter((a) => a.channel === 'project:save').at(-1)!.request as {
      text: string;
      revision: string;
    };
    expect(sent.revision).toBe('r1');
    expect(parseProject(sent.text)).toEqual({ ok: true, value: project() });
  });

  it('asks before it writes over another file', async () => {
    const replaced: boolean[] = [];
    host({
      'project:save-as': async ({ replace, name }) => {
        replaced.push(replace);
        return replace
          ? { status: 'saved', token: 't', name: name!, revision: 'r' }
          : { status: 'exists', name: name! };
      },
    });
    await openWindow();
    const saved = saveAs();
    await expect.poll(dialogText).toContain('File name');
    await press('Save');
    await expect.poll(dialogText).toContain('exists already');
    expect(appStore.getState().document.token).toBeNull();
    await press('Write over it');
    expect(await saved).toBe(true);
    expect(replaced).toEqual([false, true]);
  });

  it('keeps the work and says so when the disk refuses', async () => {
    host({ 'project:save': async () => ({ status: 'failed', reason: 'The disk is full.' }) });
    appStore.getState().setDocument({ token: 't', revision: 'r' });
    const screen = await openWindow();
    rename('W9');
    expect(await save()).toBe(false);
    await expect
      .element(screen.getByRole('log'))
      .toHaveTextContent('Not saved. The disk is full. Your work is still here.');
    expect(isDirty(appStore.getState())).toBe(true);
  });

  it('writes over a file that someone else changed only when told to', async () => {
    const { asked } = host({
      'project:save': async ({ revision }) =>
        revision === null
          ? { status: 'saved', revision: 'mine' }
          : { status: 'changed-on-disk', revision: 'theirs' },
    });
    appStore.getState().setDocument({ token: 't', revision: 'r' });
    await openWindow();
    rename('W9');
    const saved = save();
    await expect.poll(dialogText).toContain('changed by someone else');
    await press('Write over theirs');
    expect(await saved).toBe(true);
    const revisions = asked.flatMap((a) =>
      a.channel === 'project:save' ? [(a.request as { revision: unknown }).revision] : [],
    );
    expect(revisions).toEqual(['r', null]);
  });

  it('keeps edits made while the host was writing unsaved', async () => {
    let finish: (() => void) | null = null;
    host({
      'project:save': () =>
        new Promise((resolve) => {
          finish = () => resolve({ status: 'saved', revision: 'r2' });
        }),
    });
    appStore.getState().setDocument({ token: 't', revision: 'r' });
    rename('W9');
    const saved = save();
    await expect.poll(() => finish).not.toBeNull();
    rename('W10');
    finish!();
    await saved;
    expect(isDirty(appStore.getState())).toBe(true);
  });
});

describe('opening', () => {
  it('asks before unsaved work is replaced', async () => {
    await openWindow();
    rename('W9');
    const stay = mayReplace();
    await expect.poll(dialogText).toContain('Save your changes first?');
    await userEvent.keyboard('{Escape}');
    expect(await stay).toBe(false);
    host({});
    const go = mayReplace();
    await expect.poll(dialogText).toContain('Save your changes first?');
    await press('Do not save');
    expect(await go).toBe(true);
  });

  it('lists the files of the working folder and opens the one chosen', async () => {
    const text = serialiseProject(tiny((t) => void (t.project.titleBlock.title = 'From disk')));
    host({
      'project:list-folder': async () => ({
        status: 'listed',
        place: 'folder',
        files: [{ name: 'a.latchwork', bytes: 2048, modified: '2026-03-14T10:42:00.000Z' }],
      }),
      'project:open': async () => ({
        status: 'opened',
        token: 't',
        name: 'a.latchwork',
        text,
        revision: 'r',
      }),
    });
    const screen = await openWindow();
    const opened = openFile();
    await userEvent.dblClick(screen.getByRole('option', { name: /a\.latchwork/ }));
    await opened;
    expect(project().titleBlock.title).toBe('From disk');
    expect(isDirty(appStore.getState())).toBe(false);
  });

  it('leaves everything as it is when the file cannot be read', async () => {
    const screen = await openWindow();
    const before = project();
    expect(
      await takeOpened({
        status: 'opened',
        token: 't',
        name: 'b.latchwork',
        text: '{"format": 1',
        revision: 'r',
      }),
    ).toBe(false);
    expect(project()).toBe(before);
    await expect
      .element(screen.getByRole('log'))
      .toHaveTextContent('b.latchwork was not opened, and was not changed.');
  });
});

describe('a host with dialogs of its own', () => {
  it('is asked for the place, and answers what became of it', async () => {
    const text = serialiseProject(tiny((t) => void (t.project.titleBlock.title = 'Chosen')));
    const { asked } = host({
      'project:open-dialog': async () => ({
        status: 'opened',
        token: 't',
        name: 'c.latchwork',
        text,
        revision: 'r',
      }),
      'project:save-as': async () => ({ status: 'cancelled' }),
    });
    hostStore.setState({ info: { ...hostStore.getState().info!, dialogs: 'native' } });
    await openFile();
    expect(project().titleBlock.title).toBe('Chosen');
    expect(await saveAs()).toBe(false);
    expect(asked.find((a) => a.channel === 'project:save-as')?.request).toMatchObject({
      name: null,
      suggestedName: 'c.latchwork',
    });
  });
});

describe('backups', () => {
  it('are written while there is unsaved work, once per change', async () => {
    const { asked } = host({ 'backup:write': done });
    const stop = keepBackups(20);
    const written = () => asked.filter((a) => a.channel === 'backup:write').length;
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(written()).toBe(0);
    rename('W9');
    await expect.poll(written).toBe(1);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(written()).toBe(1);
    stop();
  });

  it('are offered after a crash and opened as unsaved work', async () => {
    const document = crypto.randomUUID();
    const text = serialiseProject(tiny((t) => void (t.project.titleBlock.title = 'Rescued')));
    host({
      'backup:list': async () => ({
        backups: [{ document, name: 'lamp', written: '2026-03-14T10:42:00.000Z' }],
      }),
      'backup:open': async () => ({ status: 'opened', token: null, name: 'lamp', text, revision: null }),
    });
    await openWindow();
    const offered = offerBackups();
    await expect.poll(dialogText).toContain('was not saved');
    await press('Go on with it');
    expect(await offered).toBe(true);
    expect(project().titleBlock.title).toBe('Rescued');
    expect(isDirty(appStore.getState())).toBe(true);
    expect(appStore.getState().document.id).toBe(document);
  });
});

describe('exporting', () => {
  it('hands the whole table to the host under the chosen name', async () => {
    const { asked } = host({ 'table:export': async ({ name }) => ({ status: 'saved', name: name! }) });
    const screen = await openWindow();
    const { harness, check } = appStore.getState();
    const table = EXPORTERS.find((e) => e.id === 'connection-table')!.table({
      harness,
      check,
      date: '2026-03-01',
    });
    const exported = exportTable(table, 'csv');
    await userEvent.fill(screen.getByLabelText('File name'), 'wires');
    await press('Save');
    await exported;
    expect(asked.at(-1)).toMatchObject({
      channel: 'table:export',
      request: { format: 'csv', name: 'wires.csv', replace: false },
    });
    expect((asked.at(-1)!.request as { table: typeof table }).table.rows).toHaveLength(2);
    await expect.element(screen.getByRole('log')).toHaveTextContent('Exported wires.csv');
  });
});
