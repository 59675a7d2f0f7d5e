import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import ExcelJS from 'exceljs';
import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { tiny } from '@latchwork/core/model/tiny';
import { bench, type Bench } from './bench';

let b: Bench;
let file: string;
beforeEach(async () => {
  b = await bench();
  file = await b.save('tiny.latchwork', tiny());
});
afterEach(() => b.remove());

const exported = (document: string, format: string, out: string) =>
  b.run('export', file, '--document', document, '--format', format, '--out', b.path(out));

describe('latchwork export', () => {
  it('writes a parts list as CSV, talks on stderr, and leaves no other file behind', async () => {
    const { code, out, err } = await exported('parts-list', 'csv', 'parts.csv');
    expect([code, out]).toEqual([0, '']);
    expect(err).toContain('Parts list, 10 rows, written to');
    expect(err).toContain('Checked against the limits entered.');
    const rows = parse(await b.read('parts.csv'), { columns: true }) as Record<string, string>[];
    expect(rows).toHaveLength(10);
    expect(rows.find((r) => r['Part number'] === 'C-PIN')).toMatchObject({ Quantity: '2', Unit: 'pcs' });
    expect(await b.files()).toEqual(['parts.csv', 'tiny.latchwork']);
  });

  it('writes a connection table as XLSX', async () => {
    expect((await exported('connection-table', 'xlsx', 'wires.xlsx')).code).toBe(0);
    const book = new ExcelJS.Workbook();
    await book.xlsx.load((await b.bytes('wires.xlsx')) as unknown as ExcelJS.Buffer);
    const column = book.worksheets[0]!.getColumn(1).values;
    expect(column.slice(-3)).toEqual(['Wire', 'W1', 'W2']);
  });

  it('writes a findings report as JSON with head and rows', async () => {
    expect((await exported('findings-report', 'json', 'findings.json')).code).toBe(0);
    const document = JSON.parse(await b.read('findings.json'));
    expect(document).toMatchObject({ format: 'latchwork-document', formatVersion: 1, document: 'findings-report', rows: [] }); // prettier-ignore
    expect(document.head).toContainEqual({ label: 'Title', value: 'Tiny example' });
  });

  test.each(['csv', 'xlsx', 'json'])(
    'gives the same bytes twice as %s, over the file that was there',
    async (format) => {
      await exported('parts-list', format, 'x');
      const first = await b.bytes('x');
      await b.write('x', 'something else');
      await exported('parts-list', format, 'x');
      expect(Buffer.compare(first, await b.bytes('x'))).toBe(0);
    },
  );

  it('holds the records against a catalogue that is given, and does not write over it', async () => {
    const parts = tiny().parts.map((part) => ({ ...part, massG: 7 }));
    const catalogue = await b.write('later.json', JSON.stringify({ format: 'latchwork-catalogue', formatVersion: 1, name: 'Example parts', revision: '2', parts })); // prettier-ignore
    const write = (out: string, with_: string) =>
      b.run('export', file, '--document', 'findings-report', '--format', 'json', '--out', b.path(out), '--catalogue', with_); // prettier-ignore
    expect((await write('findings.json', catalogue)).code).toBe(0);
    const { rows } = JSON.parse(await b.read('findings.json')) as { rows: { rule: string }[] };
    expect(new Set(rows.map((r) => r.rule))).toEqual(new Set(['part-changed']));
    const over = await write('later.json', catalogue);
    expect(over.code).toBe(2);
    const missing = await write('more.json', b.path('nowhere.json'));
    expect([missing.code, missing.err]).toEqual([2, expect.stringContaining('nowhere.json')]);
  });

  it('writes a findings report as PDF, the same bytes for the same day', async () => {
    const pdf = (out: string, day: string) =>
      b.run('export', file, '--document', 'findings-report', '--format', 'pdf', '--out', b.path(out), '--date', day); // prettier-ignore
    expect((await pdf('a.pdf', '2026-03-01')).code).toBe(0);
    await pdf('b.pdf', '2026-03-01');
    await pdf('c.pdf', '2026-03-02');
    const [x, y, z] = await Promise.all(['a.pdf', 'b.pdf', 'c.pdf'].map((f) => b.bytes(f)));
    expect(x!.subarray(0, 5).toString()).toBe('%PDF-');
    expect(Buffer.compare(x!, y!)).toBe(0);
    expect(Buffer.compare(x!, z!)).not.toBe(0);
  }, 30_000);

  it('writes the formboard as SVG and DXF at true size, and as PDF on the sheets asked for', async () => {
    const out = (format: string, name: string, ...more: string[]) =>
      b.run('export', file, '--document', 'formboard', '--format', format, '--out', b.path(name), ...more);
    expect((await out('svg', 'board.svg')).code).toBe(0);
    expect(await b.read('board.svg')).toMatch(/<svg [^>]*width="[\d.]+mm"/);
    expect((await out('dxf', 'board.dxf')).code).toBe(0);
    expect(await b.read('board.dxf')).toContain('AC1009');
    expect((await out('pdf', 'a4.pdf')).code).toBe(0);
    expect((await out('pdf', 'a2.pdf', '--sheet-size', 'A2')).code).toBe(0);
    const [small, large] = await Promise.all([b.bytes('a4.pdf'), b.bytes('a2.pdf')]);
    const count = (pdf: Buffer): number => pdf.toString('latin1').split('/Type /Page\n').length - 1;
    expect(count(small)).toBeGreaterThan(count(large));
  }, 60_000);

  it('puts the baseline into the head: the SHA-256 of the file as the program writes it', async () => {
    await exported('parts-list', 'json', 'parts.json');
    const { head } = JSON.parse(await b.read('parts.json')) as { head: { label: string; value: string }[] };
    const hash = createHash('sha256').update(await b.bytes('tiny.latchwork')).digest('hex'); // prettier-ignore
    expect(head).toContainEqual({ label: 'Baseline (SHA-256)', value: hash });
  });

  test.each([
    ['a document that is not made as pages', ['--document', 'vec', '--format', 'pdf', '--out', 'x'], 'not made as PDF'],
    ['a document that is no drawing', ['--document', 'parts-list', '--format', 'svg', '--out', 'x'], 'not made as a drawing'],
    ['a sheet size for a document that is not cut', ['--document', 'parts-list', '--format', 'csv', '--out', 'x', '--sheet-size', 'A3'], 'has no --sheet-size'],
    ['an unknown sheet size', ['--document', 'formboard', '--format', 'pdf', '--out', 'x', '--sheet-size', 'B5'], 'B5'],
    ['label sheets for a document without labels', ['--document', 'parts-list', '--format', 'csv', '--out', 'x', '--label-sheet', 'a4'], 'has no --label-sheet'],
    ['an unknown label sheet', ['--document', 'labels', '--format', 'pdf', '--out', 'x', '--label-sheet', 'b5'], 'b5'],
    ['a first label before the sheet', ['--document', 'labels', '--format', 'pdf', '--out', 'x', '--label-start', '0'], '--label-start wants a whole number'],
    ['an unknown document', ['--document', 'poem', '--format', 'csv', '--out', 'x'], 'poem'],
    ['an unknown format', ['--document', 'parts-list', '--format', 'doc', '--out', 'x'], 'doc'],
    ['no place to write', ['--document', 'parts-list', '--format', 'csv'], '--out'],
    ['a quantity for a document of one harness', ['--document', 'parts-list', '--format', 'csv', '--out', 'x', '--quantity', '5'], 'has no --quantity'],
    ['a folder that is not there', ['--document', 'parts-list', '--format', 'csv', '--out', 'no/x'], 'does not exist'],
    ['its own input', ['--document', 'parts-list', '--format', 'csv', '--out', 'tiny.latchwork'], 'one of the files that were read'],
  ])('ends with 2 on %s and writes nothing', async (_, options, words) => {
    const before = await b.read('tiny.latchwork');
    const argv = options.map((o, i) => (options[i - 1] === '--out' ? b.path(o) : o));
    const { code, out, err } = await b.run('export', file, ...argv);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(words);
    expect(await b.files()).toEqual(['tiny.latchwork']);
    expect(await b.read('tiny.latchwork')).toBe(before);
  }); // prettier-ignore
});
