import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { Table } from '@latchwork/core/exports/table';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { xlsxOfTable } from '../../../electron/services/table-xlsx';

/** Read by an independent library. */
async function sheetOf(table: Table): Promise<ExcelJS.Worksheet> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load((await xlsxOfTable(table)) as unknown as ExcelJS.Buffer);
  return book.worksheets[0]!;
}
const tinyTables = (): Table[] => {
  const harness = deriveHarness(tiny());
  return EXPORTERS.map((e) => e.table({ harness, check: checkHarness(harness, []), date: '2026-03-01' }));
};
const cellsTable = (cells: (string | number | null)[]): Table => ({
  id: 'sample',
  title: 'A [title] / with: signs? that are longer than a sheet name',
  head: [['=1+1', '@x']],
  columns: [{ key: 'a', title: 'A', unit: 'mm' }],
  rows: cells.map((a) => ({ a })),
  objects: cells.map(() => []),
});

describe('a table as XLSX, read back by exceljs', () => {
  it.each(tinyTables())('$id has its head, its headings and every cell', async (table) => {
    const sheet = await sheetOf(table);
    const top = table.head.length + 2;
    table.head.forEach(([label, value], i) => {
      expect([sheet.getCell(i + 1, 1).value, sheet.getCell(i + 1, 2).value]).toEqual([label, value]);
    });
    table.rows.forEach((row, r) =>
      table.columns.forEach((c, k) => {
        expect(sheet.getCell(top + 1 + r, k + 1).value).toBe(row[c.key]);
      }),
    );
    expect(sheet.getCell(top, 1).value).toBe(table.columns[0]!.title);
    expect(sheet.rowCount).toBe(top + table.rows.length);
  });

  it('holds text that looks like a formula, and numbers as text, as the text it is', async () => {
    const cells = ['=1+1', '+1', '-2+3', '@SUM(A1)', '\t=1', '0012', '1e5', "'x", '<b>&"', 'a\nb', 5, -0.25];
    const sheet = await sheetOf(cellsTable(cells));
    cells.forEach((cell, i) => {
      expect(sheet.getCell(i + 4, 1).value).toBe(cell);
      expect(sheet.getCell(i + 4, 1).formula).toBeUndefined();
    });
    expect(sheet.getCell(1, 1).value).toBe('=1+1');
  });

  it('stays readable when a text holds what XML cannot, or more than a cell can', async () => {
    const sheet = await sheetOf(cellsTable(['a\u0000b\u001f', '\ud800x', 'y'.repeat(40_000), null]));
    expect(sheet.getCell(4, 1).value).toBe('a?b?');
    expect(sheet.getCell(5, 1).value).toBe('?x');
    expect(String(sheet.getCell(6, 1).value)).toHaveLength(32_767);
    expect(sheet.getCell(7, 1).value).toBeNull();
  });

  it('gives the same bytes for the same table at another time', async () => {
    const [table] = tinyTables();
    const first = await xlsxOfTable(table!);
    await new Promise((resolve) => setTimeout(resolve, 2100)); // a zip counts in steps of two seconds
    expect(Buffer.compare(first, await xlsxOfTable(table!))).toBe(0);
  });
});
