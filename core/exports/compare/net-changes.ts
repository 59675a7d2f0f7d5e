import { compareNatural } from '../../base/stable-order';
import type { Harness, Net } from '../../derive/harness';
import { pointKey } from '../../derive/net-keys';
import { cavityRef } from '../../rules/refs';
import type { ChangeRow } from './change-row';

/**
 * Who is connected to whom, before and after: nets go by the set of their points, whatever they are called. A point alone is
 * no connection.
 */
export function netChanges(before: Harness, after: Harness): readonly ChangeRow[] {
  const old = connected(before);
  const fresh = connected(after);
  const oldSets = new Set(old.map((n) => n.set));
  const freshSets = new Set(fresh.map((n) => n.set));
  const changed = fresh.filter((n) => !oldSets.has(n.set));
  const lost = old.filter((n) => !freshSets.has(n.set));
  const atPoint = new Map(lost.flatMap((n) => n.keys.map((k) => [k, n] as const)));
  const followed = new Set<PointSet>();
  const rows = changed.map((n): ChangeRow => {
    const from = [...new Set(n.keys.flatMap((k) => atPoint.get(k) ?? []))];
    for (const f of from) followed.add(f);
    return {
      area: 'Nets',
      what: from.length > 0 ? 'changed' : 'added',
      subject: `net ${n.name}`,
      field: 'points',
      before: from.map((f) => f.text).join(' | '),
      after: n.text,
      objects: n.net.points.map((p) => cavityRef(p)),
      gone: [],
    };
  });
  const removed = lost.filter((n) => !followed.has(n));
  return [
    ...rows,
    ...removed.map(({ name, text, net }): ChangeRow => {
      const points = net.points.map((p) => cavityRef(p));
      const still = points.filter((p) => after.connectorById.has(p.id));
      return {
        area: 'Nets', what: 'removed', subject: `net ${name}`, field: 'points', before: text, after: '',
        objects: still, gone: points.filter((p) => !still.includes(p)),
      };
    }),
  ].sort((a, b) => compareNatural(a.subject, b.subject));
} // prettier-ignore

interface PointSet {
  readonly net: Net;
  readonly name: string;
  readonly keys: readonly string[];
  readonly set: string;
  readonly text: string;
}

const connected = (harness: Harness): readonly PointSet[] =>
  harness.nets
    .filter((net) => net.points.length > 1)
    .map((net) => {
      const keys = net.points.map((p) => pointKey(p.connector.connector.id, p.cavity)).sort();
      const names = net.points.map((p) => `${p.connector.connector.designator}:${p.cavity}`).sort(compareNatural);
      const signals = [...net.signals].map((s) => s.name).sort(compareNatural);
      return {
        net,
        keys,
        set: keys.join('\n'),
        name: signals.join(', ') || (names[0] ?? ''),
        text: names.join(', '),
      };
    }); // prettier-ignore

/** Wires in both states that are cut to another length. */
export const lengthChanges = (before: Harness, after: Harness): readonly ChangeRow[] =>
  after.wires
    .flatMap((w): ChangeRow[] => {
      const was = before.wireById.get(w.wire.id);
      if (!was || was.length.cutMm === w.length.cutMm) return [];
      return [
        {
          area: 'Cut lengths',
          what: 'changed',
          subject: `wire ${w.wire.designator}`,
          field: 'cut length',
          before: lengthText(was.length.cutMm),
          after: lengthText(w.length.cutMm),
          objects: [{ type: 'wire', id: w.wire.id }],
          gone: [],
        },
      ];
    })
    .sort((a, b) => compareNatural(a.subject, b.subject));

const lengthText = (mm: number | undefined): string => (mm === undefined ? 'not known' : `${mm} mm`);
