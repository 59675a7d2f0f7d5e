import type { z } from 'zod';
import { memoByIdentity } from '../base/memo-by-identity';
import { clearance } from '../calc/clearance';
import { creepage as creepageOf, MaterialGroup } from '../calc/creepage';
import { cavityLayoutOf } from '../derive/cavity-layout';
import type { ConnectorUse } from '../derive/harness';
import { pointKey } from '../derive/nets';
import type { Signal } from '../model/electrical';
import type { MatingHalf } from '../model/parts/part';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { connectorRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { rtn, sup } from './shared/example-signals';
import { fact, limitFact, partFact, partNeed } from './shared/evidence';
import { pointVoltages } from './shared/point-voltages';
import { figures3, limitsOf } from './shared/supply-words';

const IDS = ['voltage-asked-from', 'pollution-degree', 'overvoltage-category', 'altitude'] as const;

/**
 * Every pair of positions of a connector between which the stated voltages differ by at least the limit. The distance is that
 * between neighbours, plus what lies between: positions left empty count as plastic, so they must hold no contact. Which signals
 * meet in a connector only the nets tell, so the rule is asked about the whole; without such a voltage it costs nothing.
 */
export const creepage: Rule<'project'> = {
  meta: {
    id: 'creepage',
    revision: 1,
    severity: 'critical',
    summary:
      'Positions of a connector lie as far apart, through the air and along the plastic, as the voltage between them asks for.',
    why: 'A film of dirt and moisture carries a little current from pin to pin. It burns a black track into the plastic, and the track is a conductor.',
    source: 'IEC 60664-1, tables F.1, F.2, F.5, F.8 and A.2',
    message:
      '{{a}} and {{b}} lie {{distance}} mm apart, {{voltage}} V between them ask for {{limit}} mm; leave {{skip}} more between them',
    unknown:
      'Whether {{connector}} keeps its positions apart for {{voltage}} V cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report, context) {
    const { limits } = limitsOf(context, ['voltage-asked-from']);
    // Two signals of opposite sign may differ by twice the highest.
    const highestV = highest(harness.project.signals);
    if (!limits || 2 * highestV < limits['voltage-asked-from'].value) return;
    const voltages = pointVoltages(harness.nets);
    for (const use of harness.connectors) judge(use, voltages, report, context);
  },
  examples: () => ({
    good: [
      { name: '12 V', project: tiny() },
      { name: '230 V at 2 mm', project: tiny((t) => high(t, 230, 2.6)) },
      {
        name: '325 V and a position left empty',
        project: tiny((t) => {
          high(t, 325, 2);
          move(t, '2', '3');
        }),
      },
    ],
    bad: [
      { name: '325 V at 2 mm', project: tiny((t) => high(t, 325, 2)), expect: ['X1', 'X2', 'X3', 'X4'] },
      {
        name: 'plus and minus 170 V side by side',
        project: tiny((t) => {
          high(t, 170, 2);
          rtn(t).voltageV = -170;
        }),
        expect: ['X1', 'X2', 'X3', 'X4'],
      },
    ],
    unknown: [
      {
        name: 'the bodies state no creepage',
        project: tiny((t) => void (sup(t).voltageV = 230)),
        expect: ['X1', 'X2', 'X3', 'X4'],
      },
      {
        name: 'no material group in the limit set',
        project: tiny((t) => {
          high(t, 230, 2.6);
          t.project.limitSet.tables = [];
        }),
        expect: ['X1', 'X2', 'X3', 'X4'],
      },
    ],
  }),
};

function high(t: TinyDraft, voltageV: number, creepageMm: number): void {
  sup(t).voltageV = voltageV;
  for (const p of t.project.parts) if (p.kind === 'housing' || p.kind === 'header') p.creepageMm = creepageMm;
}

function move(t: TinyDraft, from: string, to: string): void {
  for (const c of t.project.connectors) {
    for (const e of c.cavities) e.cavity = e.cavity === from ? to : e.cavity === to ? from : e.cavity;
  }
  for (const w of t.project.wires)
    for (const e of w.ends) if (e.at === 'cavity' && e.cavity === from) e.cavity = to;
  for (const s of t.project.signals) if (s.source?.cavity === from) s.source.cavity = to;
}

const highest = memoByIdentity((signals: readonly Signal[]): number =>
  signals.reduce((v, s) => Math.max(v, Math.abs(s.voltageV ?? 0)), 0),
);

interface Apart {
  readonly a: string;
  readonly b: string;
  readonly voltageV: number;
  readonly columns: number;
  readonly rows: number;
}

function judge(
  use: ConnectorUse,
  voltages: ReadonlyMap<string, number>,
  report: Report,
  context: RuleContext,
): void {
  const { limits, needs: limitNeeds } = limitsOf(context, IDS);
  const half = use.resolved.part;
  const askedFrom = context.limit('voltage-asked-from');
  if (!half || !askedFrom) return;
  const pairs = pairsOf(use, half, voltages, askedFrom.value);
  if (pairs.length === 0) return;
  const { designator } = use.resolved.connector;
  const worstV = Math.max(...pairs.map((p) => p.voltageV));
  const group = MaterialGroup.safeParse(context.table('material-group')).data;
  const needs: Need[] = [
    ...limitNeeds,
    ...(group
      ? []
      : [
          {
            what: 'table material-group of the limit set',
            at: connectorRef(use),
            field: 'limitSet.material-group',
          },
        ]),
    ...(half.creepageMm === undefined ? [partNeed(half, 'creepageMm', 'creepage between neighbours')] : []),
    ...(half.pitchMm === undefined ? [partNeed(half, 'pitchMm', 'pitch')] : []),
    ...(pairs.some((p) => p.rows > 0) && half.rowPitchMm === undefined
      ? [partNeed(half, 'rowPitchMm', 'row pitch')]
      : []),
    ...cavityLayoutOf(half).assumed.map((field) => partNeed(half, field, field)),
  ];
  const common = {
    at: [connectorRef(use)],
    evidence: [
      ...partFact(half, 'creepage between neighbours', half.creepageMm, 'mm'),
      ...partFact(half, 'pitch', half.pitchMm, 'mm'),
      ...fact('material group', group, `limit set ${context.limitSet.name}`),
      ...IDS.flatMap((id) => limitFact(id, context.limit(id), context.limitSet)),
    ],
  };
  const stuck = (more: readonly Need[]): void =>
    report.cannotVerify({
      ...common,
      data: { connector: designator, voltage: figures3(worstV) },
      needs: more,
    });
  const { creepageMm, pitchMm } = half;
  if (needs.length > 0 || !limits || !group || creepageMm === undefined || pitchMm === undefined)
    return stuck(needs);
  // The live metal of a position takes the rest of the pitch.
  const metalMm = pitchMm - creepageMm;
  let worst: { pair: Apart; distanceMm: number; askedMm: number; working: Evidence[] } | undefined;
  for (const pair of pairs) {
    const asked = askedMm(pair.voltageV, group, limits);
    if (!asked)
      return stuck([
        {
          what: `a table for ${figures3(pair.voltageV)} V in these conditions`,
          at: connectorRef(use),
          field: 'limitSet.pollution-degree',
        },
      ]);
    const distanceMm = Math.hypot(pair.columns * pitchMm, pair.rows * (half.rowPitchMm ?? 0)) - metalMm;
    const lacksMm = asked.mm - distanceMm;
    if (lacksMm > 1e-9 && (!worst || lacksMm > worst.askedMm - worst.distanceMm))
      worst = { pair, distanceMm, askedMm: asked.mm, working: asked.working };
  }
  if (!worst) return report.pass();
  const { pair, distanceMm, askedMm: mm, working } = worst;
  const skip = Math.ceil((mm - distanceMm) / pitchMm - 1e-9);
  report.fail({
    at: [
      connectorRef(use),
      ...[pair.a, pair.b].map((cavity) => ({
        type: 'cavity' as const,
        id: use.resolved.connector.id,
        cavity,
      })),
    ],
    data: {
      a: `${designator}:${pair.a}`,
      b: `${designator}:${pair.b}`,
      voltage: figures3(pair.voltageV),
      distance: figures3(distanceMm),
      limit: figures3(mm),
      skip: skip === 1 ? '1 position' : `${skip} positions`,
    },
    evidence: [...common.evidence, ...working],
  });
}

function pairsOf(
  use: ConnectorUse,
  half: MatingHalf,
  voltages: ReadonlyMap<string, number>,
  fromV: number,
): readonly Apart[] {
  const live = cavityLayoutOf(half).places.flatMap((place) => {
    const voltageV = voltages.get(pointKey(use.resolved.connector.id, place.cavity));
    return voltageV === undefined ? [] : [{ ...place, voltageV }];
  });
  return live.flatMap((a, i) =>
    live.slice(i + 1).flatMap((b) => {
      const voltageV = Math.abs(a.voltageV - b.voltageV);
      if (voltageV < fromV) return [];
      const columns = Math.abs(a.column - b.column);
      return [{ a: a.cavity, b: b.cavity, voltageV, columns, rows: Math.abs(a.row - b.row) }];
    }),
  );
}

/** Creepage, and at least the clearance, for a working voltage. Undefined where the tables end. */
function askedMm(
  voltageV: number,
  group: z.infer<typeof MaterialGroup>,
  limits: Readonly<Record<(typeof IDS)[number], { readonly value: number }>>,
): { readonly mm: number; readonly working: Evidence[] } | undefined {
  const degree = limits['pollution-degree'].value;
  const category = (['I', 'II', 'III', 'IV'] as const)[limits['overvoltage-category'].value - 1];
  if ((degree !== 1 && degree !== 2 && degree !== 3) || !category) return undefined;
  const air = clearance.run({
    lineToNeutralV: voltageV,
    overvoltageCategory: category,
    peakV: voltageV,
    pollutionDegree: degree,
    homogeneous: false,
    altitudeM: limits.altitude.value,
    reinforced: false,
  });
  if (!air.ok) return undefined;
  const surface = creepageOf.run({
    voltageV,
    pollutionDegree: degree,
    group,
    printedBoard: false,
    reinforced: false,
    clearanceMm: air.value.clearanceMm,
  });
  if (!surface.ok) return undefined;
  const { working, tableMm, creepageMm } = surface.value;
  const source = working.sources.map((s) => s.title).join('; ');
  return {
    mm: creepageMm,
    working: [
      {
        label: 'clearance',
        value: air.value.clearanceMm,
        unit: 'mm',
        source: air.value.working.sources.map((s) => s.title).join('; '),
      },
      { label: 'creepage of the table', value: tableMm, unit: 'mm', source },
    ],
  };
}
