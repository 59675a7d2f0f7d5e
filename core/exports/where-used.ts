import { PART_KIND_NAMES } from '../model/parts/part';
import { documentHead } from './document-head';
import type { DocumentInput, Exporter } from './exporter';
import { tablePaper, type PaperColumn } from './paper/table-paper';
import { usesOf } from './parts/uses-of';
import type { Column, Table } from './table';

const COLUMNS = [
  { key: 'kind', title: 'Kind' },
  { key: 'maker', title: 'Maker' },
  { key: 'partNumber', title: 'Part number' },
  { key: 'colour', title: 'Colour' },
  { key: 'use', title: 'Used as' },
  { key: 'where', title: 'Where' },
  { key: 'quantity', title: 'Quantity', align: 'right' },
  { key: 'unit', title: 'Unit' },
  { key: 'suppliedWith', title: 'Supplied with' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

const PAPER_COLUMNS: readonly PaperColumn[] = [
  { title: 'Part number', share: 18, keys: ['partNumber', 'colour'] },
  { title: 'Maker', share: 24, keys: ['maker'] },
  { title: 'Used as', share: 12, keys: ['use'] },
  { title: 'Where', share: 14, keys: ['where'] },
  { title: 'Quantity', share: 11, keys: ['quantity', 'unit'], align: 'right', blank: '' },
  { title: 'Supplied with', share: 11, keys: ['suppliedWith'], blank: '' },
  { title: 'Remarks', share: 20, keys: ['remarks'], blank: '' },
]; // prettier-ignore

/** Before a part is replaced or bought for the last time: each place that it stands in. */
export const whereUsed: Exporter = {
  id: 'where-used',
  title: 'Where used',
  summary:
    'Every part with each object of this harness that uses it, and the parts that name it as their alternate.',
  table: whereUsedTable,
  paper: (input) => tablePaper(whereUsedTable(input), input, PAPER_COLUMNS),
};

function whereUsedTable({ harness }: DocumentInput): Table {
  const uses = usesOf(harness);
  return {
    id: whereUsed.id,
    title: whereUsed.title,
    head: documentHead(harness.project, whereUsed.title, [['Quantities', 'for one harness']]),
    columns: [...COLUMNS],
    rows: uses.map((u) => ({
      kind: PART_KIND_NAMES[u.part.kind],
      maker: u.part.maker,
      partNumber: u.part.partNumber,
      colour: u.colour,
      use: u.use,
      where: u.where,
      quantity: u.quantity,
      unit: u.unit,
      suppliedWith: u.supply,
      remarks: u.remark,
    })),
    objects: uses.map((u) => [u.object]),
  };
}
