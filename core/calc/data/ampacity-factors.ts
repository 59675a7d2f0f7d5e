import type { CalcSource } from '../calculation';

export const BUNDLE_5088_SOURCE: CalcSource = {
  title: 'MIL-W-5088L (SAE AS50881) bundle derating curve',
  verified: true,
  note: 'read from a chart, about +/- 0.01',
};

/** Shares of the bundle capacity in use, percent, of the columns below. */
export const BUNDLE_5088_LOADS = [20, 40, 60, 80, 100] as const;

/** Factor on the single-wire current; row 0 is one wire, row 18 nineteen. More wires are not in the table. */
export const BUNDLE_5088_FACTORS: readonly (readonly number[])[] = [
  [1, 1, 1, 1, 1],
  [0.9675, 0.92, 0.91, 0.87, 0.825],
  [0.935, 0.855, 0.815, 0.77, 0.725],
  [0.9075, 0.805, 0.75, 0.705, 0.66],
  [0.875, 0.76, 0.695, 0.65, 0.61],
  [0.85, 0.725, 0.655, 0.605, 0.5725],
  [0.82, 0.695, 0.625, 0.57, 0.54],
  [0.795, 0.6675, 0.595, 0.5425, 0.5125],
  [0.775, 0.645, 0.575, 0.52, 0.485],
  [0.755, 0.6225, 0.55, 0.5, 0.465],
  [0.735, 0.6, 0.53, 0.48, 0.445],
  [0.715, 0.585, 0.515, 0.465, 0.43],
  [0.6975, 0.5675, 0.495, 0.4475, 0.415],
  [0.685, 0.5525, 0.48, 0.435, 0.3975],
  [0.67, 0.54, 0.465, 0.42, 0.385],
  [0.6575, 0.5275, 0.455, 0.41, 0.37],
  [0.645, 0.515, 0.4425, 0.3975, 0.36],
  [0.635, 0.505, 0.4325, 0.3875, 0.35],
  [0.625, 0.495, 0.4225, 0.38, 0.3425],
];

/** Factor with altitude in the order of the table: the published points only (AC 43.13-1B figure 11-5, its example). */
export const ALTITUDE_POINTS = [
  { altitudeFt: 0, factor: 1 },
  { altitudeFt: 20000, factor: 0.91 },
] as const;

export const ALTITUDE_SOURCE: CalcSource = {
  title: 'FAA AC 43.13-1B figure 11-5, point of paragraph 11-68',
  verified: true,
  note: 'between the points the lower factor is taken',
};

export const NEC_COUNT_SOURCE: CalcSource = {
  title: 'NEC (NFPA 70) 310.15, adjustment for more than three current-carrying conductors',
  verified: true,
};

/** Percent of the table current from that number of current-carrying conductors on. */
export const NEC_COUNT = [
  { from: 1, percent: 100 },
  { from: 4, percent: 80 },
  { from: 7, percent: 70 },
  { from: 10, percent: 50 },
  { from: 21, percent: 45 },
  { from: 31, percent: 40 },
  { from: 41, percent: 35 },
] as const;

export const NEC_AMBIENT_SOURCE: CalcSource = {
  title: 'NEC (NFPA 70) 310.15, ambient correction',
  verified: true,
};

/** Ambient correction of a table: upper end of each band (degrees C) and the factor per conductor rating. */
export interface AmbientCorrection {
  readonly basisC: number;
  readonly ratingsC: readonly number[];
  readonly bands: readonly { readonly toC: number; readonly factors: readonly (number | null)[] }[];
}

export const NEC_AMBIENT_30: AmbientCorrection = {
  basisC: 30,
  ratingsC: [60, 75, 90],
  bands: [
    { toC: 25, factors: [1.08, 1.05, 1.04] },
    { toC: 30, factors: [1, 1, 1] },
    { toC: 35, factors: [0.91, 0.94, 0.96] },
    { toC: 40, factors: [0.82, 0.88, 0.91] },
    { toC: 45, factors: [0.71, 0.82, 0.87] },
    { toC: 50, factors: [0.58, 0.75, 0.82] },
    { toC: 55, factors: [0.41, 0.67, 0.76] },
    { toC: 60, factors: [null, 0.58, 0.71] },
    { toC: 70, factors: [null, 0.33, 0.58] },
    { toC: 80, factors: [null, null, 0.41] },
  ],
};

export const NEC_AMBIENT_40: AmbientCorrection = {
  basisC: 40,
  ratingsC: [60, 75, 90, 150, 200, 250],
  bands: [
    { toC: 10, factors: [1.58, 1.36, 1.26, 1.13, 1.09, 1.07] },
    { toC: 15, factors: [1.5, 1.31, 1.22, 1.11, 1.08, 1.06] },
    { toC: 20, factors: [1.41, 1.25, 1.18, 1.09, 1.06, 1.05] },
    { toC: 25, factors: [1.32, 1.2, 1.14, 1.07, 1.05, 1.04] },
    { toC: 30, factors: [1.22, 1.13, 1.1, 1.04, 1.03, 1.02] },
    { toC: 35, factors: [1.12, 1.07, 1.05, 1.02, 1.02, 1.01] },
    { toC: 40, factors: [1, 1, 1, 1, 1, 1] },
    { toC: 45, factors: [0.87, 0.93, 0.95, 0.98, 0.98, 0.99] },
    { toC: 50, factors: [0.71, 0.85, 0.89, 0.95, 0.97, 0.98] },
    { toC: 55, factors: [0.5, 0.76, 0.84, 0.93, 0.95, 0.96] },
    { toC: 60, factors: [null, 0.65, 0.77, 0.9, 0.94, 0.95] },
    { toC: 65, factors: [null, 0.53, 0.71, 0.88, 0.92, 0.94] },
    { toC: 70, factors: [null, 0.38, 0.63, 0.85, 0.9, 0.93] },
    { toC: 75, factors: [null, null, 0.55, 0.83, 0.88, 0.91] },
    { toC: 80, factors: [null, null, 0.45, 0.8, 0.87, 0.9] },
    { toC: 90, factors: [null, null, null, 0.74, 0.83, 0.87] },
    { toC: 100, factors: [null, null, null, 0.67, 0.79, 0.85] },
    { toC: 110, factors: [null, null, null, 0.6, 0.75, 0.82] },
    { toC: 120, factors: [null, null, null, 0.52, 0.71, 0.79] },
    { toC: 130, factors: [null, null, null, 0.43, 0.66, 0.76] },
    { toC: 140, factors: [null, null, null, 0.3, 0.61, 0.72] },
  ],
};
