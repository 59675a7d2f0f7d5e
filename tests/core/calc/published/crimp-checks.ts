import { N_PER_LBF, PULL_TABLES, type PullTable } from '@latchwork/core/calc/data/pull-force';
import { LETTERS, SAMPLE_SIZES, ZERO_LETTER, type Aql, type Level } from '@latchwork/core/calc/data/sampling';
import { pullForce } from '@latchwork/core/calc/pull-force';
import { codeLetter, planOf, samplingPlan } from '@latchwork/core/calc/sampling-plan';
import { strandDamage } from '@latchwork/core/calc/strand-damage';
import inspection from '../../../files/reference/crimp-inspection.json';
import pull from '../../../files/reference/crimp-pull-force.json';
import sampling from '../../../files/reference/sampling.json';
import { valueOf, type PublishedCheck } from './check';

const awg = (gauge: number) => ({ system: 'awg', gauge }) as const;
const mm2 = (areaMm2: number) => ({ system: 'mm2', areaMm2 }) as const;
const minimum = (table: PullTable, size: ReturnType<typeof awg> | ReturnType<typeof mm2>): number =>
  valueOf(pullForce.run({ table, size, tensileNPerMm2: 1 })).minimumN;
const sixty = (areaMm2: number): number => valueOf(pullForce.run({ table: 'sixty-percent', areaMm2, tensileNPerMm2: SOFT })).minimumN; // prettier-ignore
const SOFT = (37_000 * N_PER_LBF) / 25.4 ** 2;

const { tables } = pull;
const force = { calculation: 'pull-force', unit: 'N' } as const;
const source = (table: PullTable): string => PULL_TABLES[table].source.title;
const byGauge = (table: PullTable, rows: readonly { awg: number; N: number; confidence?: string }[]) =>
  rows.map((r): PublishedCheck => ({
    ...force, group: source(table), source: source(table), confidence: (r.confidence ?? 'published') as 'published',
    what: `${r.awg} AWG`, computed: minimum(table, awg(r.awg)), published: r.N, allowed: { absolute: 0.051 },
  })); // prettier-ignore

const pulls: readonly PublishedCheck[] = [
  ...tables.IEC_60352_2.rows.flatMap((r): PublishedCheck[] => [
    { ...force, group: source('iec-60352-2'), source: source('iec-60352-2'), confidence: 'memory', what: `${r.mm2} mm2`, computed: minimum('iec-60352-2', mm2(r.mm2)), published: r.N, allowed: { absolute: 0 } },
    ...(r.awg === null ? [] : [{ ...force, group: source('iec-60352-2'), source: source('iec-60352-2'), confidence: 'memory' as const, what: `${r.awg} AWG`, computed: minimum('iec-60352-2', awg(r.awg)), published: r.N, allowed: { absolute: 0 } }]),
  ]),
  ...byGauge('ul-486a', tables.UL_486A.rows),
  ...byGauge('as7928', tables.AS7928.rows),
  ...byGauge('nasa-8739-4', tables.NASA_13_1.rows),
  ...byGauge('contact-size-20', tables.contact_size_20.rows),
  ...tables.soft_copper_break.rows.map((r): PublishedCheck => ({
    ...force, group: '60 % of soft copper at 37 000 psi', source: 'public wire table', confidence: 'published', what: `${r.awg} AWG`, unit: 'lbf',
    computed: sixty((Math.PI / 4) * (0.127 * 92 ** ((36 - r.awg) / 39)) ** 2) / N_PER_LBF, published: r.sixty_percent, allowed: { relative: 0.01 },
  })),
]; // prettier-ignore

const LEVELS: readonly Level[] = ['S1', 'S2', 'S3', 'S4', 'I', 'II', 'III'];
const iso = { calculation: 'sampling-plan', source: 'ISO 2859-1:1999, tables 1 and 2-A', confidence: 'published', unit: '' } as const; // prettier-ignore
const ends = (lot: string): number[] => lot.split('-').map((t) => parseInt(t, 10));
const letters = sampling.code_letters.flatMap((row): PublishedCheck[] =>
  ends(row.lot).flatMap((lot) =>
    LEVELS.map((level) => ({
      ...iso, group: 'table 1, first and last lot of each row: code letters by their place', what: `lot ${lot}, level ${level}`,
      computed: LETTERS.indexOf(codeLetter(lot, level)), published: LETTERS.indexOf(row[level]), allowed: { absolute: 0 },
    })),
  ),
); // prettier-ignore
const sizes = Object.entries(sampling.sample_sizes).map(
  ([letter, n]): PublishedCheck => ({
    ...iso, group: 'table 2-A, sample sizes', what: `letter ${letter}`, computed: SAMPLE_SIZES[LETTERS.indexOf(letter)]!, published: n, allowed: { absolute: 0 },
  }),
); // prettier-ignore
const plans = (Object.keys(ZERO_LETTER) as Aql[]).flatMap((aql) =>
  sampling.plans[aql].flatMap((row): PublishedCheck[] => {
    const plan = planOf(row.letter, aql);
    const what = `AQL ${aql}, letter ${row.letter}`;
    const base = { ...iso, group: 'table 2-A, all plans with their arrows', allowed: { absolute: 0 } };
    return [
      { ...base, what: `${what}: letter used`, computed: LETTERS.indexOf(plan.letter), published: LETTERS.indexOf(row.use_letter) },
      { ...base, what: `${what}: n`, computed: plan.sampleSize, published: row.n },
      { ...base, what: `${what}: Ac`, computed: plan.accept, published: row.Ac },
    ];
  }),
); // prettier-ignore
const lots = sampling.checks.flatMap((c) =>
  Object.entries(c.results).flatMap(([aql, want]): PublishedCheck[] => {
    const got = valueOf(samplingPlan.run({ lotSize: c.lot, level: c.level as Level, aql: aql as Aql }));
    const base = { ...iso, group: 'worked lots', allowed: { absolute: 0 } };
    return [
      { ...base, what: `lot ${c.lot}, AQL ${aql}: n`, computed: got.sampleSize, published: want.n },
      { ...base, what: `lot ${c.lot}, AQL ${aql}: Ac`, computed: got.accept, published: want.Ac },
      { ...base, what: `lot ${c.lot}, AQL ${aql}: Re`, computed: got.reject, published: want.Re },
    ];
  }),
);

const strands = { calculation: 'strand-damage', unit: '', confidence: 'published' } as const;
const damage = (n: number, productClass: '1' | '2' | '3', tinned: boolean): number =>
  valueOf(strandDamage.run({ table: 'a620', strands: n, productClass, tinned, material: 'copper' })).damagedMax; // prettier-ignore
const share = (cell: number | string | undefined, n: number): number =>
  typeof cell === 'string' ? Math.floor((parseFloat(cell) / 100) * n) : cell!;
const a620 = inspection.tables.A620_strand_damage.rows.flatMap((r): PublishedCheck[] =>
  r.min === undefined ? [] : [r.min, r.max ?? 259].flatMap((n): PublishedCheck[] => {
    const base = { ...strands, group: 'IPC/WHMA-A-620B draft, table 3-1', source: 'IPC/WHMA-A-620B final draft 2012, table 3-1', allowed: { absolute: 0 } };
    return [
      { ...base, what: `${n} strands, class 1`, computed: damage(n, '1', false), published: share(r.class_1_2, n) },
      { ...base, what: `${n} strands, class 2`, computed: damage(n, '2', true), published: share(r.class_1_2, n) },
      { ...base, what: `${n} strands, class 3`, computed: damage(n, '3', false), published: share(r.class_3_untinned, n) },
      { ...base, what: `${n} strands, class 3 tinned`, computed: damage(n, '3', true), published: share(r.class_3_tinned, n) },
    ];
  }),
); // prettier-ignore
const faa = inspection.tables.FAA_11_13.rows.flatMap((r): PublishedCheck[] =>
  r.strands.split('-').flatMap((text): PublishedCheck[] => {
    const got = valueOf(strandDamage.run({ table: 'ac-43-13-1b', strands: Number(text), productClass: '3', tinned: false, material: 'copper' }));
    const base = { ...strands, group: 'FAA AC 43.13-1B, table 11-13', source: 'FAA AC 43.13-1B (1998), page 11-62', allowed: { absolute: 0 } };
    return [
      { ...base, what: `${text} strands, nicked`, computed: got.damagedMax, published: r.nicked_max },
      { ...base, what: `${text} strands, broken`, computed: got.severedMax, published: r.broken_max },
    ];
  }),
); // prettier-ignore

export const crimpChecks: readonly PublishedCheck[] = [...pulls, ...letters, ...sizes, ...plans, ...lots, ...a620, ...faa]; // prettier-ignore
