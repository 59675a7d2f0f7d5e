import { boardSpacing } from '@latchwork/core/calc/board-spacing';
import { clearance } from '@latchwork/core/calc/clearance';
import { creepage } from '@latchwork/core/calc/creepage';
import ref from '../../../files/reference/insulation-coordination.json';
import { valueOf, type PublishedCheck } from './check';

const T = ref.tables;
const at = (
  impulseV: number,
  pollutionDegree: 1 | 2 | 3,
  more: { homogeneous?: boolean; altitudeM?: number } = {},
) =>
  valueOf(
    clearance.run({
      impulseV,
      pollutionDegree,
      homogeneous: false,
      altitudeM: 0,
      reinforced: false,
      ...more,
    }),
  );
const along = (voltageV: number, pollutionDegree: 1 | 2 | 3, group: 'I' | 'II' | 'IIIa', more: { printedBoard?: boolean; reinforced?: boolean } = {}) =>
  valueOf(creepage.run({ voltageV, pollutionDegree, group, printedBoard: false, reinforced: false, ...more })).creepageMm; // prettier-ignore
const cell = (calculation: string, group: string, source: string, what: string, computed: number, published: number, unit = 'mm'): PublishedCheck => ({
  calculation, group, source, confidence: 'published', what, computed, published, unit, allowed: { absolute: 0 },
}); // prettier-ignore

const impulses = T.F1_rated_impulse.rows.flatMap((r) =>
  (['I', 'II', 'III', 'IV'] as const).map((overvoltageCategory) =>
    cell('clearance', 'IEC 60664-1 table F.1', 'IEC 60664-1:2020 table F.1', `${r.line_to_neutral_max} V, category ${overvoltageCategory}`,
      valueOf(clearance.run({ lineToNeutralV: r.line_to_neutral_max, overvoltageCategory, pollutionDegree: 2, homogeneous: false, altitudeM: 0, reinforced: false })).impulseV, r[`OVC_${overvoltageCategory}`], 'V'),
  ),
); // prettier-ignore

const gaps = T.F2_clearance.rows.flatMap((r) =>
  ([1, 2, 3] as const).flatMap((pd) =>
    [false, true].map((homogeneous) =>
      cell('clearance', 'IEC 60664-1 table F.2', 'IEC 60664-1:2020 table F.2', `${r.impulse_kV} kV, PD${pd}`,
        at(Math.round(r.impulse_kV * 1000), pd, { homogeneous }).clearanceMm, r[`${homogeneous ? 'B' : 'A'}_PD${pd}`]),
    ),
  ),
); // prettier-ignore

const peaks = T.F8_clearance_steady_peak.rows.map((r) =>
  cell('clearance', 'IEC 60664-1 table F.8', 'IEC 60664-1:2020 table F.8', `${r.peak_kV} kV peak`,
    valueOf(clearance.run({ impulseV: 330, peakV: Math.round(r.peak_kV * 1000), pollutionDegree: 1, homogeneous: false, altitudeM: 0, reinforced: false })).clearanceMm, r.case_A),
); // prettier-ignore

const altitudes = T.A2_altitude.rows.map((r) =>
  cell('clearance', 'IEC 60664-1 table A.2', 'IEC 60664-1 table A.2', `${r.altitude_m} m`, at(2500, 2, { altitudeM: r.altitude_m }).altitudeFactor, r.factor, ''),
); // prettier-ignore

const surfaces = T.F5_creepage.rows.flatMap((r) => [
  cell('creepage', 'IEC 60664-1 table F.5', 'IEC 60664-1:2020 table F.5', `${r.V_rms} V, board PD1`, along(r.V_rms, 1, 'I', { printedBoard: true }), r.pwb_PD1),
  cell('creepage', 'IEC 60664-1 table F.5', 'IEC 60664-1:2020 table F.5', `${r.V_rms} V, board PD2`, along(r.V_rms, 2, 'IIIa', { printedBoard: true }), r.pwb_PD2),
  cell('creepage', 'IEC 60664-1 table F.5', 'IEC 60664-1:2020 table F.5', `${r.V_rms} V, PD1`, along(r.V_rms, 1, 'II'), r.PD1),
  ...([2, 3] as const).flatMap((pd) =>
    (['I', 'II', 'IIIa'] as const).map((g) =>
      cell('creepage', 'IEC 60664-1 table F.5', 'IEC 60664-1:2020 table F.5', `${r.V_rms} V, PD${pd}, group ${g}`, along(r.V_rms, pd, g), r[`PD${pd}_${g === 'IIIa' ? 'III' : g}`]),
    ),
  ),
]); // prettier-ignore

const [mains, , extraLow] = ref.checks;
const mainsAnswer = valueOf(clearance.run({ lineToNeutralV: 300, overvoltageCategory: 'II', pollutionDegree: 2, homogeneous: false, altitudeM: 0, reinforced: false })); // prettier-ignore
const examples: PublishedCheck[] = [
  cell('clearance', 'Worked examples of IEC 60664-1', 'public design notes', `${mains!.name}: impulse`, mainsAnswer.impulseV, mains!.out.impulse_V!, 'V'),
  cell('clearance', 'Worked examples of IEC 60664-1', 'public design notes', mains!.name, mainsAnswer.clearanceMm, mains!.out.clearance_mm!),
  cell('creepage', 'Worked examples of IEC 60664-1', 'public design notes', mains!.name, along(250, 2, 'IIIa'), mains!.out.creepage_mm!),
  cell('creepage', 'Worked examples of IEC 60664-1', 'public design notes', 'the same, reinforced', along(250, 2, 'IIIa', { reinforced: true }), ref.checks[1]!.out.creepage_mm!),
  cell('creepage', 'Worked examples of IEC 60664-1', 'public design notes', extraLow!.name, along(48, 2, 'IIIa'), extraLow!.out.creepage_mm!),
]; // prettier-ignore

const spacings = T.IPC2221_spacing.rows.flatMap((r) => {
  const above = r.V.startsWith('>');
  const peakV = above ? 501 : Number(r.V.split('-')[1]);
  const base = T.IPC2221_spacing.rows.at(-2)!;
  return (['B1', 'B2', 'B4'] as const).map((column): PublishedCheck => ({
    ...cell('board-spacing', 'IPC-2221B table 6-1', 'IPC-2221B table 6-1', `${r.V} V, ${column}`,
      valueOf(boardSpacing.run({ peakV, layer: ({ B1: 'inner', B2: 'outer-uncoated', B4: 'outer-coated' } as const)[column] })).spacingMm,
      above ? base[column] + r[column] : r[column]),
    allowed: { absolute: 1e-12 },
  }));
}); // prettier-ignore

export const insulationChecks: readonly PublishedCheck[] = [
  ...impulses,
  ...gaps,
  ...peaks,
  ...altitudes,
  ...surfaces,
  ...examples,
  ...spacings,
];
