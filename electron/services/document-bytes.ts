import { csvOfTable } from '@latchwork/core/exports/csv';
import { jsonOfTable } from '@latchwork/core/exports/json';
import { withProvenance } from '@latchwork/core/exports/provenance';
import type { Table } from '@latchwork/core/exports/table';
import { xlsxOfTable } from './table-xlsx';

export const DOCUMENT_FORMATS = ['csv', 'xlsx', 'json'] as const;
export type DocumentFormat = (typeof DOCUMENT_FORMATS)[number];

/** A document as the bytes of a file. */
export async function documentBytes(table: Table, format: DocumentFormat): Promise<Uint8Array> {
  switch (format) {
    case 'csv':
      return Buffer.from(csvOfTable(withProvenance(table)), 'utf8');
    case 'json':
      return Buffer.from(jsonOfTable(table), 'utf8');
    case 'xlsx':
      return xlsxOfTable(table);
  }
}
