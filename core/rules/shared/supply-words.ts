import type { CalcProblem } from '../../calc/calc-problem';
import type { ResolvedWire, Supply } from '../../derive/harness';
import type { KnownCurrent, SolvedSupply } from '../../derive/supply-currents';
import type { Fuse, Signal } from '../../model/electrical';
import { partOfKind } from '../../model/parts/part';
import type { LimitId } from '../../model/limit-sets/limit-ids';
import type { Limit } from '../../model/limit-set';
import type { Evidence, Need, ObjectRef } from '../finding';
import { wireRef } from '../refs';
import type { RuleContext } from '../rule';
import { fact, limitNeed } from './evidence';

export const signalRef = (s: Signal): ObjectRef => ({ type: 'signal', id: s.id });
export const fuseRef = (f: Fuse): ObjectRef => ({ type: 'fuse', id: f.id });

/** A field that a signal lacks. */
export const signalNeed = (s: Signal, field: keyof Signal, name: string): Need => ({
  what: `${name} of ${s.name}`,
  at: signalRef(s),
  field,
});

/** A value that a signal states, as evidence. */
export const signalFact = (
  s: Signal,
  label: string,
  value: string | number | undefined,
  unit?: string,
): Evidence[] => fact(`${label} of ${s.name}`, value, `signal ${s.name}, typed`, unit);

/** Signals that feed something: the power of the supply. */
export const powerFeeds = (supply: Supply): readonly Signal[] =>
  supply.feeds.filter((s) => s.class === 'power');

/** Wires of the nets of one signal, each once. */
export const wiresOfSignal = (supply: Supply, signal: Signal): readonly ResolvedWire[] => [
  ...new Set(supply.nets.filter((n) => n.signals.includes(signal)).flatMap((n) => n.wires)),
];

/** Three figures are enough for a sentence; evidence carries the number. */
export const figures3 = (value: number): string => String(Number(value.toPrecision(3)));

/** More by more than the rounding of a solved network. */
export const exceeds = (value: number, limit: number): boolean => value > limit * (1 + 1e-9);

export const currentFact = (label: string, known: KnownCurrent): Evidence => ({
  label,
  value: Number(known.currentA.toPrecision(6)),
  unit: 'A',
  source:
    known.basis === 'solved'
      ? 'computed: nodal analysis of the supply, wires at their own temperature'
      : 'current stated for the signal, taken whole (the supply could not be solved as a circuit)',
});

/** Limits by id, or the needs for those that the set lacks. */
export function limitsOf<K extends LimitId>(
  context: RuleContext,
  ids: readonly K[],
): { readonly limits: Readonly<Record<K, Limit>> | undefined; readonly needs: readonly Need[] } {
  const entries = ids.map((id) => [id, context.limit(id)] as const);
  const needs = entries.flatMap(([id, limit]) => (limit ? [] : [limitNeed(id, context.limitSet)]));
  const limits = needs.length === 0 ? (Object.fromEntries(entries) as Record<K, Limit>) : undefined;
  return { limits, needs };
}

/** The rating of a fuse: typed, else of its record. */
export function fuseRating(
  supply: Supply,
  fuse: Fuse,
): { readonly ratedA: number | undefined; readonly source: string } {
  if (fuse.ratedA !== undefined) return { ratedA: fuse.ratedA, source: `fuse ${fuse.designator}, typed` };
  const part = fusePart(supply, fuse);
  return { ratedA: part?.ratedA, source: part ? `record of fuse ${part.partNumber}` : '' };
}

export const fusePart = (supply: Supply, fuse: Fuse) =>
  partOfKind(
    supply.parts.find((p) => p.id === fuse.part),
    'fuse',
  );

/** What a circuit still needs, each with its place where the words name one. */
export function circuitNeeds(supply: Supply, signal: Signal, p: CalcProblem): Need[] {
  if (p.code !== 'needs')
    return [
      { what: p.code === 'no-solution' ? p.reason : 'a circuit', at: signalRef(signal), field: 'source' },
    ];
  return p.inputs.map((what) => {
    const wire = supply.wires.find((w) => what === `length of ${w.wire.designator}`);
    if (wire) return { what, at: wireRef(wire), field: 'lengthMm' };
    const unknown = supply.wires.find((w) => what === `conductor of ${w.wire.designator}`);
    if (unknown) return { what, at: wireRef(unknown), field: 'part' };
    const of = supply.feeds.find((s) => what.endsWith(` of ${s.name}`)) ?? signal;
    const field = FIELDS.find(([start]) => what.startsWith(start))?.[1] ?? 'signal';
    return { what, at: signalRef(of), field };
  });
}

const FIELDS = [
  ['voltage of', 'voltageV'],
  ['current of', 'currentA'],
  ['source of', 'source'],
  ['the signal on which', 'returnsOn'],
] as const;

/** What the circuit took for granted. */
export const circuitNotes = ({ circuit, ambientC }: SolvedSupply): Evidence[] => [
  { label: 'air around the wires', value: ambientC, unit: 'degC', source: 'limit ambient-temperature' },
  ...circuit.assumed.map((text) => ({ label: 'assumed', value: text, source: 'circuit of the supply' })),
];
