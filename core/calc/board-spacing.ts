import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { BOARD_SPACING, BOARD_SPACING_PER_V, IPC_2221 } from './data/insulation-tables';

export interface BoardSpacing extends Answer {
  readonly spacingMm: number;
}

const COLUMNS = { inner: 'innerMm', 'outer-uncoated': 'uncoatedMm', 'outer-coated': 'coatedMm' } as const;

const inputs = z.strictObject({
  peakV: field(z.number().nonnegative(), 'Voltage, direct or peak', 'V'),
  layer: field(z.enum(['inner', 'outer-uncoated', 'outer-coated']), 'Layer'),
});

/**
 * Spacing of conductors on the board side of a header, IPC-2221B table 6-1 (generic design, not mains insulation). Outer
 * uncoated holds up to 3050 m. Above 500 V the table adds a length per volt.
 */
export const boardSpacing = calculation<typeof inputs, BoardSpacing>({
  id: 'board-spacing',
  title: 'Spacing on the board under a header',
  about: 'IPC-2221B table 6-1.',
  inputs,
  outputs: { spacingMm: { label: 'Spacing', unit: 'mm' } },
  sources: [IPC_2221],
  run({ peakV, layer }) {
    const column = COLUMNS[layer];
    const row = BOARD_SPACING.find((r) => peakV <= r.toV) ?? BOARD_SPACING.at(-1)!;
    const aboveMm = Math.max(0, peakV - 500) * BOARD_SPACING_PER_V[column];
    return answer({
      spacingMm: row[column] + aboveMm,
      working: {
        formula: peakV > 500 ? 'row of 500 V + (V - 500) x mm per volt' : 'row of table 6-1',
        figures: [
          figure('Voltage', peakV, 'V'),
          figure('Row', row[column], 'mm'),
          figure('Above 500 V', aboveMm, 'mm'),
        ],
        sources: [IPC_2221],
        notes: layer === 'outer-uncoated' ? ['Up to 3050 m.'] : [],
      },
    });
  },
});
