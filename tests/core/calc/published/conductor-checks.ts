import { conductorArea } from '@latchwork/core/calc/conductor-area';
import { conductorMass } from '@latchwork/core/calc/conductor-mass';
import { conductorResistance } from '@latchwork/core/calc/conductor-resistance';
import awg from '../../../files/reference/awg.json';
import mass from '../../../files/reference/mass.json';
import stranding from '../../../files/reference/stranding.json';
import { valueOf, type PublishedCheck } from './check';

const FT_PER_KFT_IN_MM = 304_800;
const MM2_PER_CMIL = (Math.PI / 4) * 0.0254 ** 2;

const gauge = (text: string): number => (text.endsWith('/0') ? 1 - Number(text[0]) : Number(text));
const solidAreaMm2 = (text: string): number =>
  valueOf(conductorArea.run({ size: { system: 'awg', gauge: gauge(text) } })).areaMm2;
const at = (areaMm2: number, stranded: boolean, temperatureC = 20, lengthMm = 1e6) =>
  valueOf(conductorResistance.run({ areaMm2, stranded, lengthMm, temperatureC }));

const awgChecks = awg.rows.flatMap((row): PublishedCheck[] => {
  const common = {
    source: 'ASTM B258 formula, IACS resistivity and density',
    confidence: 'derived' as const,
  };
  const areaMm2 = solidAreaMm2(row.awg);
  const wiki = (row.published as { A?: { ohm_per_km?: number } } | undefined)?.A?.ohm_per_km;
  return [
    { ...common, calculation: 'conductor-area', group: 'AWG 4/0 to 40, solid', what: `area of ${row.awg} AWG`, computed: areaMm2, published: row.area_mm2, unit: 'mm2', allowed: { relative: 1e-5 * 5 } },
    { ...common, calculation: 'conductor-resistance', group: 'AWG 4/0 to 40, solid at 20 C', what: `R of ${row.awg} AWG`, computed: at(areaMm2, false).ohm, published: row.R20_ohm_per_km, unit: 'ohm/km', allowed: { relative: 1e-4 } },
    { ...common, calculation: 'conductor-mass', group: 'AWG 4/0 to 40, solid', what: `mass of ${row.awg} AWG`, computed: valueOf(conductorMass.run({ areaMm2, stranded: false, densityGPerCm3: 8.89, lengthMm: 1e6 })).kgPerKm, published: row.mass_kg_per_km, unit: 'kg/km', allowed: { relative: 3e-4 } },
    ...(wiki === undefined ? [] : [{ calculation: 'conductor-resistance', group: 'AWG table, ohm/km column', source: 'Wikibooks, Engineering Tables, American Wire Gauge', confidence: 'published' as const, what: `R of ${row.awg} AWG`, computed: at(areaMm2, false).ohm, published: wiki, unit: 'ohm/km', allowed: { relative: 6e-3 } }]),
  ]; // prettier-ignore
});

const massChecks = mass.solid_awg.rows.map((row): PublishedCheck => ({
  calculation: 'conductor-mass', group: 'Bare solid copper, lb/1000 ft', source: 'AWG table of 1998, checked there against a machinery handbook', confidence: 'published',
  what: `mass of ${row.awg} AWG`,
  computed: valueOf(conductorMass.run({ areaMm2: solidAreaMm2(row.awg), stranded: false, densityGPerCm3: mass.copper.density.value, lengthMm: FT_PER_KFT_IN_MM })).massG / 453.59237,
  published: row.lb_per_kft, unit: 'lb/kft', allowed: { relative: 5e-4 },
})); // prettier-ignore

const strandChecks = stranding.tables.strandings.rows.flatMap((row): PublishedCheck[] => {
  const common = {
    source: 'stranded wire charts; circular mils from nominal strand diameters',
    confidence: 'published' as const,
  };
  const area = valueOf(
    conductorArea.run({ strands: row.strands, strandDiameterMm: row.strand_d_mil * 0.0254 }),
  );
  const what = `${row.awg} AWG ${row.stranding}`;
  return [
    { ...common, calculation: 'conductor-area', group: 'Common strandings, area', what, computed: area.areaMm2, published: row.area_mm2, unit: 'mm2', allowed: { relative: 5e-4 } },
    { ...common, calculation: 'conductor-area', group: 'Common strandings, circular mils', what, computed: area.circularMils, published: row.cmil, unit: 'cmil', allowed: { relative: 1e-6 } },
    { ...common, calculation: 'conductor-resistance', group: 'Common strandings, area-only resistance', what, computed: at(area.areaMm2, false).ohm, published: row.R20_nominal_solid_equiv_ohm_per_km, unit: 'ohm/km', allowed: { relative: 5e-4 } },
  ]; // prettier-ignore
});

const maximum = (group: string, source: string, what: string, areaMm2: number, published: number, below = 0.2): PublishedCheck => ({
  calculation: 'conductor-resistance', group, source, confidence: 'published', what, computed: at(areaMm2, true).ohm, published, unit: 'ohm/km', allowed: { below },
}); // prettier-ignore

const maxima = [
  ...stranding.tables.IEC60228.rows.flatMap((r) => [
    maximum('Maxima of IEC 60228, class 1 and 2', 'IEC 60228 tables 1 and 2', `${r.mm2} mm2 plain`, r.mm2, r.cl12_plain),
    maximum('Maxima of IEC 60228, class 5 and 6', 'IEC 60228 tables 3 and 4', `${r.mm2} mm2 plain`, r.mm2, r.cl56_plain),
    maximum('Maxima of IEC 60228, metal-coated', 'IEC 60228 tables 1 to 4', `${r.mm2} mm2 coated`, r.mm2, r.cl56_coated),
  ]),
  ...stranding.tables.small_metric.rows.map((r) =>
    maximum('Maxima below 0.5 mm2', 'DIN VDE 0295 style values', `${r.mm2} mm2 plain`, r.mm2, r.plain),
  ),
  ...stranding.tables.MIL_29606.rows.map((r) =>
    maximum('Maxima of MIL-DTL-29606A, silver-plated', 'MIL-DTL-29606A table III-A', `${r.size} ${r.stranding}`, r.area_nominal, r.Rmax_silver),
  ),
  ...stranding.tables.FAA_11_9.rows.map((r) => ({
    ...maximum('Maxima of AC 43.13-1B table 11-9, tin-plated', 'FAA AC 43.13-1B table 11-9', `${r.awg} AWG`, r.cmil * MM2_PER_CMIL, r.ohm_per_kft / 0.3048, 0.23),
  })),
]; // prettier-ignore

const milAreas = stranding.tables.MIL_29606.rows.map((r): PublishedCheck => ({
  calculation: 'conductor-area', group: 'MIL-DTL-29606A strands to nominal area', source: 'MIL-DTL-29606A table III-A', confidence: 'published',
  what: `${r.size} ${r.stranding}`,
  computed: valueOf(conductorArea.run({ strands: Number(r.stranding.split('x')[0]), strandDiameterMm: r.strand_d })).areaMm2,
  published: r.area_nominal, unit: 'mm2', allowed: { relative: 0.0085 },
})); // prettier-ignore

const necTable8 = stranding.tables.NEC_T8.rows.map((r): PublishedCheck => ({
  calculation: 'conductor-resistance', group: 'NEC chapter 9 table 8, uncoated, at 75 C', source: 'NEC (NFPA 70) chapter 9 table 8', confidence: 'published',
  what: `${r.awg} AWG, ${r.strands} strand(s)`,
  computed: at(r.cmil * MM2_PER_CMIL, r.strands > 1, 75, FT_PER_KFT_IN_MM).ohm,
  published: r.uncoated_ohm_per_kft_75C, unit: 'ohm/kft', allowed: { relative: 0.008 },
})); // prettier-ignore

const iecTemperature = stranding.temperature_factors.rows.map((r): PublishedCheck => ({
  calculation: 'conductor-resistance', group: 'IEC 60228 temperature factors (0.004/K)', source: 'IEC 60228 annex', confidence: 'published',
  what: `${r.t_C} C`, computed: at(1, false, 20).ohm / at(1, false, r.t_C).ohm, published: r.kt, unit: '', allowed: { relative: 5e-3 },
})); // prettier-ignore

export const conductorChecks: readonly PublishedCheck[] = [
  ...awgChecks,
  ...massChecks,
  ...strandChecks,
  ...milAreas,
  ...maxima,
  ...necTable8,
  ...iecTemperature,
];
