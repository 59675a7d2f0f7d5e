import { connectionTable } from '@latchwork/core/exports/connection-table';
import { partsList } from '@latchwork/core/exports/parts-list';
import type { Project } from '@latchwork/core/model/project';
import { inputOf } from './cases';

/** A wire as a reader of an exchange file sees it. Null: not told. */
export interface ListedWire {
  readonly wire: string;
  readonly signal: string | null;
  /** Connector or splice, cavity, contact at each end. */
  readonly from: string;
  readonly to: string;
  readonly colour: string | null;
  readonly lengthMm: number | null;
  readonly path: string | null;
}

/** The wire list of the connection table, for comparison. */
export function wireListOf(project: Project): ListedWire[] {
  return connectionTable.table(inputOf(project)).rows.map((r) => ({
    wire: String(r['wire']),
    signal: r['signal'] as string | null,
    from: [r['from'], r['fromCavity'], r['fromContact'], r['fromSeal']].map((c) => c ?? '').join('|'),
    to: [r['to'], r['toCavity'], r['toContact'], r['toSeal']].map((c) => c ?? '').join('|'),
    colour: r['colour'] as string | null,
    lengthMm: r['lengthMm'] as number | null,
    path: r['path'] as string | null,
  }));
}

/** Without the id that stands behind a name which was taken already. */
export const plainNames = (w: ListedWire): ListedWire => {
  const plain = (text: string): string => text.replace(/ \((?:\w_)?[0-9a-f-]{36}\)/g, '');
  return { ...w, wire: plain(w.wire), from: plain(w.from), to: plain(w.to), path: w.path && plain(w.path) };
};

export const sortedWires = (wires: readonly ListedWire[]): ListedWire[] =>
  [...wires].sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));

/** Part number, colour and unit with the quantity. */
export type Bill = Readonly<Record<string, number | null>>;

/** Sums uses by part; an unknown length makes the sum of those that are known, as the parts list does. */
export function billOf(uses: readonly { readonly line: string; readonly amount: number | null }[]): Bill {
  const lines = new Map<string, number | null>();
  for (const { line, amount } of uses) {
    const before = lines.get(line) ?? null;
    lines.set(line, amount === null ? before : (before ?? 0) + amount);
  }
  return Object.fromEntries(
    [...lines]
      .map(
        ([line, sum]) => [line, sum !== null && line.endsWith(' m') ? Math.round(sum) / 1000 : sum] as const,
      )
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

/** What the parts list says is bought with the harness, of parts that are chosen. Tape is measured by its helix: left out. */
export function partsListBill(project: Project): Bill {
  const tapes = new Set(
    project.parts.flatMap((p) => (p.kind === 'covering' && p.form === 'tape' ? [p.partNumber] : [])),
  );
  return billOf(
    partsList.table(inputOf(project)).rows.flatMap((r) => {
      const number = r['partNumber'];
      if (typeof number !== 'string' || r['suppliedWith'] !== 'harness' || tapes.has(number)) return [];
      const quantity = r['quantity'] as number | null;
      const isLength = r['unit'] === 'm';
      return {
        line: `${number} ${String(r['colour'] ?? '-')} ${String(r['unit'])}`,
        amount: quantity === null ? null : isLength ? quantity * 1000 : quantity,
      };
    }),
  );
}
