import { byId } from '../../base/by-id';
import { compareNatural } from '../../base/stable-order';
import { contactsIn } from '../contacts-in-cavity';
import type { CavityUse, ConnectorUse, EndInCavity, Harness } from '../harness';
import { pointKey } from '../net-keys';
import type { TestModel, TestWire } from './test-model';

export const FAULT_KINDS = ['open', 'short', 'swap', 'wrong-cavity'] as const;
export type FaultKind = (typeof FAULT_KINDS)[number];

/** A fault put into the harness: ends of wires that lie elsewhere, or nowhere, and points that touch. */
export interface Fault {
  readonly kind: FaultKind;
  /** "W3 missing", "X1:1 and X1:2 exchanged". */
  readonly text: string;
  readonly moves: readonly { readonly wire: TestWire; readonly end: 0 | 1; readonly to: string | null }[];
  readonly bridges: readonly (readonly [string, string])[];
  /** Wires that are concerned, by id. */
  readonly wires: readonly string[];
}

/** Pairs of nets that are all tried; above it only those with neighbours in a connector. */
const PAIRS_AT_MOST = 20_000;

/**
 * Every single fault of the kinds that hand work makes: a wire left out, a contact not seated, an end not caught in its
 * splice; two nets that touch; two contacts exchanged within a connector; a contact in a cavity that is meant to hold none.
 */
export function* seededFaults(harness: Harness, model: TestModel): Generator<Fault> {
  const wireOf = new Map(model.wires.map((w) => [w.wire.wire.id, w]));
  yield* opens(harness, model, wireOf);
  yield* shorts(model);
  for (const use of model.connectors) yield* exchanges(use, wireOf);
}

function* opens(harness: Harness, model: TestModel, wireOf: ReadonlyMap<string, TestWire>): Generator<Fault> {
  const fault = (text: string, ends: readonly (readonly [TestWire, 0 | 1])[]): Fault => ({
    kind: 'open',
    text,
    moves: ends.map(([wire, end]) => ({ wire, end, to: null })),
    bridges: [],
    wires: ends.map(([wire]) => wire.wire.wire.id),
  });
  for (const wire of model.wires)
    yield fault(`${wire.wire.wire.designator} missing`, [
      [wire, 0],
      [wire, 1],
    ]);
  for (const use of model.connectors)
    for (const c of use.cavities)
      for (const contact of contactsIn(c))
        yield fault(
          `contact with ${contact.map((e) => e.wire.wire.designator).join(' and ')} not seated in ${nameOf(c)}`,
          contact.flatMap((e) => pair(wireOf, e)),
        );
  const splices = byId(harness.project.splices);
  for (const wire of model.wires)
    for (const index of [0, 1] as const) {
      const { end } = index === 0 ? wire.wire.from : wire.wire.to;
      if (end.at === 'splice')
        yield fault(
          `${wire.wire.wire.designator} not caught in ${splices.get(end.splice)?.designator ?? 'its splice'}`,
          [[wire, index]],
        );
    }
}

const pair = (wireOf: ReadonlyMap<string, TestWire>, e: EndInCavity): (readonly [TestWire, 0 | 1])[] => {
  const wire = wireOf.get(e.wire.wire.id);
  return wire ? [[wire, e.index]] : [];
};

const nameOf = (c: CavityUse): string => `${c.connector.connector.designator}:${c.cavity}`;

function* shorts(model: TestModel): Generator<Fault> {
  const { nets } = model;
  const all = (nets.length * (nets.length - 1)) / 2 <= PAIRS_AT_MOST;
  const pairs = all ? everyPair(nets.length) : neighbours(model);
  for (const [i, j] of pairs) {
    const [a, b] = [nets[i], nets[j]];
    const [keyA, keyB] = [a?.wires[0]?.keys[0], b?.wires[0]?.keys[0]];
    if (keyA === undefined || keyB === undefined) continue;
    const name = (net: typeof a): string =>
      net?.points[0]?.text ?? net?.wires[0]?.wire.wire.designator ?? '?';
    yield {
      kind: 'short',
      text: `${name(a)} touches ${name(b)}`,
      moves: [],
      bridges: [[keyA, keyB]],
      wires: [a?.wires[0]?.wire.wire.id ?? '', b?.wires[0]?.wire.wire.id ?? ''],
    };
  }
}

function* everyPair(n: number): Generator<readonly [number, number]> {
  for (let i = 0; i < n; i++) for (let j = i + 1; j < n; j++) yield [i, j];
}

/** Pairs of nets that have two consecutive numbers in some connector. */
function* neighbours({ connectors, netOfKey }: TestModel): Generator<readonly [number, number]> {
  const seen = new Set<string>();
  for (const use of connectors) {
    const here = use.cavities.map((c) => netOfKey.get(pointKey(use.resolved.connector.id, c.cavity)));
    for (let i = 1; i < here.length; i++) {
      const [a, b] = [here[i - 1], here[i]];
      if (a === undefined || b === undefined || a === b) continue;
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      if (seen.has(key)) continue;
      seen.add(key);
      yield a < b ? [a, b] : [b, a];
    }
  }
}

/** Two contents of a connector exchanged, and one in a cavity that is meant to be without a wire. */
function* exchanges(use: ConnectorUse, wireOf: ReadonlyMap<string, TestWire>): Generator<Fault> {
  const id = use.resolved.connector.id;
  const cavities = [...use.cavities].sort((a, b) => compareNatural(a.cavity, b.cavity));
  const wired = cavities.filter((c) => c.ends.length > 0);
  const free = cavities.filter((c) => c.ends.length === 0 && c.exists && c.state !== 'blocked');
  const move = (c: CavityUse, to: CavityUse): Fault['moves'] =>
    c.ends.flatMap((e) => pair(wireOf, e)).map(([wire, end]) => ({ wire, end, to: pointKey(id, to.cavity) }));
  const wiresOf = (...list: readonly CavityUse[]): string[] =>
    list.flatMap((c) => c.ends.map((e) => e.wire.wire.id));
  for (let i = 0; i < wired.length; i++)
    for (let j = i + 1; j < wired.length; j++) {
      const [a, b] = [wired[i]!, wired[j]!];
      yield {
        kind: 'swap',
        text: `${nameOf(a)} and ${nameOf(b)} exchanged`,
        moves: [...move(a, b), ...move(b, a)],
        bridges: [],
        wires: wiresOf(a, b),
      };
    }
  for (const a of wired)
    for (const b of free)
      yield {
        kind: 'wrong-cavity',
        text: `what belongs in ${nameOf(a)} sits in ${nameOf(b)}`,
        moves: move(a, b),
        bridges: [],
        wires: wiresOf(a),
      };
}
