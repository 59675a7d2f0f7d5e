import { following } from '../base/following';
import { listDifference } from '../base/list-difference';
import { compareText } from '../base/stable-order';
import type { Harness, Net, ResolvedWire } from './harness';
import { lineageOf } from './lineage';
import { endKeys } from './net-keys';
import { netAt } from './net-table';

type Input = Pick<Harness, 'project' | 'nets'>;

const bySignal = following(
  (nets: readonly Net[]): Map<string, readonly Net[]> => {
    const out = new Map<string, Net[]>();
    for (const net of nets)
      for (const s of net.signals) {
        const list = out.get(s.id);
        if (list) list.push(net);
        else out.set(s.id, [net]);
      }
    return out;
  },
  (table, before, after) => {
    const { gone, fresh } = listDifference(before, after);
    const left = new Set(gone);
    for (const net of gone)
      for (const { id } of net.signals) {
        const rest = (table.get(id) ?? []).filter((n) => !left.has(n));
        if (rest.length > 0) table.set(id, rest);
        else table.delete(id);
      }
    for (const net of fresh)
      for (const { id } of net.signals)
        table.set(
          id,
          [...(table.get(id) ?? []), net].sort((a, b) => compareText(a.key, b.key)),
        );
    return table;
  },
);

/** The nets that carry a signal, in the order of their keys. */
export const netsOfSignal = ({ project, nets }: Input, signal: string): readonly Net[] =>
  bySignal(lineageOf(project), nets).get(signal) ?? [];

/** The net of a wire. */
export const netOfWire = (nets: readonly Net[], wire: ResolvedWire): Net | undefined =>
  netAt(nets, endKeys(wire)[0]);

/** Wires of the nets of a signal, each once. */
export const wiresOf = (harness: Input, signal: string): readonly ResolvedWire[] => [
  ...new Set(netsOfSignal(harness, signal).flatMap((n) => n.wires)),
];
