import { compareNatural } from '../base/stable-order';
import type { Harness } from '../derive/harness';
import { roundTo } from '../model/length-text';
import { PART_KIND_NAMES, type Part, type PartKind } from '../model/parts/part';
import type { ObjectRef } from '../rules/finding';
import { documentHead } from './document-head';
import type { Exporter } from './exporter';
import { countConnectors } from './parts/count-connectors';
import { countRoute } from './parts/count-route';
import { countWires } from './parts/count-wires';
import { PartLines, type PartLine } from './parts/part-lines';
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

/** Lines come in the order in which a harness is put together, then by maker and part number. */
const KIND_ORDER: readonly PartKind[] = [
  'housing', 'header', 'contact', 'wire-seal', 'cavity-plug', 'secondary-lock', 'strain-relief', 'grommet', 'terminal', 'splice',
  'wire', 'cable', 'covering', 'clamp', 'tie', 'label', 'fuse', 'tool',
]; // prettier-ignore

/** What one harness needs: no scrap, no samples, no packs; those belong to the purchase of an order. */
export const partsList: Exporter = {
  id: 'parts-list',
  title: 'Parts list',
  summary: 'Every part of one harness, counted from the model: contacts as objects, wire by part and colour.',
  table: ({ harness }) => partsListTable(harness),
};

function partsListTable(harness: Harness): Table {
  const lines = new PartLines();
  countConnectors(harness, lines);
  countWires(harness, lines);
  countRoute(harness, lines);
  const sorted = lines.list().sort(compareLines);
  const findOf = findNumbers(sorted);
  return {
    id: partsList.id,
    title: partsList.title,
    head: documentHead(harness.project, partsList.title, [['Quantities', 'for one harness']]),
    columns: [...COLUMNS],
    rows: sorted.map((line, i) => rowOf(line, i + 1, findOf.get(findKey(line)) ?? 0)),
    objects: sorted.map((line) => distinctObjects(line)),
  };
}

function rowOf(line: PartLine, item: number, find: number): Record<(typeof COLUMNS)[number]['key'], Cell> {
  const { part } = line;
  const designators = [...new Set(line.uses.map((u) => u.designator))].sort(compareNatural);
  return {
    item,
    find,
    kind: PART_KIND_NAMES[line.kind],
    designators: designators.join(', '),
    maker: part?.maker ?? null,
    partNumber: part?.partNumber ?? null,
    description: part?.description ?? 'no part chosen',
    quantity: quantityOf(line),
    unit: line.unit,
    colour: line.colour === '' ? null : line.colour,
    form: formOf(part),
    finish: part?.kind === 'contact' || part?.kind === 'header' ? (part.finish ?? null) : null,
    lifecycle: part?.lifecycle ?? null,
    suppliedWith: line.supply,
    remarks: remarksOf(line).join('; ') || null,
  };
}

/** Pieces, or metres to the millimetre. Null when nothing of it is known: never zero. */
function quantityOf(line: PartLine): number | null {
  const known = line.uses.flatMap((u) => (u.amount === undefined ? [] : [u.amount]));
  if (known.length === 0) return null;
  const sum = known.reduce((a, b) => a + b, 0);
  return line.unit === 'm' ? roundTo(sum / 1000, 3) : sum;
}

function formOf(part: Part | undefined): string | null {
  return part && 'form' in part ? (part.form ?? null) : null;
}

function remarksOf(line: PartLine): string[] {
  const remarks: string[] = [];
  const unknown = line.uses.filter((u) => u.amount === undefined).map((u) => u.designator);
  if (unknown.length === line.uses.length) remarks.push(`length not known: ${listed(unknown)}`);
  else if (unknown.length) remarks.push(`quantity incomplete, length not known: ${listed(unknown)}`);
  if (line.colour === '') remarks.push('colour not chosen');
  const said = new Map<string, string[]>();
  for (const u of line.uses) {
    if (!u.remark) continue;
    const where = said.get(u.remark);
    if (where) where.push(u.designator);
    else said.set(u.remark, [u.designator]);
  }
  for (const [remark, where] of said) remarks.push(`${remark}: ${listed(where)}`);
  if (line.part?.replacedBy) remarks.push(`replaced by ${line.part.replacedBy}`);
  return remarks;
}

const listed = (names: readonly string[]): string => [...new Set(names)].sort(compareNatural).join(', ');

function compareLines(a: PartLine, b: PartLine): number {
  return (
    KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind) ||
    Number(a.part === undefined) - Number(b.part === undefined) ||
    compareNatural(a.part?.maker ?? '', b.part?.maker ?? '') ||
    compareNatural(a.part?.partNumber ?? '', b.part?.partNumber ?? '') ||
    compareNatural(a.part?.id ?? '', b.part?.id ?? '') ||
    Number(a.supply === 'equipment') - Number(b.supply === 'equipment') ||
    compareNatural(a.colour ?? '', b.colour ?? '')
  );
}

/** The number on the drawing's balloon: one per part, so the colours of one wire share it. */
function findNumbers(lines: readonly PartLine[]): ReadonlyMap<string, number> {
  const out = new Map<string, number>();
  for (const line of lines) {
    const key = findKey(line);
    if (!out.has(key)) out.set(key, out.size + 1);
  }
  return out;
}

const findKey = (line: PartLine): string => `${line.kind} ${line.part?.id ?? ''}`;

function distinctObjects(line: PartLine): ObjectRef[] {
  const seen = new Map<string, ObjectRef>();
  for (const u of line.uses) seen.set(`${u.object.type} ${u.object.id} ${u.object.cavity ?? ''}`, u.object);
  return [...seen.values()];
}
