import { exchangeTable } from './exchange/exchange-table';
import { noPlaceIn } from './exchange/no-place';
import type { Exporter } from './exporter';
import { kblFile } from './kbl/kbl-file';
import { xmlText } from './xml/xml';

/** The harness in the data format for wiring harnesses of VDA 4964, and a table of what it holds. */
export const kbl: Exporter = {
  id: 'kbl',
  title: 'KBL file',
  summary:
    'The harness for other programs (VDA 4964, harness description list), with what could not be written.',
  table: ({ harness }) => exchangeTable(harness.project, kbl, kblFile(harness).report, noPlaceIn('KBL')),
  xml: {
    standard: 'KBL 2.4',
    extension: 'kbl',
    mediaType: 'application/xml',
    text: ({ harness }) => xmlText(kblFile(harness).root),
  },
};
