import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import DxfParser from 'dxf-parser';
import ExcelJS from 'exceljs';
import { unzipSync } from 'fflate';
import { XmlDocument } from 'libxml2-wasm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { baselineOf, withoutOwnBaseline } from '@latchwork/core/model/baseline';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { makeRelease, packageStem } from '../../../../electron/services/release';
import { readPdf } from '../pdf-figures';
import { demoProject, released } from '../../released';

const making = { fontsFolder: join(process.cwd(), 'assets', 'fonts') };

async function packageOf(project: Project, folder: string) {
  const made = await makeRelease(project, folder, making);
  if (made.status !== 'made') throw new Error(JSON.stringify(made));
  const stem = packageStem(project);
  const zip = new Uint8Array(readFileSync(join(folder, `${stem}.zip`)));
  return { folder, made, stem, zip, entries: unzipSync(zip) };
}

/** What a reader of another make finds in a file as text; white space as one blank. */
async function textOf(path: string, bytes: Uint8Array): Promise<string> {
  const ending = path.split('.').at(-1) ?? '';
  if (ending === 'pdf') return (await readPdf(bytes.slice())).map((p) => p.words).join(' ');
  if (ending === 'xlsx') {
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(Buffer.from(bytes) as unknown as ExcelJS.Buffer);
    const cells: string[] = [];
    book.worksheets[0]!.eachRow((row) => row.eachCell((cell) => void cells.push(String(cell.value))));
    return cells.join(' ');
  }
  const text = Buffer.from(bytes).toString('utf8');
  if (['svg', 'xml', 'vec', 'kbl'].includes(ending)) {
    const doc = XmlDocument.fromString(text);
    const content = doc.root.content;
    doc.dispose();
    return content;
  }
  if (ending === 'dxf') {
    const entities = (new DxfParser().parseSync(text)?.entities ?? []) as { text?: string }[];
    return entities.map((e) => e.text ?? '').join(' ');
  }
  return text;
}

const squeezed = (text: string): string => text.replace(/\s+/g, '');

describe.each(['bench-lamp', 'weather-station'])('the package of %s', { timeout: 240_000 }, (name) => {
  const project = released(demoProject(name));
  const baseline = baselineOf(project);
  const folder = mkdtempSync(join(tmpdir(), 'latchwork-package-'));
  let opened: ReturnType<typeof packageOf>;
  beforeAll(() => void (opened = packageOf(project, folder)));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('lists every file with its size and hash, in the manifest and for sha256sum', async () => {
    const { entries, stem } = await opened;
    const sum = (path: string): string =>
      createHash('sha256').update(entries[`${stem}/${path}`]!).digest('hex');
    const lines = Buffer.from(entries[`${stem}/SHA256SUMS`]!).toString('utf8').trimEnd().split('\n');
    expect(lines.map((l) => l.slice(66))).toEqual(Object.keys(entries).map((p) => p.slice(stem.length + 1)).filter((p) => p !== 'SHA256SUMS')); // prettier-ignore
    for (const line of lines) expect(line).toBe(`${sum(line.slice(66))}  ${line.slice(66)}`);
    const manifest = JSON.parse(Buffer.from(entries[`${stem}/manifest.json`]!).toString('utf8'));
    expect(manifest).toMatchObject({
      format: 'latchwork-release',
      formatVersion: 1,
      revision: 'A',
      baseline,
      date: '2026-03-01',
    });
    for (const f of manifest.files) expect([f.path, f.bytes, f.sha256]).toEqual([f.path, entries[`${stem}/${f.path}`]!.length, sum(f.path)]); // prettier-ignore
    expect(manifest.files.length).toBe(Object.keys(entries).length - 2);
  });

  it('V6: every file names the one baseline, title, number, revision, limit set and caution', async () => {
    const { entries, stem } = await opened;
    const said = [baseline, project.titleBlock.title, project.titleBlock.identificationNumber, `${project.limitSet.name}, revision ${project.limitSet.revision}`, AID_NOT_AUTHORITY]; // prettier-ignore
    const lacking: string[] = [];
    for (const [path, bytes] of Object.entries(entries)) {
      // The hash of the project file is the baseline; the sums are bare hashes, the baseline among them.
      if (path === `${stem}/${stem}.latchwork`) continue;
      const text = squeezed(await textOf(path, bytes));
      const wanted = path.endsWith('SHA256SUMS') ? [baseline] : said;
      for (const s of wanted) if (!text.includes(squeezed(s))) lacking.push(`${path} lacks ${s}`);
      const revision = /revision"?:?A(?:\(|"|,)|Revision:?A|RevisionA|EX-000\d-A|version>?A/i;
      if (!revision.test(text) && !/\.(vec|kbl|xml)$/.test(path)) lacking.push(`${path} lacks its revision`);
    }
    expect(lacking).toEqual([]);
  });

  it('holds a project file whose hash is the baseline and that opens as what was released', async () => {
    const { entries, stem } = await opened;
    const bytes = entries[`${stem}/${stem}.latchwork`]!;
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(baseline);
    const read = parseProject(Buffer.from(bytes).toString('utf8'));
    expect(read.ok && serialiseProject(read.value)).toBe(serialiseProject(withoutOwnBaseline(project)));
  });

  it('holds tables with a heading and as many rows in CSV as in XLSX', async () => {
    const { entries, stem } = await opened;
    const tables = Object.keys(entries).filter((p) => p.endsWith('.csv'));
    expect(tables.length).toBeGreaterThan(12);
    for (const path of tables) {
      const rows = parse(Buffer.from(entries[path]!), { relax_column_count: false }) as string[][];
      const book = new ExcelJS.Workbook();
      await book.xlsx.load(Buffer.from(entries[path.replace('.csv', '.xlsx')]!) as unknown as ExcelJS.Buffer);
      const sheet = book.worksheets[0]!;
      let heading = 0;
      sheet.eachRow((row, n) => { if (heading === 0 && row.getCell(1).value === rows[0]![0] && sheet.getRow(n - 1).cellCount === 0) heading = n; }); // prettier-ignore
      expect([path, sheet.rowCount - heading]).toEqual([path, rows.length - 1]);
    }
    expect(tables.every((t) => t.startsWith(`${stem}/tables/${stem}-`))).toBe(true);
  });

  it('is the same to the byte when it is made again, and says that it stood there', async () => {
    await opened;
    expect(await makeRelease(project, folder, making)).toMatchObject({ status: 'made', stoodAlready: true });
  });
});

describe('a package that stands already', { timeout: 120_000 }, () => {
  const project = released(demoProject('bench-lamp'));
  const stem = packageStem(project);
  const folder = mkdtempSync(join(tmpdir(), 'latchwork-package-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('stays the same after a decision was recorded since, and gets back what is missing of it', async () => {
    const { zip } = await packageOf(project, folder);
    const decided = dispatch(
      startHistory(project),
      { id: 'decision.add', args: { decision: { kind: 'concession', finding: 'x', rule: 'x', ruleRevision: 1, requirement: 'r', measured: 'm', limit: 'l', reason: 'because', requester: 'Example', approvals: [{ name: 'Sample', role: 'quality', date: '2026-03-02' }], decidedOn: '2026-03-02', quantity: 2, basis: { severity: 'minor', result: 'fail', values: [] } } } }, // prettier-ignore
      { newId: () => crypto.randomUUID(), catalogue: [] },
    );
    if (!decided.ok) throw new Error(decided.problem.reason);
    rmSync(join(folder, `${stem}.zip`));
    const later = await packageOf(decided.value.project, folder);
    expect(later.made.stoodAlready).toBe(false);
    expect(Buffer.compare(later.zip, zip)).toBe(0);
  });

  it('is not overwritten by the same revision with other content', async () => {
    const draft = demoProject('bench-lamp');
    const other = released({ ...draft, notes: [...draft.notes, 'Another note.'] });
    const refused = await makeRelease(other, folder, making);
    expect(refused).toMatchObject({
      status: 'failed',
      reason: expect.stringContaining('same revision with other content'),
    });
  });

  it('is left alone once it was touched', async () => {
    writeFileSync(join(folder, stem, 'README.txt'), 'mine');
    const touched = await makeRelease(project, folder, making);
    expect(touched).toMatchObject({ status: 'failed', reason: expect.stringContaining('README.txt') });
    expect(readFileSync(join(folder, stem, 'README.txt'), 'utf8')).toBe('mine');
    expect(readdirSync(folder).sort()).toEqual([stem, `${stem}.zip`]);
  });
});
