import { readdirSync } from 'node:fs';
import { expect, it, test } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { Table } from '@latchwork/core/exports/table';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

/** Files of core/exports that are no document. */
const NOT_DOCUMENTS = [
  'cautions',
  'csv',
  'document-head',
  'exporter',
  'file-format',
  'index',
  'json',
  'provenance',
  'table',
];

it('lists every document of the folder', () => {
  const files = readdirSync(new URL('../../../core/exports', import.meta.url), { withFileTypes: true })
    .filter((f) => f.isFile())
    .map((f) => f.name.replace('.ts', ''))
    .filter((name) => !NOT_DOCUMENTS.includes(name));
  expect(EXPORTERS.map((e) => e.id).sort()).toEqual(files.sort());
});

test.each(EXPORTERS)('$id is a table whose rows hold its columns and nothing else', (exporter) => {
  const harness = deriveHarness(tiny());
  const table = Table.parse(
    exporter.table({ harness, check: checkHarness(harness, []), date: '2026-03-01' }),
  );
  expect(table.id).toBe(exporter.id);
  expect(table.title).toBe(exporter.title);
  expect(table.objects).toHaveLength(table.rows.length);
  for (const row of table.rows)
    expect(Object.keys(row).sort()).toEqual(table.columns.map((c) => c.key).sort());
});
