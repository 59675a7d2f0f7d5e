import { bundleHeat } from '@latchwork/core/calc/bundle-heat';
import { COPPER_RESISTIVITY_OHM_MM2_PER_KM } from '@latchwork/core/calc/data/copper';
import ref from '../../../files/reference/ampacity.json';
import { valueOf, type PublishedCheck } from './check';

/** Metal area (ASTM B258) and insulated diameter, mm, of building wire by AWG; diameters typical, from memory. */
const BUILDING_WIRE: Readonly<Record<number, readonly [areaMm2: number, odMm: number]>> = {
  18: [0.823, 2.8], 16: [1.31, 3], 14: [2.08, 3.4], 12: [3.31, 3.9], 10: [5.26, 4.5], 8: [8.37, 6], 6: [13.3, 7.6], 4: [21.2, 9],
}; // prettier-ignore

/** Current at which the estimate for n equal wires reaches a limit, A. Strands fill 80 % of a conductor's circle. */
function currentAt(n: number, areaMm2: number, odMm: number, ambientC: number, limitC: number): number {
  const conductorMm = Math.sqrt((4 * areaMm2) / (0.8 * Math.PI));
  const ohmPerKm = (COPPER_RESISTIVITY_OHM_MM2_PER_KM * 1.02) / areaMm2;
  const wires = Array.from({ length: n }, (_, i) => ({
    id: `${i}`,
    ohmPerKm,
    currentA: 1,
    conductorMm,
    odMm,
  }));
  // Bundle diameter 1.2 x sqrt(sum of d^2), common practice.
  const diameterMm = n === 1 ? odMm : 1.2 * odMm * Math.sqrt(n);
  return valueOf(bundleHeat.run(bundleHeat.inputs.parse({ wires, diameterMm, ambientC, limitC })))
    .loadFactor!;
}

const freeAir = [...ref.tables.NEC_310_17.small.rows, ...ref.tables.NEC_310_17.rows].map(
  (r): PublishedCheck => {
    const [areaMm2, odMm] = BUILDING_WIRE[r.awg]!;
    return {
    calculation: 'bundle-heat', group: 'Estimate against free-air currents, 90 C wire at 30 C', source: 'NEC table 310.17 (90 C column)', confidence: 'published',
    what: `${r.awg} AWG`, computed: currentAt(1, areaMm2, odMm, 30, 90), published: r.r90, unit: 'A', allowed: { relative: 0.15 },
  }; // prettier-ignore
  },
);

const chart: PublishedCheck = {
  calculation: 'bundle-heat', group: 'Estimate against the free-air chart of AC 43.13-1B', source: 'FAA AC 43.13-1B, 11-68 example 2', confidence: 'published',
  what: '14 AWG, 150 K above 50 C', computed: currentAt(1, 1.94, 2.6, 50, 200), published: 47, unit: 'A', allowed: { relative: 0.15 },
}; // prettier-ignore

const single = currentAt(1, 0.382, 1.2, 70, 200);
const bundles = ref.tables.bundle_5088.rows.map((r): PublishedCheck => ({
  calculation: 'bundle-heat', group: 'Estimate against the bundle curve, all wires loaded', source: 'MIL-W-5088L curve, 100 % load', confidence: 'published',
  what: `${r.wires} wires`, computed: currentAt(r.wires, 0.382, 1.2, 70, 200) / single, published: r.load100, unit: '', allowed: { absolute: 0.05 },
})); // prettier-ignore

export const heatChecks: readonly PublishedCheck[] = [...freeAir, chart, ...bundles];
