import type { CalcSource } from '../calculation';

/** Continuous current by AWG gauge (0, -1, -2, -3 are 1/0 to 4/0) and conductor temperature rating. */
export interface AmpacityTable {
  readonly title: string;
  readonly source: CalcSource;
  /** The conditions the numbers hold for; they stand beside every number taken from the table. */
  readonly conditions: string;
  /** Ambient temperature of the numbers, degrees C. */
  readonly ambientC: number;
  readonly ratingsC: readonly number[];
  /** Current in A per rating, in the order of `ratingsC`; null: not in the table, or not known. */
  readonly rows: readonly { readonly gauge: number; readonly currentsA: readonly (number | null)[] }[];
  /** Ratings whose column was recalled, not seen. */
  readonly unverifiedRatingsC: readonly number[];
}

export const AC_43_13_TABLE_11_9: AmpacityTable = {
  title: 'AC 43.13-1B table 11-9, wires in bundles',
  source: { title: 'FAA AC 43.13-1B Change 1 (2001), table 11-9', verified: true },
  conditions:
    '70 degC ambient, 33 or more wires (24 to 10 AWG) or 9 wires (8 AWG and larger), at most 20 % of the harness capacity in use, 60 000 ft',
  ambientC: 70,
  ratingsC: [105, 150, 200],
  unverifiedRatingsC: [],
  rows: [
    { gauge: 24, currentsA: [2.5, 4, 5] },
    { gauge: 22, currentsA: [3, 5, 6] },
    { gauge: 20, currentsA: [4, 7, 9] },
    { gauge: 18, currentsA: [6, 9, 12] },
    { gauge: 16, currentsA: [7, 11, 14] },
    { gauge: 14, currentsA: [10, 14, 18] },
    { gauge: 12, currentsA: [13, 19, 25] },
    { gauge: 10, currentsA: [17, 26, 32] },
    { gauge: 8, currentsA: [38, 57, 71] },
    { gauge: 6, currentsA: [50, 76, 97] },
    { gauge: 4, currentsA: [68, 103, 133] },
    { gauge: 2, currentsA: [95, 141, 179] },
    { gauge: 1, currentsA: [113, 166, 210] },
    { gauge: 0, currentsA: [128, 192, 243] },
    { gauge: -1, currentsA: [147, 222, 285] },
    { gauge: -2, currentsA: [172, 262, 335] },
    { gauge: -3, currentsA: [204, 310, 395] },
  ],
};

export const NEC_310_17: AmpacityTable = {
  title: 'NEC table 310.17, single conductor in free air',
  source: {
    title: 'NEC (NFPA 70) table 310.17, copper',
    verified: true,
    note: '60 and 75 degC columns from memory; 18 and 16 AWG from a reference page',
  },
  conditions: 'one insulated copper conductor in free air, 30 degC ambient',
  ambientC: 30,
  ratingsC: [60, 75, 90],
  unverifiedRatingsC: [60, 75],
  rows: [
    { gauge: 18, currentsA: [null, null, 18] },
    { gauge: 16, currentsA: [null, null, 24] },
    { gauge: 14, currentsA: [25, 30, 35] },
    { gauge: 12, currentsA: [30, 35, 40] },
    { gauge: 10, currentsA: [40, 50, 55] },
    { gauge: 8, currentsA: [60, 70, 80] },
    { gauge: 6, currentsA: [80, 95, 105] },
    { gauge: 4, currentsA: [105, 125, 140] },
  ],
};

export const NEC_310_16: AmpacityTable = {
  title: 'NEC table 310.16, up to three conductors in a raceway',
  source: {
    title: 'NEC (NFPA 70) table 310.16, copper',
    verified: false,
    note: '10 AWG at 90 degC and 8 AWG seen, the rest from memory',
  },
  conditions: 'not more than three current-carrying conductors in a raceway, 30 degC ambient',
  ambientC: 30,
  ratingsC: [60, 75, 90],
  unverifiedRatingsC: [60, 75, 90],
  rows: [
    { gauge: 14, currentsA: [15, 20, 25] },
    { gauge: 12, currentsA: [20, 25, 30] },
    { gauge: 10, currentsA: [30, 35, 40] },
    { gauge: 8, currentsA: [40, 50, 55] },
  ],
};

/**
 * NASA EEE-INST-002 (MIL-STD-975) maximum applied current of one wire and of a wire in a bundle. The bundled column is for
 * large bundles whatever their count; the formula of MIL-STD-975 goes by the count. They are different rules.
 */
export const EEE_INST_002 = {
  title: 'EEE-INST-002 wire derating',
  source: {
    title: 'NASA EEE-INST-002 / MIL-STD-975',
    verified: false,
    note: 'single column seen except 28 and 26 AWG; bundled column seen for 12 AWG only',
  } satisfies CalcSource,
  conditions: '200 degC fluoropolymer wire at 70 degC ambient in hard vacuum (from memory)',
  ambientC: 70,
  ratedC: 200,
  rows: [
    { gauge: 30, singleA: 1.3, bundledA: 0.7 },
    { gauge: 28, singleA: 1.8, bundledA: 1 },
    { gauge: 26, singleA: 2.5, bundledA: 1.4 },
    { gauge: 24, singleA: 3.3, bundledA: 2 },
    { gauge: 22, singleA: 4.5, bundledA: 2.5 },
    { gauge: 20, singleA: 6.5, bundledA: 3.7 },
    { gauge: 18, singleA: 9.2, bundledA: 5 },
    { gauge: 16, singleA: 13, bundledA: 6.5 },
    { gauge: 14, singleA: 19, bundledA: 8.5 },
    { gauge: 12, singleA: 25, bundledA: 11.5 },
    { gauge: 10, singleA: 33, bundledA: 16.5 },
    { gauge: 8, singleA: 44, bundledA: 23 },
    { gauge: 6, singleA: 60, bundledA: 30 },
    { gauge: 4, singleA: 81, bundledA: 40 },
    { gauge: 2, singleA: 108, bundledA: 50 },
  ],
  /** Share of the 200 degC value for wire of a lower rating (from memory). */
  ratingFactors: [
    { ratedC: 200, factor: 1 },
    { ratedC: 150, factor: 0.8 },
    { ratedC: 135, factor: 0.7 },
    { ratedC: 105, factor: 0.5 },
  ],
} as const;
