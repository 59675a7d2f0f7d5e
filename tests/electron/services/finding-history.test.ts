import { readFileSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { FindingHistory } from '../../../electron/services/finding-history';
import { tempFolder } from '../temp-folder';

const id = (n: number): string => `0b7c3b52-5d8e-4d4f-9a52-${String(n).padStart(12, '0')}`;
const record = { finding: id(1), says: id(2), first: '2026-03-01T10:00:00Z', changed: null };

let folder: string;
beforeEach(() => (folder = tempFolder()));
const files = (): string[] => readdirSync(join(folder, 'finding-history')).sort();

describe('the history of findings on this machine', () => {
  it('is there again in the next run, project by project', async () => {
    expect(await new FindingHistory(folder).write(id(7), [record])).toEqual({ status: 'done' });
    expect(await new FindingHistory(folder).read(id(7))).toEqual([record]);
    expect(await new FindingHistory(folder).read(id(8))).toBeNull();
  });

  it('holds ids and moments, nothing else', async () => {
    await new FindingHistory(folder).write(id(7), [record]);
    const text = readFileSync(join(folder, 'finding-history', files()[0]!), 'utf8');
    expect(
      text.replace(/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g, '').replace(/\d{4}-\d\d-\d\dT[\d:]+Z/g, ''),
    ).toMatch(/^[\s[\]{}":,]*(finding|says|first|changed|null|[\s[\]{}":,])*$/);
  });

  it('forgets the projects that were written longest ago', async () => {
    const history = new FindingHistory(folder, 2);
    for (const n of [1, 2]) {
      await history.write(id(n), [record]);
      utimesSync(join(folder, 'finding-history', `${id(n)}.json`), n, n);
    }
    await history.write(id(3), [record]);
    expect(files()).toEqual([`${id(2)}.json`, `${id(3)}.json`]);
    expect(await history.read(id(1))).toBeNull();
  });

  it('begins anew where its file is broken', async () => {
    const history = new FindingHistory(folder);
    await history.write(id(7), [record]);
    writeFileSync(join(folder, 'finding-history', `${id(7)}.json`), '[{"finding":');
    expect(await history.read(id(7))).toBeNull();
    await history.write(id(7), [record]);
    expect(await history.read(id(7))).toEqual([record]);
  });

  it('says so where it cannot write', async () => {
    writeFileSync(join(folder, 'finding-history'), 'a file in the way');
    expect(await new FindingHistory(folder).write(id(7), [record])).toMatchObject({ status: 'failed' });
  });

  it('takes no name of a file for a project', async () => {
    const history = new FindingHistory(folder);
    expect(() => history.read('../settings')).toThrow();
    expect(await history.write('../settings', [record])).toMatchObject({ status: 'failed' });
  });
});
