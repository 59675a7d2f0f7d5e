import type { Exporter } from '@latchwork/core/exports/exporter';
import { fileFormatsOf, type FileFormat } from '@latchwork/core/exports/file-format';
import type { PaperState } from './use-survey';

const counted = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;

/** "82 rows, 7 pages". */
export function stateWords(exporter: Exporter, state: PaperState | undefined): string {
  const pages = state?.pages === undefined ? null : counted(state.pages, 'page');
  if (state?.rows === undefined) return pages ?? (state?.waits ? 'counted when shown' : 'being counted');
  if (state.rows === 0 && exporter.id !== 'findings-report') return 'nothing to say yet';
  const rows = state.rows === 0 ? 'no finding' : counted(state.rows, 'row');
  return pages === null ? rows : `${rows}, ${pages}`;
}

const FORMAT_WORDS: Readonly<Record<FileFormat, string>> = {
  pdf: 'PDF', svg: 'SVG', dxf: 'DXF', csv: 'CSV', xlsx: 'XLSX', json: 'JSON', xml: 'XML',
}; // prettier-ignore

/** "PDF CSV XLSX JSON", the most finished first. */
export function formatWords(exporter: Exporter): string {
  const made = fileFormatsOf(exporter);
  return (['pdf', 'svg', 'dxf', 'xml', 'csv', 'xlsx', 'json'] as const)
    .filter((f) => made.includes(f))
    .map((f) => FORMAT_WORDS[f])
    .join(' ');
}
