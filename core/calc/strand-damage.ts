import { z } from 'zod';
import { answer, calculation, field, figure, type Answer } from './calculation';
import { AIRCRAFT_STRAND_DAMAGE, STRAND_DAMAGE } from './data/strand-damage';

export interface StrandDamage extends Answer {
  /** Strands that may be nicked (scraped, nicked or severed together, where the table counts them so). */
  readonly damagedMax: number;
  /** Of these, strands that may be severed. */
  readonly severedMax: number;
}

const inputs = z.strictObject({
  table: field(z.enum(['a620', 'ac-43-13-1b']).default('a620'), 'Table'),
  strands: field(z.int().positive(), 'Strands of the conductor'),
  productClass: field(z.enum(['1', '2', '3']).default('3'), 'Product class'),
  tinned: field(z.boolean().default(false), 'Tinned before installation'),
  material: field(z.enum(['copper', 'aluminium']).default('copper'), 'Conductor'),
});

/**
 * Strands that may be damaged by stripping. IPC/WHMA-A-620 counts scraped, nicked and severed strands together and tells
 * class 3 wire that will be tinned from wire that will not; shares are rounded down to whole strands (our reading). FAA
 * AC 43.13-1B counts nicked and broken strands apart and knows the strand numbers of aircraft wire only.
 */
export const strandDamage = calculation<typeof inputs, StrandDamage>({
  id: 'strand-damage',
  title: 'Allowed strand damage',
  about: 'How many strands may be nicked or severed by stripping, by class and number of strands.',
  inputs,
  outputs: {
    damagedMax: { label: 'Damaged strands, at most', unit: '' },
    severedMax: { label: 'Of these severed, at most', unit: '' },
  },
  sources: [STRAND_DAMAGE.source, AIRCRAFT_STRAND_DAMAGE.source],
  run({ table, strands, productClass, tinned, material }) {
    if (table === 'ac-43-13-1b') {
      const row =
        material === 'aluminium'
          ? { nicked: 0, broken: 0 }
          : AIRCRAFT_STRAND_DAMAGE.rows.find((r) => strands >= r.minStrands && strands <= r.maxStrands);
      if (!row)
        return {
          ok: false,
          problem: {
            code: 'out-of-range',
            input: 'number of strands',
            value: strands,
            range: 'the table knows 19, 37, 133, 665 to 817, 1045 to 1330, 1665 and 2109',
          },
        };
      return answer({
        damagedMax: row.nicked,
        severedMax: row.broken,
        working: {
          formula: 'row of the table; nicked and broken count apart',
          figures: [figure('Strands', strands), figure('Conductor', material)],
          sources: [AIRCRAFT_STRAND_DAMAGE.source],
          notes: [`Edition: ${AIRCRAFT_STRAND_DAMAGE.edition}.`],
        },
      });
    }
    const row = STRAND_DAMAGE.rows.findLast((r) => strands >= r.minStrands);
    const share = !row
      ? 0
      : productClass !== '3'
        ? row.class12
        : tinned
          ? row.class3Tinned
          : row.class3Untinned;
    const damagedMax = share > 0 && share < 1 ? Math.floor(share * strands + 1e-9) : share;
    return answer({
      damagedMax,
      severedMax: damagedMax,
      working: {
        formula:
          share > 0 && share < 1
            ? `${Math.round(share * 100)} % of the strands, rounded down`
            : 'row of the table',
        figures: [
          figure('Strands', strands),
          figure('Product class', productClass),
          figure('Tinned before installation', tinned ? 'yes' : 'no'),
        ],
        sources: [STRAND_DAMAGE.source],
        notes: [
          ...(row ? [] : ['Solid wire: no damage deeper than 10 % of its diameter.']),
          ...(share > 0 && share < 1 ? ['Rounding down to whole strands is our reading.'] : []),
          `Edition: ${STRAND_DAMAGE.edition}.`,
        ],
      },
    });
  },
});
