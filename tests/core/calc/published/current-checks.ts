import { ambientFactor } from '@latchwork/core/calc/ambient-correction';
import { ampacity } from '@latchwork/core/calc/ampacity';
import { bundleFactor5088, bundleFactor975 } from '@latchwork/core/calc/bundle-factor';
import { conductorTemperature } from '@latchwork/core/calc/conductor-temperature';
import { contactDerating } from '@latchwork/core/calc/contact-derating';
import { contactHeating } from '@latchwork/core/calc/contact-heating';
import { copperK, shortCircuit } from '@latchwork/core/calc/short-circuit';
import { voltageDrop } from '@latchwork/core/calc/voltage-drop';
import ref from '../../../files/reference/ampacity.json';
import connector from '../../../files/reference/connector-derating.json';
import drops from '../../../files/reference/voltage-drop.json';
import { valueOf, type PublishedCheck } from './check';

const FAA = 'FAA AC 43.13-1B Change 1';
const MM_PER_FT = 304.8;
const awg = (gauge: number) => ({ system: 'awg', gauge }) as const;

/** ohm/ft or ohm/1000 ft and feet, as the handbooks state them. */
const drop = (ohmPerKft: number, ft: number, currentA: number, lengthIs: 'total-path' | 'one-way-two-wire' | 'one-way-three-phase', more: { limitV?: number; supplyV?: number; temperatureC?: number } = {}) =>
  valueOf(voltageDrop.run({ currentA, ohmPerKm: ohmPerKft / 0.3048, ohmPerKmAtC: 20, lengthMm: ft * MM_PER_FT, lengthIs, temperatureC: 20, metal: 'copper', jointsOhm: 0, ...more })); // prettier-ignore

const faaDrops = [...drops.FAA_11_7.rows, ...drops.FAA_11_8.rows].map((r): PublishedCheck => ({
  calculation: 'voltage-drop', group: 'AC 43.13-1B tables 11-7 and 11-8, exact fields', source: `${FAA}, tables 11-7 and 11-8`, confidence: 'published',
  what: `${r.awg} AWG, ${r.length_ft} ft, ${r.I_A} A`, computed: drop(r.ohm_per_ft * 1000, r.length_ft, r.I_A, 'total-path').dropV, published: r.VD_exact, unit: 'V', allowed: { absolute: 1e-9 },
})); // prettier-ignore

const [twoWire, threePhase, longest] = drops.others as unknown as [
  { in: { ohm_per_kft: number; one_way_ft: number; I: number }; out: { VD: number; percent_of_24V: number } },
  { in: { ohm_per_kft: number; ft: number; I: number }; out: { VD: number } },
  { out: { ft: number } },
];
const two = drop(twoWire.in.ohm_per_kft, twoWire.in.one_way_ft, twoWire.in.I, 'one-way-two-wire', {
  supplyV: 24,
});
const three = drop(threePhase.in.ohm_per_kft, threePhase.in.ft, threePhase.in.I, 'one-way-three-phase', {
  limitV: 14.4,
});
const otherDrops: PublishedCheck[] = [
  { calculation: 'voltage-drop', group: 'NEC-style examples', source: 'voltage drop seminar page (NEC chapter 9 table 8)', confidence: 'published', what: 'two-wire, 16 AWG, 100 ft, 4 A', computed: two.dropV, published: twoWire.out.VD, unit: 'V', allowed: { absolute: 1e-9 } },
  { calculation: 'voltage-drop', group: 'NEC-style examples', source: 'voltage drop seminar page', confidence: 'published', what: 'the same as a share of 24 V', computed: two.dropPercent!, published: twoWire.out.percent_of_24V, unit: '%', allowed: { absolute: 0.05 } },
  { calculation: 'voltage-drop', group: 'NEC-style examples', source: 'The basics of calculating voltage drop (trade magazine); 2 x 0.866 there, root 3 here', confidence: 'published', what: 'three-phase, 10 AWG, 200 ft, 20 A', computed: three.dropV, published: threePhase.out.VD, unit: 'V', allowed: { relative: 1e-4 } },
  { calculation: 'voltage-drop', group: 'NEC-style examples', source: 'The basics of calculating voltage drop', confidence: 'published', what: 'the same, longest for 14.4 V', computed: three.longestMm! / MM_PER_FT, published: longest.out.ft, unit: 'ft', allowed: { absolute: 0.05 } },
]; // prettier-ignore

const example = (name: string) => ref.examples.find((e) => e.name.startsWith(name))!;
const faa2 = example('FAA 11-68') as unknown as { in: Record<string, number>; out: Record<string, number> };
const free = (bundleFactor?: number) =>
  valueOf(
    ampacity.run({
      table: 'entered-free-air', size: awg(14), ratedC: 200, ambientC: 50, freeAirA: faa2.in['free_air_A']!, altitudeFt: faa2.in['altitude_ft']!,
      wires: faa2.in['wires']!, loadPercent: faa2.in['load_percent']!, ...(bundleFactor === undefined ? {} : { bundleFactor }),
    }),
  ); // prettier-ignore
const temperature = example('FAA conductor temperature') as unknown as typeof faa2;
const hot = valueOf(conductorTemperature.run({ currentA: temperature.in['I2']!, ampacityA: temperature.in['Imax']!, ambientC: temperature.in['T1']!, ratedC: temperature.in['TR']!, law: 'ac-43-13' })); // prettier-ignore
/** The length that drops the same when the wire is warmer: scale the longest length of the cold wire. */
const cold = drop(1, temperature.in['L1_ft']!, 20, 'total-path');
const warm = drop(1, 1, 20, 'total-path', { limitV: cold.dropV, temperatureC: hot.temperatureC });
const nec = example('NEC: 10 AWG') as unknown as typeof faa2;
const raceway = valueOf(ampacity.run({ table: 'nec-310-16-raceway', size: awg(10), ratedC: 90, ambientC: 48.9, wires: 3, altitudeFt: 0 })); // prettier-ignore
const bundles = (example('MIL-STD-975 bundle, 22') as unknown as typeof faa2).out['I_BW']!;
const ampacityExamples: PublishedCheck[] = [
  { calculation: 'ampacity', group: 'AC 43.13-1B paragraph 11-68, example 2', source: `${FAA}, 11-68`, confidence: 'published', what: '47 A in free air, after altitude', computed: free().baseA * free().altitudeFactor, published: faa2.out['after_altitude_A']!, unit: 'A', allowed: { absolute: 1e-9 } },
  { calculation: 'ampacity', group: 'AC 43.13-1B paragraph 11-68, example 2', source: `${FAA}, 11-68`, confidence: 'published', what: 'with the bundle factor 0.60 read there (exact 25.66; printed 26)', computed: free(0.6).currentA, published: faa2.out['exact_A']!, unit: 'A', allowed: { absolute: 0.005 } },
  { calculation: 'ampacity', group: 'AC 43.13-1B paragraph 11-68, example 2', source: `${FAA}, 11-68, figure 11-6`, confidence: 'published', what: 'bundle factor, 8 wires at 60 %, from the digitised curve', computed: free().bundleFactor, published: faa2.in['bundle_factor']!, unit: '', allowed: { absolute: 0.01 } },
  { calculation: 'conductor-temperature', group: 'AC 43.13-1B, same circuit', source: `${FAA}, 11-66 (formula from memory)`, confidence: 'derived', what: 'T2', computed: hot.temperatureC, published: temperature.out['T2_C']!, unit: 'degC', allowed: { absolute: 0.05 } },
  { calculation: 'voltage-drop', group: 'AC 43.13-1B, length at temperature', source: `${FAA}, 11-66`, confidence: 'published', what: 'L2 = 254.5 L1/(234.5 + T2)', computed: warm.longestMm! / MM_PER_FT, published: temperature.out['L2_ft']!, unit: 'ft', allowed: { absolute: 0.05 } },
  { calculation: 'ampacity', group: 'NEC example, 10 AWG 90 C at 120 F', source: 'NEC 310.15(B)(1), education article', confidence: 'published', what: '40 A x 0.82', computed: raceway.currentA, published: nec.out['A']!, unit: 'A', allowed: { absolute: 1e-9 } },
  { calculation: 'ampacity', group: 'MIL-STD-975 bundle formula', source: 'MIL-STD-975', confidence: 'memory', what: '22 AWG, 8 wires', computed: valueOf(ampacity.run({ table: 'mil-std-975', size: awg(22), ratedC: 200, ambientC: 70, wires: 8, altitudeFt: 0 })).currentA, published: bundles, unit: 'A', allowed: { absolute: 1e-9 } },
  ...[15, 16].map((n): PublishedCheck => ({ calculation: 'ampacity', group: 'MIL-STD-975 bundle formula', source: 'MIL-STD-975', confidence: 'memory', what: `${n} wires: the branches meet`, computed: 4.5 * bundleFactor975(n).factor, published: 2.25, unit: 'A', allowed: { absolute: 1e-9 } })),
]; // prettier-ignore

const curve = ref.tables.bundle_5088.rows.flatMap((r) =>
  ([20, 40, 60, 80, 100] as const).map((load): PublishedCheck => ({
    calculation: 'ampacity', group: 'MIL-W-5088L bundle curve, 19 x 5 cells', source: 'third-party digitisation, +/- 0.01', confidence: 'published',
    what: `${r.wires} wires at ${load} %`, computed: valueOf(bundleFactor5088(r.wires, load)).factor, published: r[`load${load}`], unit: '', allowed: { absolute: 1e-9 },
  })),
); // prettier-ignore

const table119 = ref.tables.FAA_11_9.rows.flatMap((r) =>
  ([105, 150, 200] as const).map((ratedC): PublishedCheck => ({
    calculation: 'ampacity', group: 'AC 43.13-1B table 11-9, 17 x 3 cells', source: `${FAA}, table 11-9`, confidence: 'published', what: `${r.awg} AWG at ${ratedC} C`,
    computed: valueOf(ampacity.run({ table: 'ac-43-13-table-11-9', size: awg(/^0+$/.test(r.awg) ? 1 - r.awg.length : Number(r.awg)), ratedC, ambientC: 70, wires: 33, loadPercent: 20, altitudeFt: 60_000 })).currentA,
    published: r[`r${ratedC}C`], unit: 'A', allowed: { absolute: 0 },
  })),
); // prettier-ignore

const upperEnd = (band: string): number =>
  Number(band.match(/\d+/g)!.at(-1) === '10' ? 10 : band.match(/\d+/g)!.at(-1));
const nec30 = Object.entries(ref.tables.NEC_ambient_30.rows).flatMap(([rating, bands]) =>
  Object.entries(bands as Record<string, number>).map(([band, factor]): PublishedCheck => ({
    calculation: 'ampacity', group: 'NEC ambient tables against the square-root law', source: 'NEC 310.15, 30 C basis', confidence: 'published',
    what: `${rating} C wire at ${band} C`, computed: ambientFactor(Number(rating), 30, upperEnd(band)), published: factor, unit: '', allowed: { absolute: 0.01 },
  })),
); // prettier-ignore
const nec40 = ref.tables.NEC_ambient_40.rows.flatMap((row) =>
  Object.entries(row).filter(([k]) => k !== 'ambient_C').map(([k, factor]): PublishedCheck => ({
    calculation: 'ampacity', group: 'NEC ambient tables against the square-root law', source: 'NEC 310.15, 40 C basis', confidence: 'published',
    what: `${k.slice(1)} C wire at ${row.ambient_C} C`, computed: ambientFactor(Number(k.slice(1)), 40, upperEnd(row.ambient_C)), published: factor as number, unit: '', allowed: { absolute: 0.01 },
  })),
); // prettier-ignore

const [heating, derating] = connector.checks as unknown as {
  in: Record<string, number>;
  out: Record<string, number>;
}[];
const derated = valueOf(contactDerating.run({ limitC: derating!.in['Tmax']!, knownA: derating!.in['I0']!, knownAtC: derating!.in['T0']!, ambientC: derating!.in['Ta']!, exponent: 2, curveFactor: 0.8 })); // prettier-ignore
const contacts: PublishedCheck[] = [
  { calculation: 'contact-heating', group: 'Square law', source: 'steady state, rise proportional to I squared', confidence: 'derived', what: '2 A of 3 A, 30 K', computed: valueOf(contactHeating.run({ currentA: heating!.in['I']!, ratedA: heating!.in['I_rated']!, riseAtRatedK: heating!.in['rise_at_rated_K']!, exponent: 2, loadedWaysFactor: 1, ambientC: 25 })).riseK, published: heating!.out['rise_K']!, unit: 'K', allowed: { absolute: 5e-4 } },
  { calculation: 'contact-derating', group: 'Base and derating curve', source: 'square law; 0.8 of IEC 60512-5-2 from memory', confidence: 'derived', what: 'base at 85 C', computed: derated.baseA, published: derating!.out['I_base']!, unit: 'A', allowed: { absolute: 1e-9 } },
  { calculation: 'contact-derating', group: 'Base and derating curve', source: 'square law; 0.8 of IEC 60512-5-2 from memory', confidence: 'derived', what: 'derated at 85 C', computed: derated.deratedA, published: derating!.out['I_derated']!, unit: 'A', allowed: { absolute: 1e-9 } },
]; // prettier-ignore

/** k of IEC 60364-4-43 table 43A for copper (values from memory). */
const kValues: PublishedCheck[] = [
  ['PVC up to 300 mm2', 70, 160, 115],
  ['PVC above 300 mm2', 70, 140, 103],
  ['XLPE or EPR', 90, 250, 143],
  ['rubber 60 C', 60, 200, 141],
].map(([what, from, to, k]) => ({
  calculation: 'short-circuit', group: 'k values of IEC 60364-4-43', source: 'IEC 60364-4-43 table 43A', confidence: 'memory', what: String(what),
  computed: copperK(Number(from), Number(to)), published: Number(k), unit: 'A s^0.5/mm2', allowed: { relative: 0.005 },
})); // prettier-ignore
const shorted = valueOf(
  shortCircuit.run({ areaMm2: 2.5, startC: 70, limitC: 160, faultA: 1000, clearingS: 0.1 }),
);
const byHand: PublishedCheck[] = [
  { calculation: 'short-circuit', group: 'Hand example, 2.5 mm2 PVC at 1 kA', source: 't = k2 S2/I2 with k = 115', confidence: 'derived', what: 'longest clearing time', computed: shorted.longestS!, published: (115 * 2.5) ** 2 / 1e6, unit: 's', allowed: { relative: 0.002 } },
]; // prettier-ignore

export const currentChecks: readonly PublishedCheck[] = [
  ...faaDrops,
  ...otherDrops,
  ...ampacityExamples,
  ...table119,
  ...curve,
  ...nec30,
  ...nec40,
  ...contacts,
  ...kValues,
  ...byHand,
];
