import type { Harness } from '../derive/harness';
import { PART_KIND_NAMES, type Part } from '../model/parts/part';
import { documentHead } from './document-head';
import type { Exporter } from './exporter';
import { tablePaper, type PaperColumn } from './paper/table-paper';
import { findNumbers } from './parts/find-numbers';
import { harnessLines, lineDesignators, lineObjects, lineQuantity, lineRemarks } from './parts/harness-lines';
import type { PartLine } from './parts/part-lines';
import type { Cell, Column, Table } from './table';

const COLUMNS = [
  { key: 'item', title: 'Item', align: 'right' },
  { key: 'find', title: 'Find no.', align: 'right' },
  { key: 'kind', title: 'Kind' },
  { key: 'designators', title: 'Reference designators' },
  { key: 'maker', title: 'Maker' },
  { key: 'partNumber', title: 'Part number' },
  { key: 'description', title: 'Description' },
  { key: 'quantity', title: 'Quantity', align: 'right' },
  { key: 'unit', title: 'Unit' },
  { key: 'colour', title: 'Colour' },
  { key: 'form', title: 'Form' },
  { key: 'finish', title: 'Finish' },
  { key: 'lifecycle', title: 'Lifecycle' },
  { key: 'suppliedWith', title: 'Supplied with' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

const PAPER_COLUMNS: readonly PaperColumn[] = [
  { title: 'Item', share: 5, keys: ['item'], align: 'right' },
  { title: 'Find', share: 5, keys: ['find'], align: 'right' },
  { title: 'Reference designators', share: 24, keys: ['designators'] },
  { title: 'Part number', share: 14, keys: ['partNumber', 'colour'] },
  { title: 'Maker, description', share: 32, keys: ['maker', 'description'] },
  { title: 'Quantity', share: 9, keys: ['quantity', 'unit'], align: 'right' },
  { title: 'Form', share: 6, keys: ['form'], blank: '' },
  { title: 'Lifecycle', share: 8, keys: ['lifecycle'] },
  { title: 'Supplied with', share: 9, keys: ['suppliedWith'] },
  { title: 'Remarks', share: 18, keys: ['remarks'], blank: '' },
]; // prettier-ignore

/** What one harness needs: no scrap, no samples, no packs; those belong to the purchase of an order. */
export const partsList: Exporter = {
  id: 'parts-list',
  title: 'Parts list',
  summary: 'Every part of one harness, counted from the model: contacts as objects, wire by part and colour.',
  table: ({ harness }) => partsListTable(harness),
  paper: (input) => tablePaper(partsListTable(input.harness), input, PAPER_COLUMNS),
};

function partsListTable(harness: Harness): Table {
  const lines = harnessLines(harness);
  const findOf = findNumbers(lines);
  return {
    id: partsList.id,
    title: partsList.title,
    head: documentHead(harness.project, partsList.title, [['Quantities', 'for one harness']]),
    columns: [...COLUMNS],
    rows: lines.map((line, i) => rowOf(line, i + 1, findOf(line))),
    objects: lines.map(lineObjects),
  };
}

function rowOf(line: PartLine, item: number, find: number): Record<(typeof COLUMNS)[number]['key'], Cell> {
  const { part } = line;
  return {
    item,
    find,
    kind: PART_KIND_NAMES[line.kind],
    designators: lineDesignators(line),
    maker: part?.maker ?? null,
    partNumber: part?.partNumber ?? null,
    description: part?.description ?? 'no part chosen',
    quantity: lineQuantity(line),
    unit: line.unit,
    colour: line.colour === '' ? null : line.colour,
    form: formOf(part),
    finish: part?.kind === 'contact' || part?.kind === 'header' ? (part.finish ?? null) : null,
    lifecycle: part?.lifecycle ?? null,
    suppliedWith: line.supply,
    remarks: lineRemarks(line).join('; ') || null,
  };
}

function formOf(part: Part | undefined): string | null {
  return part && 'form' in part ? (part.form ?? null) : null;
}
