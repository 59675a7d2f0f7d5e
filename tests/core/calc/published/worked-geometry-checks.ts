import { crimpEquivalentSize } from '@latchwork/core/calc/crimp-equivalent-size';
import { cutLength } from '@latchwork/core/calc/cut-length';
import { firstTie } from '@latchwork/core/calc/first-tie';
import { harnessMass } from '@latchwork/core/calc/harness-mass';
import { latchedThickness } from '@latchwork/core/calc/latched-thickness';
import { lengthStack } from '@latchwork/core/calc/length-stack';
import { pegFit } from '@latchwork/core/calc/peg-fit';
import { pitchError } from '@latchwork/core/calc/pitch-error';
import { serviceLoop } from '@latchwork/core/calc/service-loop';
import { sleeveLength } from '@latchwork/core/calc/sleeve-length';
import { tailProtrusion } from '@latchwork/core/calc/tail-protrusion';
import { tapeLength } from '@latchwork/core/calc/tape-length';
import { tieSpacing } from '@latchwork/core/calc/tie-spacing';
import { wireMass } from '@latchwork/core/calc/wire-mass';
import awg from '../../../files/reference/awg.json';
import mass from '../../../files/reference/mass.json';
import { valueOf, type PublishedCheck } from './check';

const worked = {
  group: 'worked by hand',
  source: 'hand',
  confidence: 'derived',
  allowed: { absolute: 1e-9 },
} as const;
const size = (gauge: number) => ({ size: { system: 'awg' as const, gauge } });
const crimp = (...gauges: number[]) =>
  valueOf(crimpEquivalentSize.run({ wires: gauges.map(size), evenGauges: true }));
const cmil = (name: string): number => awg.rows.find((r) => r.awg === name)!.nominal_cmil;
const stack = valueOf(
  lengthStack.run({
    elements: [
      { nominalMm: 100, plusMm: 2, minusMm: 0 },
      { nominalMm: 200, plusMm: 3, minusMm: 3 },
      { nominalMm: 50, plusMm: 4, minusMm: 0 },
    ],
    fromPoint: 0,
  }),
);
const board = {
  tailLengthMm: 3.2,
  standOffMm: 0.3,
  boardThicknessMm: 1.6,
  tailToleranceMm: 0.1,
  boardTolerance: 0.1,
};
const cut = {
  routeMm: 300,
  fromAllowanceMm: 8.4,
  toAllowanceMm: -2.1,
  serviceLoopMm: 20,
  takeUpMm: 3.25,
  extraMm: 0,
};

/** A solid conductor of next to nothing leaves the density of the insulation: pi/4 mm2 of a wire of 1 mm. */
const densities = (['XLPE', 'ETFE', 'FEP'] as const).map((insulation): PublishedCheck => ({
  ...worked, calculation: 'wire-mass', group: 'densities of insulations', source: 'common densities', confidence: 'memory', what: insulation,
  computed: valueOf(wireMass.run({ areaMm2: 1e-9, stranded: false, diameterMm: 1, insulation })).insulationGPerM / (Math.PI / 4),
  published: mass.others_g_per_cm3[insulation], unit: 'g/cm3', allowed: { relative: 1e-6 },
})); // prettier-ignore

/** Where nothing is published, numbers that anybody can work out with a pencil. */
export const workedGeometryChecks: readonly PublishedCheck[] = [
  ...densities,
  // 22 AWG is 640 cmil (25.3 mil squared, three figures): two are 1280, between 20 AWG (1020) and 18 AWG (1620).
  { ...worked, calculation: 'crimp-equivalent-size', source: 'NASA-STD-8739.4, 19.11; ASTM B258', group: 'summed circular mils', what: '22 + 22 AWG', computed: crimp(22, 22).circularMils, published: 2 * cmil('22'), unit: 'cmil' },
  { ...worked, calculation: 'crimp-equivalent-size', source: 'NASA-STD-8739.4, 19.11; ASTM B258', group: 'summed circular mils', what: '22 + 22 AWG is 18 AWG', computed: crimp(22, 22).equivalentGauge, published: 18, unit: 'AWG' },
  { ...worked, calculation: 'crimp-equivalent-size', source: 'NASA-STD-8739.4, 19.11; ASTM B258', group: 'summed circular mils', what: '20 + 22 AWG is 16 AWG (1660 cmil)', computed: crimp(20, 22).equivalentGauge, published: 16, unit: 'AWG' },
  { ...worked, calculation: 'crimp-equivalent-size', source: 'NASA-STD-8739.4, 19.11; ASTM B258', group: 'summed circular mils', what: 'one 24 AWG matches itself', computed: crimp(24).equivalentGauge, published: 24, unit: 'AWG' },
  { ...worked, calculation: 'cut-length', what: '300 + 8.4 - 2.1 + 20 + 3.25', computed: valueOf(cutLength.run({ ...cut, stepMm: 1 })).exactMm, published: 329.55, unit: 'mm' },
  { ...worked, calculation: 'cut-length', what: 'the same, up to 1 mm', computed: valueOf(cutLength.run({ ...cut, stepMm: 1 })).cutMm, published: 330, unit: 'mm' },
  { ...worked, calculation: 'cut-length', what: 'the same, up to 5 mm', computed: valueOf(cutLength.run({ ...cut, stepMm: 5 })).cutMm, published: 330, unit: 'mm' },
  { ...worked, calculation: 'service-loop', what: '2 x (4 + 5) + 10', computed: valueOf(serviceLoop.run({ stripLengthMm: 4, crimpLengthMm: 5, reterminations: 2, motionMm: 10 })).slackMm, published: 28, unit: 'mm' },
  { ...worked, calculation: 'length-stack', what: 'shortest of 100 +2, 200 +/-3, 50 +4', computed: stack.worstMinMm, published: 347, unit: 'mm' },
  { ...worked, calculation: 'length-stack', what: 'longest', computed: stack.worstMaxMm, published: 359, unit: 'mm' },
  // Mid-value 353, half widths 1, 3 and 2: root of 14.
  { ...worked, calculation: 'length-stack', what: 'shortest by root sum square', computed: stack.rssMinMm, published: 353 - Math.sqrt(14), unit: 'mm' },
  { ...worked, calculation: 'length-stack', what: 'longest by root sum square', computed: stack.rssMaxMm, published: 353 + Math.sqrt(14), unit: 'mm' },
  { ...worked, calculation: 'first-tie', what: 'face 60 mm, bundle 6 mm', computed: valueOf(firstTie.run({ kind: 'wires', diameterMm: 6, faceWidthMm: 60, leastMm: 25 })).straightMm, published: 27, unit: 'mm' },
  { ...worked, calculation: 'tie-spacing', what: '1 m and one breakout, 12 in apart', computed: valueOf(tieSpacing.run({ table: 'ac-43-13-1b', diameterMm: 8, lengthMm: 1000, breakouts: 1 })).ties, published: 6, unit: '' },
  { ...worked, calculation: 'tie-spacing', source: 'FAA AC 43.13-1B, 11-158', confidence: 'published', group: '12 inches', what: 'largest spacing', computed: valueOf(tieSpacing.run({ table: 'ac-43-13-1b', diameterMm: 8, lengthMm: 0, breakouts: 0 })).spacingMaxMm, published: 304.8, unit: 'mm' },
  // pi x 10 x 1000/(19 x 0.5)
  { ...worked, calculation: 'tape-length', what: '10 mm, 1 m, 19 mm half overlapped', computed: valueOf(tapeLength.run({ diameterMm: 10, lengthMm: 1000, widthMm: 19, overlap: 0.5, endTurns: 0 })).tapeMm, published: 3306.9396, unit: 'mm', allowed: { absolute: 1e-4 } },
  { ...worked, calculation: 'sleeve-length', what: '500 x 1.12 + 20', computed: valueOf(sleeveLength.run({ lengthMm: 500, takeUp: 0.12, endsMm: 20 })).sleeveMm, published: 580, unit: 'mm' },
  { ...worked, calculation: 'harness-mass', what: '2 x 1.5 g + 3 x 0.4 m x 5 g/m', computed: valueOf(harnessMass.run({ items: [{ name: 'housing', massG: 1.5, quantity: 2 }, { name: 'wire', massGPerM: 5, lengthMm: 400, quantity: 3 }] })).massG, published: 9, unit: 'g' },
  // 1 mm2 solid copper in 2 mm of PVC: 8.89 + (pi - 1) x 1.4
  { ...worked, calculation: 'wire-mass', what: '1 mm2 solid in 2 mm of PVC', computed: valueOf(wireMass.run({ areaMm2: 1, stranded: false, diameterMm: 2, insulation: 'PVC' })).massGPerM, published: 11.8882297, unit: 'g/m', allowed: { absolute: 1e-6 } },
  { ...worked, calculation: 'tail-protrusion', what: '3.2 - 0.3 - 1.6', computed: valueOf(tailProtrusion.run(board)).protrusionMm, published: 1.3, unit: 'mm' },
  { ...worked, calculation: 'tail-protrusion', what: 'least of it, tail -0.1, board +10 %', computed: valueOf(tailProtrusion.run(board)).leastMm, published: 1.04, unit: 'mm' },
  { ...worked, calculation: 'pitch-error', source: 'practitioner reports of 2.50 against 2.54 mm', what: '6 ways: 0.20 mm', computed: valueOf(pitchError.run({ ways: 6, pitchMm: 2.5, otherPitchMm: 2.54 })).endToEndMm, published: 0.2, unit: 'mm' },
  { ...worked, calculation: 'pitch-error', source: 'practitioner reports of 2.50 against 2.54 mm', what: '12 ways: 0.44 mm', computed: valueOf(pitchError.run({ ways: 12, pitchMm: 2.5, otherPitchMm: 2.54 })).endToEndMm, published: 0.44, unit: 'mm' },
  { ...worked, calculation: 'peg-fit', what: 'peg 2.00 -/+ 0.05 in 2.20 -/+ 0.05, 0.06 off', computed: valueOf(pegFit.run({ pegMm: 2, pegToleranceMm: 0.05, holeMm: 2.2, holeToleranceMm: 0.05, distanceErrorMm: 0.06 })).spareMm, published: 0.04, unit: 'mm' },
  { ...worked, calculation: 'latched-thickness', what: '1.5 + 2 x 0.08 + 0.1', computed: valueOf(latchedThickness.run({ sheetMm: 1.5, sheetToleranceMm: 0.1, coatingPerFaceMm: 0.08, coatedFaces: 2, labelMm: 0.1 })).thicknessMm, published: 1.76, unit: 'mm' },
]; // prettier-ignore
