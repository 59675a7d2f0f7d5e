import { PART_KIND_NAMES } from '../model/parts/part';
import { roundTo } from '../model/length-text';
import type { CheckResult } from '../rules/check-harness';
import { documentHead } from './document-head';
import type { DocumentInput, Exporter } from './exporter';
import { findNumbers } from './parts/find-numbers';
import { harnessLines, lineDesignators, lineObjects } from './parts/harness-lines';
import { alternateWords } from './purchase/alternate-words';
import { complianceWords, lineForm, purchaseRemarks } from './purchase/line-words';
import { orderHead, orderTerms, orderTools } from './purchase/order-head';
import type { PurchaseLine } from './purchase/purchase-line';
import { defaultQuantity, purchaseOrder } from './purchase/purchase-order';
import { purchasePaper } from './purchase/purchase-paper';
import type { Cell, Column, Table } from './table';

const right = { align: 'right' } as const;

const COLUMNS = [
  { key: 'item', title: 'Item', ...right },
  { key: 'find', title: 'Find no.', ...right },
  { key: 'kind', title: 'Kind' },
  { key: 'maker', title: 'Maker' },
  { key: 'partNumber', title: 'Part number' },
  { key: 'description', title: 'Description' },
  { key: 'colour', title: 'Colour' },
  { key: 'form', title: 'Form' },
  { key: 'unit', title: 'Unit' },
  { key: 'perHarness', title: 'Per harness', ...right },
  { key: 'need', title: 'Need of the order', ...right },
  { key: 'scrapPercent', title: 'Scrap', unit: '%', ...right },
  { key: 'scrap', title: 'Scrap quantity', ...right },
  { key: 'setUp', title: 'Set-up', ...right },
  { key: 'samples', title: 'Samples', ...right },
  { key: 'total', title: 'Needed in all', ...right },
  { key: 'fromStock', title: 'From own store', ...right },
  { key: 'minimum', title: 'Minimum', ...right },
  { key: 'multiple', title: 'Pack', ...right },
  { key: 'orderQuantity', title: 'Order', ...right },
  { key: 'breakQuantity', title: 'Price from', ...right },
  { key: 'unitPrice', title: 'Price of one', ...right },
  { key: 'currency', title: 'Currency' },
  { key: 'lineCost', title: 'Cost', ...right },
  { key: 'leftOver', title: 'Left over', ...right },
  { key: 'leftOverCost', title: 'Cost left over', ...right },
  { key: 'supplier', title: 'Supplier' },
  { key: 'orderCode', title: 'Order code' },
  { key: 'leadTimeDays', title: 'Lead time', unit: 'days', ...right },
  { key: 'priceDate', title: 'Price of' },
  { key: 'stock', title: 'Supplier stock', ...right },
  { key: 'stockDate', title: 'Stock of' },
  { key: 'formReason', title: 'Why this form' },
  { key: 'lifecycle', title: 'Lifecycle' },
  { key: 'alternates', title: 'Alternates' },
  { key: 'compliance', title: 'Compliance' },
  { key: 'origin', title: 'Origin' },
  { key: 'tariffCode', title: 'Tariff code' },
  { key: 'shelfLifeDays', title: 'Shelf life', unit: 'days', ...right },
  { key: 'designators', title: 'Where used' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

type Row = Record<(typeof COLUMNS)[number]['key'], Cell>;

/** What an order needs: quantities of one harness and of the order stand in columns of their own and are never mixed. */
export const purchaseList: Exporter = {
  id: 'purchase-list',
  title: 'Purchase list',
  summary: 'What to buy for an order: scrap, set-up, samples, packs, price breaks, and what is left over.',
  asks: ['quantity'],
  table: purchaseTable,
  paper: (input) => purchasePaper(purchaseTable(input), input),
};

function purchaseTable({ harness, check, options }: DocumentInput): Table {
  const { project } = harness;
  const order = purchaseOrder(harness, options?.quantity ?? defaultQuantity(project));
  const findOf = findNumbers(harnessLines(harness));
  return {
    id: purchaseList.id,
    title: purchaseList.title,
    head: documentHead(project, purchaseList.title, [
      ...orderHead(order),
      ...orderTools(project, order),
      ...orderTerms(project),
    ]),
    columns: [...COLUMNS],
    rows: order.lines.map((l, i) => ({ item: i + 1, find: findOf(l.line), ...partCells(l, check), ...orderCells(l) })),
    objects: order.lines.map((l) => lineObjects(l.line)),
  }; // prettier-ignore
}

type PartKeys =
  | 'kind' | 'maker' | 'partNumber' | 'description' | 'colour' | 'unit' | 'lifecycle' | 'alternates' | 'compliance'
  | 'origin' | 'tariffCode' | 'shelfLifeDays' | 'designators' | 'remarks'; // prettier-ignore

function partCells(l: PurchaseLine, check: CheckResult): Pick<Row, PartKeys> {
  const { line } = l;
  const { part } = line;
  return {
    kind: PART_KIND_NAMES[line.kind],
    maker: part?.maker ?? null,
    partNumber: part?.partNumber ?? null,
    description: part?.description ?? 'no part chosen',
    colour: line.colour === '' ? null : line.colour,
    unit: line.unit,
    lifecycle: part?.lifecycle ?? null,
    alternates: part ? alternateWords(check, part).join('; ') || null : null,
    compliance: complianceWords(part),
    origin: part?.origin ?? null,
    tariffCode: part?.tariffCode ?? null,
    shelfLifeDays: part?.shelfLifeDays ?? null,
    designators: lineDesignators(line),
    remarks: purchaseRemarks(l).join('; ') || null,
  };
}

function orderCells(l: PurchaseLine): Omit<Row, PartKeys | 'item' | 'find'> {
  const { need, chosen } = l;
  const offer = chosen?.weighed.offer;
  return {
    perHarness: l.perHarness,
    need: need?.need ?? null,
    scrapPercent: roundTo(l.scrap.value * 100, 4),
    scrap: need ? roundTo(need.scrap, 3) : null,
    setUp: l.setUp,
    samples: l.samples,
    total: need?.total ?? null,
    fromStock: need?.fromStock ?? null,
    minimum: offer?.minimum ?? null,
    multiple: offer?.multiple ?? null,
    orderQuantity: l.orderQuantity,
    breakQuantity: chosen?.choice.breakQuantity ?? null,
    unitPrice: chosen?.choice.price ?? null,
    currency: offer?.currency ?? null,
    lineCost: l.cost,
    leftOver: l.leftOver,
    leftOverCost: l.leftOverCost,
    supplier: offer?.supplier ?? null,
    orderCode: offer?.orderCode ?? null,
    leadTimeDays: offer?.leadTimeDays ?? null,
    priceDate: offer?.priceDate ?? null,
    stock: offer?.stock?.quantity ?? null,
    stockDate: offer?.stock?.date ?? null,
    form: lineForm(l) ?? null,
    formReason: l.wish?.reason ?? null,
  };
}
