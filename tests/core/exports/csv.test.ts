import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { csvField, csvOfTable } from '@latchwork/core/exports/csv';
import type { Table } from '@latchwork/core/exports/table';

const tableOf = (rows: Table['rows']): Table => ({
  id: 'sample',
  title: 'Sample',
  head: [['Title', 'not in the file']],
  columns: [
    { key: 'a', title: 'A' },
    { key: 'b', title: 'B', unit: 'mm' },
  ],
  rows,
  objects: rows.map(() => []),
});

describe('no spreadsheet formula can start from a cell', () => {
  // Starting characters after the OWASP page "CSV Injection" (from memory): = + - @ tab CR, and the full-width forms.
  test.each([
    ['=1+1', "'=1+1"],
    ['=HYPERLINK("http://x","y")', `"'=HYPERLINK(""http://x"",""y"")"`],
    ['+1+cmd', "'+1+cmd"],
    ['-2+3', "'-2+3"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', `"'\t'=1"`],
    ['\r=1', `"'\r'=1"`],
    ['  =1', "'  =1"],
    ['＝1+1', "'＝1+1"],
    ['-X', "'-X"],
    ['a;=1', `"a;'=1"`],
    ['a\n@x', `"a\n'@x"`],
    ['a;"=1', `"a;""'=1"`],
  ])('%j becomes %j', (text, field) => {
    expect(csvField(text)).toBe(field);
  });

  test.each(['-5', '+5', '-0.5', '-1,5', '1e-3', '12', 'X-1', 'a=b', 'RD/BU', 'a@b', ''])(
    'plain %j stays as it is',
    (text) => {
      expect(csvField(text).replaceAll('"', '')).toBe(text);
    },
  );

  it('holds for any text, also where a spreadsheet splits at semicolon or tab and takes no notice of quotes', () => {
    const text = fc.string({
      unit: fc.constantFrom('=', '+', '-', '@', '"', ';', '\t', ',', ' ', '\n', 'a', '1'),
    });
    const startsFormula = (cell: string) =>
      /^\s*[=+\-@]/.test(cell) && !/^[+-]?\d+([.,]\d+)?(e[+-]?\d+)?$/i.test(cell);
    fc.assert(
      fc.property(text, text, (a, b) => {
        const file = csvOfTable(tableOf([{ a, b }]));
        expect((parse(file) as string[][]).flat().filter(startsFormula)).toEqual([]);
        const inner = csvOfTable(tableOf([{ a: `x${a}`, b }]));
        expect(
          inner
            .split(/[;\t\r\n]/)
            .map((c) => c.replace(/^[\s"]+/, ''))
            .filter(startsFormula),
        ).toEqual([]);
      }),
    );
  });
});

describe('a table as CSV (RFC 4180)', () => {
  it('has CR LF line ends, a heading line with units, and as many fields in each line as columns', () => {
    expect(
      csvOfTable(
        tableOf([
          { a: 'x', b: 1.5 },
          { a: null, b: null },
        ]),
      ),
    ).toBe('A,B (mm)\r\nx,1.5\r\n,\r\n');
  });

  it('comes back from csv-parse, quotes and line breaks included', () => {
    const text = csvOfTable(
      tableOf([
        { a: 'a "b", c\nd', b: 'ü µ Ω' },
        { a: ' padded ', b: 0 },
      ]),
    );
    expect(parse(text, { columns: true })).toEqual([
      { A: 'a "b", c\nd', 'B (mm)': 'ü µ Ω' },
      { A: ' padded ', 'B (mm)': '0' },
    ]);
  });

  it('any text without a formula start comes back from csv-parse as it was', () => {
    fc.assert(
      fc.property(
        fc.string().filter((s) => !/[=+\-@\t＝＋－＠]/.test(s) && !/^[\t\r\n]/.test(s)),
        (a) => {
          const [row] = parse(csvOfTable(tableOf([{ a, b: 'end' }])), { columns: true }) as [{ A: string }];
          expect(row.A).toBe(a);
        },
      ),
    );
  });
});
