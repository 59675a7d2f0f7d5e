import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { CREEPAGE, IEC_60664, TRACKING_GROUPS } from './data/insulation-tables';

export interface Creepage extends Answer {
  readonly creepageMm: number;
  /** Of the table, before doubling and before the clearance is compared. */
  readonly tableMm: number;
  readonly rowV: number;
}

export const MaterialGroup = z.enum(['I', 'II', 'IIIa', 'IIIb']);

/** Material group of a comparative tracking index (IEC 60112; limits from memory); undefined below 100. */
export const groupOfCti = (cti: number): z.infer<typeof MaterialGroup> | undefined =>
  TRACKING_GROUPS.find((g) => cti >= g.fromCti)?.group;

const inputs = z.strictObject({
  voltageV: field(z.number().positive(), 'Working voltage, rms', 'V'),
  pollutionDegree: field(z.union([z.literal(1), z.literal(2), z.literal(3)]), 'Pollution degree'),
  group: field(MaterialGroup, 'Material group'),
  printedBoard: field(z.boolean().default(false), 'Printed wiring'),
  reinforced: field(z.boolean().default(false), 'Reinforced insulation'),
  clearanceMm: field(z.number().nonnegative().optional(), 'Clearance of the same gap', 'mm'),
});

/**
 * Creepage along a surface, IEC 60664-1 table F.5: next row up (48 V takes the 50 V row), doubled for reinforced insulation,
 * and never less than the clearance. Groups differ only from 40 V up. Group IIIb is refused at pollution degree 3 above 630 V
 * and on printed wiring at degree 2.
 */
export const creepage = calculation<typeof inputs, Creepage>({
  id: 'creepage',
  title: 'Creepage distance',
  about: 'IEC 60664-1 table F.5, next row up, at least the clearance.',
  inputs,
  outputs: {
    creepageMm: { label: 'Creepage', unit: 'mm' },
    tableMm: { label: 'Table F.5', unit: 'mm' },
    rowV: { label: 'Row', unit: 'V' },
  },
  sources: [IEC_60664('F.5')],
  run(i) {
    const beyond = (input: string, value: number | string, range: string) =>
      ({ ok: false, problem: { code: 'out-of-range', input, value, range } }) as const;
    const row = CREEPAGE.find((r) => i.voltageV <= r.voltageV);
    if (!row) return beyond('voltageV', i.voltageV, 'table F.5 ends here at 1000 V');
    if (i.group === 'IIIb' && i.pollutionDegree === 3 && i.voltageV > 630)
      return beyond('group', i.group, 'not to be used above 630 V at pollution degree 3');
    if (i.printedBoard && (i.pollutionDegree === 3 || (i.pollutionDegree === 2 && i.group === 'IIIb')))
      return beyond('printedBoard', 'true', 'table F.5 has no column for it here');
    const column = ['I', 'II', 'IIIa', 'IIIb'].indexOf(i.group);
    const byGroup = i.pollutionDegree === 2 ? row.pd2Mm : row.pd3Mm;
    const tableMm = i.printedBoard
      ? i.pollutionDegree === 1
        ? row.boardPd1Mm
        : row.boardPd2Mm
      : i.pollutionDegree === 1
        ? row.pd1Mm
        : byGroup[Math.min(column, 2)]!;
    const insulationMm = tableMm * (i.reinforced ? 2 : 1);
    return answer({
      creepageMm: Math.max(insulationMm, i.clearanceMm ?? 0),
      tableMm,
      rowV: row.voltageV,
      working: {
        formula: 'creepage = max(table F.5 x (2 if reinforced), clearance)',
        figures: [
          figure('Row', row.voltageV, 'V'),
          figure('Table F.5', tableMm, 'mm'),
          figure('Pollution degree', i.pollutionDegree),
          figure('Material group', i.group),
          ...(i.clearanceMm === undefined ? [] : [figure('Clearance', i.clearanceMm, 'mm')]),
        ],
        sources: [IEC_60664('F.5')],
        notes: [
          'Next row up; no interpolation.',
          ...(i.clearanceMm === undefined ? ['Not compared with a clearance.'] : []),
        ],
      },
    });
  },
});
