import { formGrid } from '../paper/form-grid';
import type { PaperBlock } from '../paper/paper';
import { cellText } from '../paper/paper-table';
import type { RowOf } from '../table';
import { HEIGHT_SAMPLES, PULL_SAMPLES } from './crimp-checks';
import type { CrimpKey } from './crimp-rows';

const numbered = (what: string, n: number) =>
  Array.from({ length: n }, (_, i) => ({ title: `${what} ${i + 1}`, share: 2 }));

/** Boxes for the measured values of one crimp, with its limits above them. */
export function crimpForm({ cells: c }: RowOf<CrimpKey>, rows = 8): PaperBlock[] {
  const heights =
    c.heightMinMm === null
      ? 'crimp height, limits not stated'
      : `crimp height ${c.heightMinMm} to ${c.heightMaxMm} mm`;
  const pulls =
    c.pullMinN === null ? 'pull-out force, limit not stated' : `pull-out force at least ${c.pullMinN} N`;
  return [
    {
      kind: 'drawing',
      form: true,
      drawing: formGrid(
        [
          { title: 'Date, time', share: 3 },
          { title: 'Contact lot', share: 3 },
          { title: 'Wire lot', share: 3 },
          ...numbered('Height', HEIGHT_SAMPLES),
          { title: 'Width', share: 2 },
          { title: 'Strip', share: 2 },
          { title: 'Seen', share: 1.6 },
          { title: 'Operator', share: 2.6 },
        ],
        Array.from({ length: rows }, () => []),
      ),
      caption: `${heights}; width ${cellText(c.widthMm)} mm; strip ${cellText(c.stripMm)} ± ${cellText(c.stripToleranceMm)} mm; seen: visual criteria met`,
    },
    {
      kind: 'drawing',
      form: true,
      drawing: formGrid(
        [
          { title: 'Date, time', share: 3 },
          { title: 'Reason of the check', share: 5 },
          ...numbered('Pull', PULL_SAMPLES),
          { title: 'Broke where', share: 3 },
          { title: 'Gauge', share: 2.4 },
          { title: 'Verdict', share: 2.2 },
          { title: 'Operator', share: 2.6 },
        ],
        Array.from({ length: rows }, () => []),
      ),
      caption: pulls,
    },
  ];
}
