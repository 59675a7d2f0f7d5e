import { z } from 'zod';
import { WireSize, wireSizeText } from '../model/wire-size';
import { answer, calculation, field, figure, type Answer } from './calculation';
import {
  NASA_SHARES,
  PULL_TABLES,
  RETENTION_SHARE,
  SOFT_COPPER,
  SOFT_COPPER_N_PER_MM2,
  TENSILE_SHARE,
  type PullRow,
  type PullTable,
} from './data/pull-force';
import type { PublishedTable } from './data/published-table';

export interface PullForce extends Answer {
  readonly minimumN: number;
  /** Largest pull on the wire of a seated contact. */
  readonly retentionMaxN: number;
  readonly tableTitle: string;
  readonly verified: 'yes' | 'not verified';
}

const TABLES: Readonly<Record<PullTable, PublishedTable<PullRow>>> = PULL_TABLES;

const inputs = z.strictObject({
  table: field(
    z.enum([...(Object.keys(PULL_TABLES) as [PullTable, ...PullTable[]]), 'sixty-percent']),
    'Table',
  ),
  size: field(WireSize.optional(), 'Wire size'),
  otherSize: field(WireSize.optional(), 'Second wire in the same crimp'),
  areaMm2: field(z.number().positive().optional(), 'Metal area (60 % rule)', 'mm2'),
  tensileNPerMm2: field(
    z.number().positive().default(SOFT_COPPER_N_PER_MM2),
    'Tensile strength of the conductor (60 % rule)',
    'N/mm2',
  ),
});

interface Found {
  readonly forceN: number;
  readonly verified: boolean;
  readonly between?: readonly [PullRow, PullRow];
}

/** The row of a gauge; of a metric size the row, else the straight line between its two neighbours. Never beyond. */
function find(rows: readonly PullRow[], size: WireSize): Found | undefined {
  if (size.system === 'awg') {
    const row = rows.find((r) => r.gauge === size.gauge);
    return row && { forceN: row.forceN, verified: row.verified === true };
  }
  const metric = rows.filter((r) => r.areaMm2 !== undefined);
  const above = metric.findIndex((r) => r.areaMm2! >= size.areaMm2 - 1e-9);
  const high = metric[above];
  if (!high) return undefined;
  if (high.areaMm2! - size.areaMm2 < 1e-9) return { forceN: high.forceN, verified: high.verified === true };
  const low = metric[above - 1];
  if (!low) return undefined;
  const share = (size.areaMm2 - low.areaMm2!) / (high.areaMm2! - low.areaMm2!);
  return {
    forceN: low.forceN + share * (high.forceN - low.forceN),
    verified: false,
    between: [low, high],
  };
}

/**
 * Least force at which a crimp may come apart, from a named table, or 60 % of what the wire itself bears. Tables differ by
 * a factor of up to 2.3 for one size, so the name belongs to the number. A gauge is not looked up as square millimetres;
 * nothing is extrapolated. Of two wires in one crimp the thinner one's minimum applies, each pulled alone (common
 * practice, from memory). The contact maker's own value wins over every table.
 */
export const pullForce = calculation<typeof inputs, PullForce>({
  id: 'pull-force',
  title: 'Least pull-out force of a crimp',
  about: 'By conductor size from a named table, or 60 % of the tensile strength of the wire.',
  inputs,
  outputs: {
    minimumN: { label: 'Least pull-out force', unit: 'N' },
    retentionMaxN: { label: 'Largest retention pull', unit: 'N' },
    tableTitle: { label: 'Table', unit: '' },
    verified: { label: 'Seen in the source', unit: '' },
  },
  sources: [...Object.values(TABLES).map((t) => t.source), NASA_SHARES, SOFT_COPPER],
  run({ table, size, otherSize, areaMm2, tensileNPerMm2 }) {
    if (table === 'sixty-percent') {
      if (areaMm2 === undefined) return { ok: false, problem: { code: 'needs', inputs: ['areaMm2'] } };
      const minimumN = TENSILE_SHARE * tensileNPerMm2 * areaMm2;
      return answer({
        minimumN,
        retentionMaxN: RETENTION_SHARE * minimumN,
        tableTitle: '60 % of the tensile strength of the wire',
        verified: 'yes',
        working: {
          formula: 'F = 0.6 x tensile strength x area; retention pull = 0.8 x F',
          figures: [
            figure('Metal area', areaMm2, 'mm2'),
            figure('Tensile strength', tensileNPerMm2, 'N/mm2'),
          ],
          sources: [NASA_SHARES, SOFT_COPPER],
          notes: ['Soft copper unless another strength was entered.'],
        },
      });
    }
    if (!size) return { ok: false, problem: { code: 'needs', inputs: ['size'] } };
    const { source, edition, rows } = TABLES[table];
    const sizes = otherSize ? [size, otherSize] : [size];
    const found = sizes.map((s) => find(rows, s));
    const lost = found.findIndex((f) => !f);
    if (lost >= 0)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'wire size',
          value: wireSizeText(sizes[lost]!),
          range: `no row in ${source.title}`,
        },
      };
    const least = found.reduce((a, b) => (b!.forceN < a!.forceN ? b : a))!;
    return answer({
      minimumN: least.forceN,
      retentionMaxN: RETENTION_SHARE * least.forceN,
      tableTitle: source.title,
      verified: least.verified ? 'yes' : 'not verified',
      working: {
        formula: least.between ? 'straight line between two rows' : 'row of the table',
        figures: [
          ...sizes.map((s, i) => figure(wireSizeText(s), found[i]!.forceN, 'N')),
          ...(least.between ?? []).map((r) => figure(`Row ${r.areaMm2} mm2`, r.forceN, 'N')),
          figure('Edition', edition),
        ],
        sources: [source, NASA_SHARES],
        notes: [
          ...(least.verified
            ? []
            : ['Not verified: recalled, or between rows. Check it against the standard.']),
          ...(otherSize
            ? ['Two wires: the minimum of the thinner one, each pulled alone (from memory).']
            : []),
        ],
      },
    });
  },
});
