import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Handlers } from '@latchwork/core/bridge/contract';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import type { Project } from '@latchwork/core/model/project';
import { takeOpened } from '../../../renderer/app/files/opened';
import { save } from '../../../renderer/app/files/save';
import { appStore, isDirty } from '../../../renderer/app/store';
import { fakeHost, freshWindow, openWindow, project } from '../window';

const done = async () => ({ status: 'done' as const });
const ELSEWHERE = {
  status: 'held-elsewhere',
  user: 'ana',
  host: 'bench-2',
  since: '2026-01-02T03:04:05Z',
} as const;

/** A file on a disk that this window and another program write. */
function sharedFile(more: Partial<Handlers> = {}) {
  const file = { text: serialiseProject(project()), revision: 'r1' };
  const { asked } = fakeHost({
    'project:recent': async () => ({ recent: [] }),
    'backup:discard': done,
    'project:let-go': done,
    'project:hold': async () => ({ status: 'held' }),
    'project:open': async () => ({ status: 'opened', token: 't', name: 'lamp.latchwork', ...file }),
    'project:save': async ({ text, revision }) => {
      if (revision !== null && revision !== file.revision)
        return { status: 'changed-on-disk', revision: file.revision };
      Object.assign(file, { text, revision: `${file.revision}+` });
      return { status: 'saved', revision: file.revision };
    },
    ...more,
  });
  const open = () => takeOpened({ status: 'opened', token: 't', name: 'lamp.latchwork', ...file });
  const written = (): Project => {
    const parsed = parseProject(file.text);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
    return parsed.value;
  };
  const change = (edit: (p: Project) => Project): void => {
    Object.assign(file, { text: serialiseProject(edit(written())), revision: 'theirs' });
  };
  return { asked, open, written, change };
}

const wireNote = (p: Project, i: number, note: string): Project => ({
  ...p,
  wires: p.wires.map((w, k) => (k === i ? { ...w, note } : w)),
});
const note = (i: number, text: string) =>
  appStore
    .getState()
    .dispatch({ id: 'wire.edit', args: { ids: [project().wires[i]!.id], change: { note: text } } });
const press = async (name: string) => {
  const find = () =>
    [...document.querySelectorAll<HTMLElement>('[role=dialog] button')].find((b) => b.textContent === name);
  await expect.poll(find).toBeTruthy();
  await userEvent.click(find()!);
};

beforeEach(() => freshWindow());

describe('a file that someone else changed meanwhile', () => {
  it('is merged by object: both changes are in the file, and one step back takes theirs out of the window', async () => {
    const disk = sharedFile();
    await disk.open();
    await openWindow();
    note(0, 'mine');
    disk.change((p) => wireNote(p, 1, 'theirs'));
    const saved = save();
    await press('Compare and merge');
    await expect
      .poll(() => document.querySelector('[role=dialog]')?.textContent)
      .toContain('Both sides fit together');
    expect(document.querySelector('section[aria-label="Changed on disk"]')?.textContent).toContain('theirs');
    await press('Merge');
    expect(await saved).toBe(true);
    expect(disk.written().wires.map((w) => w.note)).toEqual(['mine', 'theirs']);
    expect(isDirty(appStore.getState())).toBe(false);
    appStore.getState().undo();
    expect(project().wires.map((w) => w.note)).toEqual(['mine', undefined]);
  });

  it('asks where both changed the same value', async () => {
    const disk = sharedFile();
    await disk.open();
    const screen = await openWindow();
    note(0, 'mine');
    disk.change((p) => wireNote(p, 0, 'theirs'));
    const saved = save();
    await press('Compare and merge');
    await expect.element(screen.getByRole('button', { name: 'Merge', exact: true })).toBeDisabled();
    await userEvent.click(screen.getByRole('radio', { name: /On disk: theirs/ }));
    await press('Merge');
    expect(await saved).toBe(true);
    expect(disk.written().wires[0]?.note).toBe('theirs');
  });

  it('stays untouched when the merge is cancelled, and the work stays here', async () => {
    const disk = sharedFile();
    await disk.open();
    await openWindow();
    note(0, 'mine');
    disk.change((p) => wireNote(p, 1, 'theirs'));
    const saved = save();
    await press('Compare and merge');
    await press('Cancel');
    expect(await saved).toBe(false);
    expect(disk.written().wires.map((w) => w.note)).toEqual([undefined, 'theirs']);
    expect(project().wires[0]?.note).toBe('mine');
    expect(isDirty(appStore.getState())).toBe(true);
  });

  it('is asked about value by value where the common state is not known, as after a crash', async () => {
    const disk = sharedFile();
    await disk.open();
    await openWindow();
    note(0, 'mine');
    appStore.getState().setDocument({ base: null });
    disk.change((p) => wireNote(p, 1, 'theirs'));
    const saved = save();
    await press('Compare and merge');
    await expect.poll(() => document.querySelectorAll('[role=dialog] fieldset').length).toBe(2);
    await press('Cancel');
    expect(await saved).toBe(false);
  });
});

describe('a file that someone else works on', () => {
  it('says who it is, and is written only after it was taken over', async () => {
    let holder: 'ana' | 'me' = 'ana';
    const disk = sharedFile({
      'project:hold': async ({ takeOver }) => {
        if (takeOver) holder = 'me';
        return holder === 'me' ? { status: 'held' } : ELSEWHERE;
      },
    });
    await disk.open();
    const screen = await openWindow();
    await expect.element(screen.getByText('open elsewhere: ana')).toBeVisible();
    note(0, 'mine');
    const refused = save();
    await expect.poll(() => document.querySelector('[role=dialog]')?.textContent).toContain('ana on bench-2');
    await userEvent.keyboard('{Escape}');
    expect(await refused).toBe(false);
    expect(disk.written().wires[0]?.note).toBeUndefined();
    const saved = save();
    await press('Take it over and save');
    expect(await saved).toBe(true);
    expect(disk.written().wires[0]?.note).toBe('mine');
    await expect.element(screen.getByText(/^saved \d\d:\d\d$/)).toBeVisible();
  });

  it('is given free when another is opened in its place', async () => {
    const disk = sharedFile();
    await disk.open();
    await disk.open();
    expect(disk.asked.map((a) => a.channel).filter((c) => /hold|let-go/.test(c))).toEqual(['project:hold', 'project:let-go', 'project:hold']); // prettier-ignore
  });
});
