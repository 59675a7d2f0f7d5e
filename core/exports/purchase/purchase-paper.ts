import type { DocumentInput } from '../exporter';
import type { Paper, PaperBlock } from '../paper/paper';
import { tablePaper, type PaperColumn } from '../paper/table-paper';
import type { Table } from '../table';

const COLUMNS: readonly PaperColumn[] = [
  { title: 'Item', share: 5, keys: ['item'], align: 'right' },
  { title: 'Part number', share: 14, keys: ['partNumber', 'colour'] },
  { title: 'Maker, description', share: 29, keys: ['maker', 'description'] },
  { title: 'Form', share: 5, keys: ['form'], blank: '' },
  { title: 'Per harness', share: 9, keys: ['perHarness', 'unit'], align: 'right' },
  { title: 'Order', share: 9, keys: ['orderQuantity', 'unit'], align: 'right' },
  { title: 'Left over', share: 8, keys: ['leftOver'], align: 'right' },
  { title: 'Price of one', share: 9, keys: ['unitPrice'], align: 'right' },
  { title: 'Cost', share: 11, keys: ['lineCost', 'currency'], align: 'right', money: true },
  { title: 'Days', share: 5, keys: ['leadTimeDays'], align: 'right' },
  { title: 'Supplier, order code', share: 19, keys: ['supplier', 'orderCode'] },
]; // prettier-ignore

/** The purchase list as pages: what it comes to, the lines, and what is to be said of single lines. */
export function purchasePaper(table: Table, input: DocumentInput): Paper {
  const remarks = table.rows.flatMap((row): [string, string][] => {
    const said = [row['formReason'] ?? null, row['alternates'] ?? null, row['remarks'] ?? null].filter((c) => c !== null);
    return said.length > 0 ? [[`Item ${row['item']}, ${row['partNumber'] ?? 'no part'}`, said.join('; ')]] : [];
  }); // prettier-ignore
  const after: PaperBlock[] =
    remarks.length > 0
      ? [
          { kind: 'heading', text: 'To single lines' },
          { kind: 'fields', rows: remarks },
        ]
      : [];
  return tablePaper(table, input, COLUMNS, after);
}
