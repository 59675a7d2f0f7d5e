import { bendRadius } from '@latchwork/core/calc/bend-radius';
import { BEND_RULES, type BendRuleId } from '@latchwork/core/calc/data/bend-radius';
import { firstTie } from '@latchwork/core/calc/first-tie';
import { leadHole } from '@latchwork/core/calc/lead-hole';
import { reflowPeak } from '@latchwork/core/calc/reflow-peak';
import bend from '../../../files/reference/bend-radius.json';
import solder from '../../../files/reference/soldering-header.json';
import { valueOf, type PublishedCheck } from './check';

/** Rows of the reference file in the names of ours, in the order of the file. */
const RULE_OF_ITEM: Readonly<Record<string, BendRuleId>> = {
  'individual coaxial cable': 'nasa-coaxial',
  'multiconductor cable, insulation other than polyimide film': 'nasa-multiconductor',
  'polyimide-film insulated cable': 'nasa-polyimide',
  'flat / ribbon cable': 'nasa-flat',
  'coaxial ribbon cable': 'nasa-coaxial-ribbon',
  'wire or bundle, unsupported': 'as50881-unsupported',
  'wire fully supported (strain relief, secured service loop)': 'as50881-supported',
  'insulated single wire': 'a620-single-wire',
  'unshielded wires and cables, larger wire': 'a620-unshielded-large',
  'unshielded wire, 10 AWG and smaller': 'a620-unshielded-small',
  'shielded wires and cables': 'a620-shielded',
  'coaxial cable, flexed': 'a620-coaxial-flexed',
  'coaxial cable, fixed': 'a620-coaxial-fixed',
  'wire group or bundle': 'ac-43-bundle',
};

const bends = bend.rows.flatMap((r): PublishedCheck[] => {
  if (r.min === undefined) return [];
  const id = RULE_OF_ITEM[r.item]!;
  const got = valueOf(bendRadius.run({ bundleDiameterMm: 5, bundleRule: id, members: [] }));
  const base = { calculation: 'bend-radius', group: r.standard, source: BEND_RULES[id].source.title, confidence: r.confidence as 'published', unit: 'mm', allowed: { absolute: 1e-12 } };
  return [
    { ...base, what: `${r.item}, 5 mm`, computed: got.leastMm, published: 5 * r.min },
    ...(r.preferred === undefined ? [] : [{ ...base, what: `${r.item}, 5 mm, preferred`, computed: got.preferredMm!, published: 5 * r.preferred }]),
  ];
}); // prettier-ignore
const straight = bend.rows.find((r) => r.min_straight_diameters !== undefined)!;
const ties: readonly PublishedCheck[] = [
  {
    calculation: 'first-tie', group: straight.standard, source: straight.source!, confidence: 'published', what: straight.item, unit: 'mm',
    computed: valueOf(firstTie.run({ kind: 'coaxial', diameterMm: 3, faceWidthMm: 0, leastMm: 0 })).straightMm,
    published: 3 * straight.min_straight_diameters!, allowed: { absolute: 1e-12 },
  },
]; // prettier-ignore

const peak = (type: 'lead-free' | 'tin-lead', bodyThicknessMm: number, bodyVolumeMm3: number, revision: 'C' | 'D' = 'D') =>
  valueOf(reflowPeak.run({ solder: type, bodyThicknessMm, bodyVolumeMm3, revision })).classificationC; // prettier-ignore
const reflow = {
  calculation: 'reflow-peak',
  confidence: 'published',
  unit: 'degC',
  allowed: { absolute: 0 },
} as const;
const thicknesses = [1.5, 2, 2.6];
const reflows = [
  ...solder.reflow.pb_free_Tc.rows.flatMap((r, i): PublishedCheck[] => {
    const base = { ...reflow, group: 'lead-free classification', source: 'J-STD-020 C/D, table 4-2' };
    const t = thicknesses[i]!;
    return [
      { ...base, what: `${r.thickness_mm} mm, 349 mm3`, computed: peak('lead-free', t, 349), published: r.vol_lt_350 },
      { ...base, what: `${r.thickness_mm} mm, 350 mm3`, computed: peak('lead-free', t, 350), published: r.vol_350_2000 },
      { ...base, what: `${r.thickness_mm} mm, 2000 mm3`, computed: peak('lead-free', t, 2000), published: r.vol_350_2000 },
      { ...base, what: `${r.thickness_mm} mm, 2001 mm3`, computed: peak('lead-free', t, 2001), published: r.vol_gt_2000 },
    ];
  }),
  ...solder.reflow.snpb_Tc.rows.flatMap((r, i): PublishedCheck[] => {
    const base = { ...reflow, group: 'tin-lead classification', source: 'J-STD-020 C, table 4-1' };
    const t = [2.4, 2.5][i]!;
    return [
      { ...base, what: `${r.thickness_mm} mm, 349 mm3`, computed: peak('tin-lead', t, 349), published: r.vol_lt_350 },
      { ...base, what: `${r.thickness_mm} mm, 350 mm3`, computed: peak('tin-lead', t, 350), published: r.vol_ge_350 },
    ];
  }),
]; // prettier-ignore

const seconds = solder.reflow.profile.rows.find((r) => r.item === 'time within 5 C of Tc')!;
const times = (['lead-free', 'tin-lead'] as const).map((type): PublishedCheck => ({
  ...reflow, group: 'time within 5 C, revision D', source: 'J-STD-020 D, table 5-2', what: type, unit: 's',
  computed: valueOf(reflowPeak.run({ solder: type, bodyThicknessMm: 3, bodyVolumeMm3: 500, revision: 'D' })).timeWithin5CS,
  published: parseFloat(type === 'lead-free' ? seconds.pbfree : seconds.snpb),
})); // prettier-ignore

const hole = { calculation: 'lead-hole', unit: 'mm' } as const;
const lead = (level: 'A' | 'B' | 'C', sideMm: number, shape: 'round' | 'square' = 'round', toleranceMm = 0) =>
  valueOf(leadHole.run({ shape, sideMm, toleranceMm, level }));
const [round, square] = solder.through_hole.examples;
const levels = ['A', 'B', 'C'] as const;
const holes: readonly PublishedCheck[] = [
  ...solder.through_hole.hole.rows.map((r, i): PublishedCheck => ({
    ...hole, group: 'hole over lead', source: 'IPC-2222', confidence: 'published', what: r.level,
    computed: lead(levels[i]!, 1).holeMinMm - 1, published: r.x, allowed: { absolute: 1e-9 },
  })),
  ...solder.through_hole.pad.rows.map((r, i): PublishedCheck => ({
    ...hole, group: 'pad over hole', source: 'IPC-2221', confidence: 'published', what: `level ${r.level}`,
    computed: lead(levels[i]!, 1).padMm - lead(levels[i]!, 1).holeMinMm, published: Number(r.pad.replace('hole + ', '')), allowed: { absolute: 1e-9 },
  })),
  { ...hole, group: 'worked examples', source: 'IPC-2222, IPC-2221', confidence: 'derived', what: `${round!.name}: hole`, computed: lead('B', 1).holeMinMm, published: round!.out.hole_mm, allowed: { absolute: 1e-9 } },
  { ...hole, group: 'worked examples', source: 'IPC-2222, IPC-2221', confidence: 'derived', what: `${round!.name}: pad`, computed: lead('B', 1).padMm, published: round!.out.pad_mm!, allowed: { absolute: 1e-9 } },
  { ...hole, group: 'worked examples', source: 'IPC-2222, IPC-2221', confidence: 'derived', what: `${square!.name}: lead`, computed: lead('A', 0.64, 'square', 0.03).leadMaxMm, published: square!.out.lead_max_mm!, allowed: { absolute: 5e-4 } },
  { ...hole, group: 'worked examples', source: 'IPC-2222, IPC-2221', confidence: 'derived', what: `${square!.name}: hole`, computed: lead('A', 0.64, 'square', 0.03).holeMinMm, published: square!.out.hole_mm, allowed: { absolute: 5e-4 } },
  { ...hole, group: 'worked examples', source: 'IPC-2222, IPC-2221', confidence: 'derived', what: 'square 0.64 mm, level B: hole', computed: lead('B', 0.64, 'square').holeMinMm, published: 1.105, allowed: { absolute: 5e-4 } },
]; // prettier-ignore

export const boardChecks: readonly PublishedCheck[] = [...bends, ...ties, ...reflows, ...times, ...holes];
