import { PART_KIND_NAMES } from '../model/parts/part';
import type { Harness } from '../derive/harness';
import { documentHead } from './document-head';
import type { DocumentInput, Exporter } from './exporter';
import type { Paper } from './paper/paper';
import { tablePaper, type PaperColumn } from './paper/table-paper';
import { lineObjects } from './parts/harness-lines';
import { FORM_NAMES } from './purchase/contact-form';
import { lineName } from './purchase/line-words';
import { harnessesText, moneyText, orderTerms } from './purchase/order-head';
import type { PurchaseLine } from './purchase/purchase-line';
import { purchaseOrder, volumesOf, type PurchaseOrder } from './purchase/purchase-order';
import type { Cell, Column, Table } from './table';

const PART_COLUMNS = [
  { key: 'item', title: 'Item', align: 'right' },
  { key: 'kind', title: 'Kind' },
  { key: 'maker', title: 'Maker' },
  { key: 'partNumber', title: 'Part number' },
  { key: 'description', title: 'Description' },
  { key: 'colour', title: 'Colour' },
  { key: 'unit', title: 'Unit' },
  { key: 'perHarness', title: 'Per harness', align: 'right' },
] as const satisfies readonly Column[];

type PartKey = (typeof PART_COLUMNS)[number]['key'];

/** What stands in the columns of a volume. */
const VOLUME_COLUMNS = [
  { key: 'total', title: 'needed' },
  { key: 'order', title: 'order' },
  { key: 'form', title: 'form' },
  { key: 'price', title: 'price of one' },
  { key: 'cost', title: 'cost' },
  { key: 'leftOver', title: 'left over' },
  { key: 'currency', title: 'currency' },
  { key: 'leadTime', title: 'lead time' },
] as const;

type VolumeKey = (typeof VOLUME_COLUMNS)[number]['key'];

/** The same harness in several volumes side by side: the build quantities of the project. */
export const purchaseVolumes: Exporter = {
  id: 'purchase-volumes',
  title: 'Purchase volumes',
  summary:
    'Order quantity, price and cost of every line at several volumes side by side, and what each comes to.',
  table: ({ harness }) => volumesTable(harness),
  paper: (input) => volumesPaper(input),
};

function volumesTable(harness: Harness): Table {
  const { project } = harness;
  const orders = volumesOf(project).map((n) => purchaseOrder(harness, n));
  const lines = orders[0]?.lines ?? [];
  const rows = lines.map((line, i) => ({
    ...partCells(line, i + 1),
    ...volumeCells(orders.map((o) => lineCells(o.lines[i]))),
  }));
  const sums = sumRows(orders);
  return {
    id: purchaseVolumes.id,
    title: purchaseVolumes.title,
    head: documentHead(project, purchaseVolumes.title, [
      ...orders.map((o) => [`For ${harnessesText(o.harnesses)}`, sumText(o)] as const),
      ['Currencies', 'added up each by itself; nothing is converted'],
      ...orderTerms(project),
    ]),
    columns: [
      ...PART_COLUMNS,
      ...orders.flatMap((o, v) =>
        VOLUME_COLUMNS.map((c): Column => ({
          key: keyOf(v, c.key),
          title: `${o.harnesses}: ${c.title}`,
          ...(c.key === 'form' || c.key === 'currency' ? {} : { align: 'right' }),
          ...(c.key === 'leadTime' ? { unit: 'days' } : {}),
        })),
      ),
    ],
    rows: [...rows, ...sums],
    objects: [...lines.map((l) => lineObjects(l.line)), ...sums.map(() => [])],
  };
}

/** Without the lead times, which stand in the head. */
function volumesPaper(input: DocumentInput): Paper {
  const table = volumesTable(input.harness);
  const rows = table.rows.filter((row) => row['description'] !== SLOWEST);
  return tablePaper({ ...table, rows }, input, paperColumns(input.harness));
}

const SLOWEST = 'Lead time of the slowest line';

/** Order and cost of each volume; sums stand in the cost column. */
const paperColumns = ({ project }: Harness): readonly PaperColumn[] => [
  { title: 'Item', share: 5, keys: ['item'], align: 'right', blank: '' },
  { title: 'Part number', share: 15, keys: ['partNumber', 'colour'], blank: '' },
  { title: 'Description', share: 30, keys: ['description'] },
  { title: 'Per harness', share: 10, keys: ['perHarness', 'unit'], align: 'right', blank: '' },
  ...volumesOf(project).flatMap((n, v): PaperColumn[] => [
    { title: `${n}: order`, share: 8, keys: [keyOf(v, 'order')], align: 'right', blank: '' },
    { title: `${n}: cost`, share: 10, keys: [keyOf(v, 'cost'), keyOf(v, 'currency')], align: 'right', money: true, blank: '' },
  ]),
]; // prettier-ignore

const keyOf = (volume: number, key: VolumeKey): string => `v${volume + 1}-${key}`;

function partCells({ line, perHarness }: PurchaseLine, item: number): Record<PartKey, Cell> {
  return {
    item,
    kind: PART_KIND_NAMES[line.kind],
    maker: line.part?.maker ?? null,
    partNumber: line.part?.partNumber ?? null,
    description: line.part?.description ?? 'no part chosen',
    colour: line.colour === '' ? null : line.colour,
    unit: line.unit,
    perHarness,
  };
}

const NOTHING: Record<VolumeKey, Cell> = {
  total: null,
  order: null,
  form: null,
  price: null,
  cost: null,
  leftOver: null,
  currency: null,
  leadTime: null,
};

function lineCells(l: PurchaseLine | undefined): Record<VolumeKey, Cell> {
  if (!l) return NOTHING;
  const form = l.chosen?.weighed.form;
  return {
    total: l.need?.total ?? null,
    order: l.orderQuantity,
    form: form ? FORM_NAMES[form] : null,
    price: l.chosen?.choice.price ?? null,
    cost: l.cost,
    leftOver: l.leftOver,
    currency: l.chosen?.weighed.offer.currency ?? null,
    leadTime: l.chosen?.weighed.offer.leadTimeDays ?? null,
  };
}

const volumeCells = (volumes: readonly Record<VolumeKey, Cell>[]): Record<string, Cell> =>
  Object.fromEntries(
    volumes.flatMap((cells, v) => VOLUME_COLUMNS.map((c) => [keyOf(v, c.key), cells[c.key]] as const)),
  );

/** Sums below the lines, one of each kind for every currency. */
function sumRows(orders: readonly PurchaseOrder[]): Record<string, Cell>[] {
  const currencies = [...new Set(orders.flatMap((o) => o.totals.map((t) => t.currency)))].sort();
  const sums = [
    ['Cash to buy', 'cash'],
    ['Material used per harness', 'usedPerHarness'],
    ['Left over', 'leftOver'],
  ] as const;
  return [
    ...currencies.flatMap((currency) =>
      sums.map(([title, key]) =>
        sumRow(
          title,
          orders.map((o) => {
            const total = o.totals.find((t) => t.currency === currency);
            return total ? { ...NOTHING, cost: total[key], currency } : NOTHING;
          }),
        ),
      ),
    ),
    sumRow(
      SLOWEST,
      orders.map((o) => ({ ...NOTHING, leadTime: o.slowest?.chosen?.weighed.offer.leadTimeDays ?? null })),
    ),
    sumRow(
      'Lines without a price, not in the sums',
      orders.map((o) => ({ ...NOTHING, order: o.unpriced.length })),
    ),
  ];
}

const sumRow = (description: string, volumes: readonly Record<VolumeKey, Cell>[]): Record<string, Cell> => ({
  ...(Object.fromEntries(PART_COLUMNS.map((c) => [c.key, null])) as Record<PartKey, Cell>),
  description,
  ...volumeCells(volumes),
});

function sumText(o: PurchaseOrder): string {
  const sums = o.totals.map(
    (t) =>
      `cash to buy ${moneyText(t.cash, t.currency)}, material used ${moneyText(t.usedPerHarness, t.currency, 4)} per harness, left over ${moneyText(t.leftOver, t.currency)}`,
  );
  const days = o.slowest?.chosen?.weighed.offer.leadTimeDays;
  const slowest =
    o.slowest && days !== undefined ? `slowest ${lineName(o.slowest)}, ${days} days` : 'no lead time stated';
  const lacks = o.unpriced.length > 0 ? `; without ${o.unpriced.map(lineName).join(', ')}` : '';
  return `${sums.join('; ') || 'no price'}; ${slowest}${lacks}`;
}
