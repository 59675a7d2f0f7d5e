import { exchangeTable } from './exchange/exchange-table';
import { noPlaceIn } from './exchange/no-place';
import type { Exporter } from './exporter';
import { vecFile } from './vec/vec-file';
import { xmlText } from './xml/xml';

/** The harness in the data format for vehicle wiring of VDA 4968, and a table of what it holds. */
export const vec: Exporter = {
  id: 'vec',
  title: 'VEC file',
  summary:
    'The whole harness for other programs (VDA 4968, Vehicle Electric Container), with what could not be written.',
  table: ({ harness }) => exchangeTable(harness.project, vec, vecFile(harness).report, noPlaceIn('VEC')),
  xml: {
    standard: 'VEC 2.1.0',
    extension: 'vec',
    mediaType: 'application/vec+xml',
    text: ({ harness }) => xmlText(vecFile(harness).root),
  },
};
