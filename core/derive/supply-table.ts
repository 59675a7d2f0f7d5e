import { exchangeSorted, findSorted } from '../base/exchange-sorted';
import { listDifference } from '../base/list-difference';
import { compareText } from '../base/stable-order';
import type { Net, Supply } from './harness';
import {
  returnAlike,
  suppliesOf,
  supplyKeysOf,
  supplyKeysOfSignal,
  supplyOf,
  type SupplyInputs,
} from './supplies';

/** The supplies of a harness, with what they were made from. */
interface SupplyTable {
  readonly inputs: SupplyInputs;
  readonly list: readonly Supply[];
}

/**
 * Keys of the supplies that touch a connector. Handed on from table to table and changed on the way; a table that was passed
 * over twice has none any more and is worked out from the whole.
 */
type Index = Map<string, Set<string>>;
const indexes = new WeakMap<SupplyTable, Index>();

/** The supplies of a harness, worked out when first asked for. */
export interface LazySupplies {
  get(): readonly Supply[];
  /** The newest table that was worked out, here or before; what a later one starts from. */
  latest(): SupplyTable | undefined;
}

/** Holds on to the table before, never to the harness before, so that no chain of old harnesses stays alive. */
export function lazySupplies(inputs: SupplyInputs, before: LazySupplies | undefined): LazySupplies {
  const start = before?.latest();
  let table: SupplyTable | undefined;
  return {
    get: () => (table ??= supplyTable(inputs, start)).list,
    latest: () => table ?? start,
  };
}

function supplyTable(inputs: SupplyInputs, previous: SupplyTable | undefined): SupplyTable {
  const index = previous && indexes.get(previous);
  const patched = previous && index && patch(inputs, previous, index);
  if (previous && index && patched) {
    const table = { inputs, list: patched };
    indexes.delete(previous);
    indexes.set(table, index);
    return table;
  }
  const table = { inputs, list: suppliesOf(inputs, previous?.list) };
  const made: Index = new Map();
  for (const s of table.list) enter(made, s);
  indexes.set(table, made);
  return table;
}

function enter(index: Index, supply: Supply): void {
  for (const use of supply.uses) {
    const { id } = use.resolved.connector;
    const keys = index.get(id);
    if (keys) keys.add(supply.key);
    else index.set(id, new Set([supply.key]));
  }
}

function leave(index: Index, supply: Supply): void {
  for (const use of supply.uses) index.get(use.resolved.connector.id)?.delete(supply.key);
}

/**
 * Makes anew only the supplies whose signals, nets, connectors or mates changed. Null where it is not told from these: where
 * signals return otherwise, or fuses, or records of fuses and splices changed.
 */
function patch(
  now: SupplyInputs,
  { inputs: before, list }: SupplyTable,
  index: Index,
): readonly Supply[] | null {
  const [was, is] = [before.project, now.project];
  const hasParts = is.fuses.length > 0 || is.splices.length > 0;
  if (!returnAlike(was.signals, is.signals) || was.fuses !== is.fuses) return null;
  if (hasParts && was.parts !== is.parts) return null;
  const nets = listDifference(before.nets, now.nets);
  const uses = listDifference(before.connectors, now.connectors);
  const mates = listDifference(before.mates, now.mates);
  const keys = new Set<string>();
  for (const { id } of listDifference(was.signals, is.signals).fresh)
    for (const key of supplyKeysOfSignal(id, is)) keys.add(key);
  for (const net of [...nets.gone, ...nets.fresh])
    for (const key of supplyKeysOf(net, now.project)) keys.add(key);
  const touched = new Set<string>();
  for (const use of [...uses.gone, ...uses.fresh]) touched.add(use.resolved.connector.id);
  for (const m of [...mates.gone, ...mates.fresh]) {
    touched.add(m.mate.a);
    touched.add(m.mate.b);
  }
  for (const id of touched) for (const key of index.get(id) ?? []) keys.add(key);
  if (keys.size === 0) return list;

  const gone = new Set(nets.gone);
  const freshOf = new Map<string, Net[]>();
  for (const net of nets.fresh)
    for (const key of supplyKeysOf(net, now.project)) freshOf.set(key, [...(freshOf.get(key) ?? []), net]);
  const made: Supply[] = [];
  for (const key of keys) {
    const old = findSorted(list, key);
    const left = (old?.nets ?? []).filter((n) => !gone.has(n));
    const mine = [...left, ...(freshOf.get(key) ?? [])].sort((a, b) => compareText(a.key, b.key));
    if (old) leave(index, old);
    if (mine.length === 0) continue;
    const supply = supplyOf(key, mine, now, old);
    enter(index, supply);
    made.push(supply);
  }
  return exchangeSorted(list, keys, made);
}
