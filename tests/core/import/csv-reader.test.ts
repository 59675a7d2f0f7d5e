import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readCsv } from '@latchwork/core/import/csv-reader';

const textsOf = (text: string) => {
  const csv = readCsv(text);
  return csv.ok ? csv.value.rows.map((r) => r.map((c) => c.text)) : csv.problem;
};
const placesOf = (text: string) => {
  const csv = readCsv(text);
  return csv.ok ? csv.value.rows.map((r) => r.map((c) => `${c.line}:${c.column}`)) : csv.problem;
};

describe('CSV is read whatever program wrote it', () => {
  test.each([
    [
      'commas',
      'a,b\n1,2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'semicolons',
      'a;b\n1,5;2',
      [
        ['a', 'b'],
        ['1,5', '2'],
      ],
    ],
    [
      'tabs',
      'a\tb\n1;5\t2',
      [
        ['a', 'b'],
        ['1;5', '2'],
      ],
    ],
    [
      'a byte-order mark',
      '\ufeffa,b\r\n1,2\r\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'old line ends',
      'a,b\r1,2\r',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'quoted separators and doubled quotes',
      'a,b\n"1,""2""",3',
      [
        ['a', 'b'],
        ['1,"2"', '3'],
      ],
    ],
    [
      'quoted line breaks',
      'a,b\n"1\r\n2",3\n',
      [
        ['a', 'b'],
        ['1\r\n2', '3'],
      ],
    ],
    [
      'quoted headings that hold the other separator',
      '"a;x;y;z",b\n1,2',
      [
        ['a;x;y;z', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'an empty last cell',
      'a,b\n1,',
      [
        ['a', 'b'],
        ['1', ''],
      ],
    ],
    [
      'an empty last cell and a line end',
      'a,b\n1,\n2,3',
      [
        ['a', 'b'],
        ['1', ''],
        ['2', '3'],
      ],
    ],
    [
      'lines without text',
      '\n\na,b\n,\n\n1,2\n\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['one column', 'a\n1', [['a'], ['1']]],
    ['nothing', '', []],
    ['spaces around quotes', 'a, "b" ,c', [['a', 'b', 'c']]],
  ])('%s', (_, text, rows) => {
    expect(textsOf(text)).toEqual(rows);
  });

  it('gives the line on which each cell starts and its number in the row', () => {
    expect(placesOf('a,b\n\n"1\n2\n3",4\n5,6')).toEqual([
      ['1:1', '1:2'],
      ['3:1', '5:2'],
      ['6:1', '6:2'],
    ]);
  });

  it('reads what csv-parse reads', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r\n', ' x', '1') });
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 1 }), (rows) => {
        const text = [['h', 'k'], ...rows].map((r) => r.map((c) => `"${c.replaceAll('"', '""')}"`).join(',')).join('\r\n'); // prettier-ignore
        const theirs = (parse(text) as string[][]).filter((r) => r.some((c) => c.trim() !== ''));
        expect(textsOf(text)).toEqual(theirs);
      }),
    );
  });
});

describe('what is not clean CSV is named with its place', () => {
  test.each([
    ['a,b\n1,"2', 2, 2, 'never closed'],
    ['a,b\n"1"x,2', 2, 1, 'follows the closing quote'],
    ['a,b\n1,2"x', 2, 2, 'not quoted'],
    ['a,b\n"1\n2",3\n4,"5', 4, 2, 'never closed'],
  ])('%j', (text, line, column, words) => {
    const csv = readCsv(text);
    expect(csv).toMatchObject({
      ok: false,
      problem: { line, column, message: expect.stringContaining(words) },
    });
  });
});
