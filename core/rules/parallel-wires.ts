import type { ResolvedEnd, ResolvedWire, Supply } from '../derive/harness';
import { supplyCurrents, type SupplyCurrents } from '../derive/supply-currents';
import { wireAmpacity } from '../derive/wire-ampacity';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { partSource, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { sup } from './shared/example-signals';
import { fact, limitFact } from './shared/evidence';
import { addParallel } from './shared/example-parallel';
import { metalAreaMm2, metalAreaNeed } from './shared/metal-area';
import { currentFact, exceeds, figures3, limitsOf, wiresOfSignal } from './shared/supply-words';
import { ampacityFact, ampacityNeeds } from './shared/wire-ampacity-words';

const IDS = ['current-asked-from', 'parallel-share-factor', 'parallel-difference-max'] as const;

/** Wires of one signal that lead from one connector or splice to the same other one; inside the equipment they meet. */
export const parallelWires: Rule<'supply'> = {
  meta: {
    id: 'parallel-wires',
    revision: 1,
    severity: 'major',
    summary: 'Wires in parallel are alike, and carry together no more than such wires do with uneven shares.',
    why: 'Current divides by resistance, contacts included, never evenly. The shorter wire or the better contact takes more than its part, and when it opens the others take it all.',
    source: 'rule of thumb from practice: 0.8 for each doubling of the number',
    message: '{{wires}} run in parallel from {{from}} to {{to}}: {{reason}}',
    unknown:
      'Whether {{wires}}, in parallel from {{from}} to {{to}}, share their current cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const signals = [...supply.feeds, ...(supply.returnSignal ? [supply.returnSignal] : [])];
    const sets = signals.flatMap((s) => parallelSets(wiresOfSignal(supply, s)));
    if (sets.length === 0) return;
    const currents = supplyCurrents(supply, context.limitSet);
    for (const set of sets) judge(set, supply, currents, report, context);
  },
  examples: () => ({
    good: [
      { name: 'one wire for each signal', project: tiny() },
      { name: 'two wires that are alike', project: tiny((t) => addParallel(t)) },
      {
        name: 'two unlike wires for next to no current',
        project: tiny((t) => {
          unlike(t);
          sup(t).currentA = 0.01;
        }),
      },
    ],
    bad: [
      { name: 'a thick and a thin wire', project: tiny((t) => unlike(t)), expect: ['W1'] },
      {
        name: 'a short and a long wire',
        project: tiny((t) => {
          addParallel(t);
          t.wire('W3').lengthMm = 500;
        }),
        expect: ['W1'],
      },
      {
        name: 'more than two such wires carry unevenly',
        project: tiny((t) => {
          addParallel(t);
          sup(t).currentA = 5;
        }),
        expect: ['W1'],
      },
    ],
    unknown: [
      {
        name: 'one of them without a wire chosen',
        project: tiny((t) => {
          addParallel(t);
          delete t.wire('W3').part;
        }),
        expect: ['W1'],
      },
    ],
  }),
};

function unlike(t: TinyDraft): void {
  addParallel(t);
  t.wire('W3').part = t.part('wire', 'WIRE-26').id;
}

interface ParallelSet {
  readonly wires: readonly ResolvedWire[];
  readonly from: string;
  readonly to: string;
}

function parallelSets(wires: readonly ResolvedWire[]): ParallelSet[] {
  if (wires.length < 2) return [];
  const byPair = new Map<string, { wires: ResolvedWire[]; from: string; to: string }>();
  for (const w of wires) {
    const ends = [placeOf(w.from), placeOf(w.to)];
    if (!ends[0] || !ends[1]) continue;
    const key = ends.map((e) => e?.id).sort().join(' '); // prettier-ignore
    const set = byPair.get(key);
    if (set) set.wires.push(w);
    else byPair.set(key, { wires: [w], from: ends[0].name, to: ends[1].name });
  }
  return [...byPair.values()].filter((s) => s.wires.length > 1);
}

function placeOf(end: ResolvedEnd): { readonly id: string; readonly name: string } | undefined {
  if (end.connector) return { id: end.connector.connector.id, name: end.connector.connector.designator };
  return end.splice && { id: end.splice.id, name: end.splice.designator };
}

/** What all of them carry: the sum where the circuit is solved, else what the signal states. */
function totalOf(wires: readonly ResolvedWire[], currents: SupplyCurrents): number | undefined {
  const known = wires.flatMap((w) => currents.ofWire(w) ?? []);
  if (known.length === 0) return undefined;
  const solved = known.every((k) => k.basis === 'solved');
  return solved ? known.reduce((sum, k) => sum + k.currentA, 0) : Math.max(...known.map((k) => k.currentA));
}

function judge(
  { wires, from, to }: ParallelSet,
  supply: Supply,
  currents: SupplyCurrents,
  report: Report,
  context: RuleContext,
): void {
  const { limits, needs } = limitsOf(context, IDS);
  const totalA = totalOf(wires, currents);
  const askedFrom = limits?.['current-asked-from'].value ?? 0;
  if (totalA !== undefined && totalA <= askedFrom) return;
  const isPower =
    supply.feeds.some((s) => s.class === 'power') || supply.feeds.some((s) => s.class === 'return');
  if (totalA === undefined && !isPower) return;
  const at = wires.map(wireRef);
  const data = { wires: wires.map((w) => w.wire.designator).join(', '), from, to };
  const open: Need[] = [...needs];
  const evidence: Evidence[] = [];
  const areas: number[] = [];
  const lengths: number[] = [];
  let leastA = Infinity;
  for (const w of wires) {
    const areaMm2 = metalAreaMm2(w);
    if (areaMm2 === undefined) open.push(metalAreaNeed(w));
    else areas.push(areaMm2);
    const { cutMm } = w.length;
    if (cutMm === undefined)
      open.push({ what: `length of ${w.wire.designator}`, at: wireRef(w), field: 'lengthMm' });
    else lengths.push(cutMm);
    const may = wireAmpacity(w, context.limitSet);
    if (may.ok) leastA = Math.min(leastA, may.value.currentA);
    else if (areaMm2 !== undefined) open.push(...ampacityNeeds(w, may.problem, context.limitSet));
    const current = currents.ofWire(w);
    evidence.push(
      ...fact(`metal area of ${w.wire.designator}`, areaMm2, w.part ? partSource(w.part) : 'typed', 'mm2'),
      ...fact(`length of ${w.wire.designator}`, cutMm, w.length.kind, 'mm'),
      ...(may.ok ? [ampacityFact(w, may.value)] : []),
      ...(current ? [currentFact(`current in ${w.wire.designator}`, current)] : []),
    );
  }
  evidence.push(
    ...limitFact('most difference, as a share', limits?.['parallel-difference-max'], context.limitSet),
    ...limitFact('factor for each doubling', limits?.['parallel-share-factor'], context.limitSet),
  );
  const most = limits?.['parallel-difference-max'].value;
  const factor = limits?.['parallel-share-factor'].value;
  const spread = (list: readonly number[]): number =>
    list.length < 2 ? 0 : 1 - Math.min(...list) / Math.max(...list);
  const reasons: string[] = [];
  if (most !== undefined && spread(areas) > most) reasons.push('their metal areas differ');
  if (most !== undefined && spread(lengths) > most) reasons.push('their lengths differ');
  if (factor !== undefined && totalA !== undefined && Number.isFinite(leastA)) {
    const togetherA = wires.length * factor ** Math.log2(wires.length) * leastA;
    if (exceeds(totalA, togetherA))
      reasons.push(`they carry ${figures3(totalA)} A, such wires carry ${figures3(togetherA)} A together`);
  }
  if (reasons.length > 0) report.fail({ at, data: { ...data, reason: reasons.join(', ') }, evidence });
  else if (open.length > 0) report.cannotVerify({ at, data, needs: open, evidence });
  else if (totalA !== undefined) report.pass();
}
