import { documentHead } from './document-head';
import type { DocumentInput, Exporter } from './exporter';
import { tablePaper, type PaperColumn } from './paper/table-paper';
import { lineDesignators, lineObjects } from './parts/harness-lines';
import { askedLines, PLEASE_STATE, SUBSTITUTES, UNIT_CODES, type Asked } from './purchase/asked-lines';
import { FORM_NAMES } from './purchase/contact-form';
import { lineForm } from './purchase/line-words';
import { harnessesText } from './purchase/order-head';
import { defaultQuantity } from './purchase/purchase-order';
import { ublRequest } from './purchase/ubl-request';
import type { Column, Table } from './table';

const COLUMNS = [
  { key: 'line', title: 'Line', align: 'right' },
  { key: 'maker', title: 'Maker' },
  { key: 'partNumber', title: 'Part number' },
  { key: 'description', title: 'Description' },
  { key: 'colour', title: 'Colour' },
  { key: 'form', title: 'Form' },
  { key: 'quantity', title: 'Quantity', align: 'right' },
  { key: 'unit', title: 'Unit' },
  { key: 'unitCode', title: 'Unit code' },
  { key: 'also', title: 'Quote for these too' },
  { key: 'designators', title: 'Reference designators' },
] as const satisfies readonly Column[];

const PAPER_COLUMNS: readonly PaperColumn[] = [
  { title: 'Line', share: 6, keys: ['line'], align: 'right' },
  { title: 'Maker', share: 18, keys: ['maker'] },
  { title: 'Part number', share: 15, keys: ['partNumber', 'colour'] },
  { title: 'Description', share: 28, keys: ['description'] },
  { title: 'Form', share: 8, keys: ['form'], blank: '' },
  { title: 'Quantity', share: 10, keys: ['quantity', 'unit'], align: 'right' },
  { title: 'Quote for these too', share: 22, keys: ['also'], blank: '' },
  { title: 'Your price, pack, lead time', share: 22, keys: [], blank: '' },
]; // prettier-ignore

/** Asks suppliers for terms: what the order needs, and nothing of what others offer. */
export const requestForQuotation: Exporter = {
  id: 'request-for-quotation',
  title: 'Request for quotation',
  summary:
    'Asks suppliers for prices and lead times of an order, as a table and as UBL 2.1 for their programs.',
  asks: ['quantity', 'supplier'],
  table: requestTable,
  paper: (input) => tablePaper(requestTable(input), input, PAPER_COLUMNS),
  xml: {
    standard: 'UBL 2.1',
    extension: 'xml',
    mediaType: 'application/xml',
    text: (input) => ublRequest(input, asked(input), quantityOf(input), input.options?.supplier),
  },
};

const quantityOf = ({ harness, options }: DocumentInput): number =>
  options?.quantity ?? defaultQuantity(harness.project);

const asked = (input: DocumentInput): Asked =>
  askedLines(input.harness, quantityOf(input), input.options?.supplier);

function requestTable(input: DocumentInput): Table {
  const { lines, left } = asked(input);
  return {
    id: requestForQuotation.id,
    title: requestForQuotation.title,
    head: documentHead(input.harness.project, requestForQuotation.title, [
      ['Order', harnessesText(quantityOf(input))],
      ['Asked on', input.date],
      ['Please state', PLEASE_STATE],
      ['Substitutes', SUBSTITUTES],
      ...(input.options?.supplier ? [['Supplier', input.options.supplier] as const] : []),
      ...(left.length > 0 ? [['Not asked for', left.join('; ')] as const] : []),
    ]),
    columns: [...COLUMNS],
    rows: lines.map(({ line: l, quantity, also }, i) => {
      const form = lineForm(l);
      return {
        line: i + 1,
        maker: l.line.part?.maker ?? null,
        partNumber: l.line.part?.partNumber ?? null,
        description: l.line.part?.description ?? null,
        colour: l.line.colour || null,
        form: form ? FORM_NAMES[form] : null,
        quantity,
        unit: l.line.unit,
        unitCode: UNIT_CODES[l.line.unit],
        also: also.map((a) => `${a.quantity} for ${harnessesText(a.harnesses)}`).join(', ') || null,
        designators: lineDesignators(l.line),
      };
    }),
    objects: lines.map(({ line }) => lineObjects(line.line)),
  };
}
