import type { CalcSource } from '../calculation';

/**
 * Figures of IEC 60664-1:2020 as published copies agree on them; single facts with their table numbers. The user checks
 * them against the edition that applies.
 */
export const IEC_60664 = (table: string, note?: string): CalcSource => ({
  title: `IEC 60664-1:2020 table ${table}`,
  verified: true,
  ...(note === undefined ? {} : { note }),
});

/** Table F.1: rated impulse voltage (V) by line-to-neutral voltage (V, up to) and overvoltage category I to IV. */
export const RATED_IMPULSE = [
  { lineToNeutralV: 50, impulseV: [330, 500, 800, 1500] },
  { lineToNeutralV: 100, impulseV: [500, 800, 1500, 2500] },
  { lineToNeutralV: 150, impulseV: [800, 1500, 2500, 4000] },
  { lineToNeutralV: 300, impulseV: [1500, 2500, 4000, 6000] },
  { lineToNeutralV: 600, impulseV: [2500, 4000, 6000, 8000] },
  { lineToNeutralV: 1000, impulseV: [4000, 6000, 8000, 12000] },
] as const;

/** Table F.2: clearance (mm) up to 2000 m by impulse voltage (V) for pollution degrees 1, 2, 3; case A inhomogeneous, B homogeneous field. */
export const CLEARANCE = [
  { impulseV: 330, caseAMm: [0.01, 0.2, 0.8], caseBMm: [0.01, 0.2, 0.8] },
  { impulseV: 400, caseAMm: [0.02, 0.2, 0.8], caseBMm: [0.02, 0.2, 0.8] },
  { impulseV: 500, caseAMm: [0.04, 0.2, 0.8], caseBMm: [0.04, 0.2, 0.8] },
  { impulseV: 600, caseAMm: [0.06, 0.2, 0.8], caseBMm: [0.06, 0.2, 0.8] },
  { impulseV: 800, caseAMm: [0.1, 0.2, 0.8], caseBMm: [0.1, 0.2, 0.8] },
  { impulseV: 1000, caseAMm: [0.15, 0.2, 0.8], caseBMm: [0.15, 0.2, 0.8] },
  { impulseV: 1200, caseAMm: [0.25, 0.25, 0.8], caseBMm: [0.2, 0.2, 0.8] },
  { impulseV: 1500, caseAMm: [0.5, 0.5, 0.8], caseBMm: [0.3, 0.3, 0.8] },
  { impulseV: 2000, caseAMm: [1, 1, 1], caseBMm: [0.45, 0.45, 0.8] },
  { impulseV: 2500, caseAMm: [1.5, 1.5, 1.5], caseBMm: [0.6, 0.6, 0.8] },
  { impulseV: 3000, caseAMm: [2, 2, 2], caseBMm: [0.8, 0.8, 0.8] },
  { impulseV: 4000, caseAMm: [3, 3, 3], caseBMm: [1.2, 1.2, 1.2] },
  { impulseV: 5000, caseAMm: [4, 4, 4], caseBMm: [1.5, 1.5, 1.5] },
  { impulseV: 6000, caseAMm: [5.5, 5.5, 5.5], caseBMm: [2, 2, 2] },
  { impulseV: 8000, caseAMm: [8, 8, 8], caseBMm: [3, 3, 3] },
  { impulseV: 10000, caseAMm: [11, 11, 11], caseBMm: [3.5, 3.5, 3.5] },
  { impulseV: 12000, caseAMm: [14, 14, 14], caseBMm: [4.5, 4.5, 4.5] },
] as const;

/** Table F.8: clearance (mm) for steady-state, temporary or recurring peaks (V). */
export const CLEARANCE_PEAK = [
  { peakV: 330, caseAMm: 0.01, caseBMm: 0.01 },
  { peakV: 400, caseAMm: 0.02, caseBMm: 0.02 },
  { peakV: 500, caseAMm: 0.04, caseBMm: 0.04 },
  { peakV: 600, caseAMm: 0.06, caseBMm: 0.06 },
  { peakV: 800, caseAMm: 0.13, caseBMm: 0.1 },
  { peakV: 1000, caseAMm: 0.26, caseBMm: 0.15 },
  { peakV: 1200, caseAMm: 0.42, caseBMm: 0.2 },
  { peakV: 1500, caseAMm: 0.76, caseBMm: 0.3 },
  { peakV: 2000, caseAMm: 1.27, caseBMm: 0.45 },
  { peakV: 2500, caseAMm: 1.8, caseBMm: 0.6 },
  { peakV: 3000, caseAMm: 2.4, caseBMm: 0.8 },
  { peakV: 4000, caseAMm: 3.8, caseBMm: 1.2 },
  { peakV: 5000, caseAMm: 5.7, caseBMm: 1.5 },
  { peakV: 6000, caseAMm: 7.9, caseBMm: 2 },
  { peakV: 8000, caseAMm: 11, caseBMm: 3 },
  { peakV: 10000, caseAMm: 15.2, caseBMm: 3.5 },
] as const;

/** Table F.5: creepage (mm) by working voltage (V rms); pollution degrees 2 and 3 by material group I, II, III. */
export const CREEPAGE = [
  {
    voltageV: 10,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.08,
    pd2Mm: [0.4, 0.4, 0.4],
    pd3Mm: [1, 1, 1],
  },
  {
    voltageV: 12.5,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.09,
    pd2Mm: [0.42, 0.42, 0.42],
    pd3Mm: [1.05, 1.05, 1.05],
  },
  {
    voltageV: 16,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.1,
    pd2Mm: [0.45, 0.45, 0.45],
    pd3Mm: [1.1, 1.1, 1.1],
  },
  {
    voltageV: 20,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.11,
    pd2Mm: [0.48, 0.48, 0.48],
    pd3Mm: [1.2, 1.2, 1.2],
  },
  {
    voltageV: 25,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.125,
    pd2Mm: [0.5, 0.5, 0.5],
    pd3Mm: [1.25, 1.25, 1.25],
  },
  {
    voltageV: 32,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.14,
    pd2Mm: [0.53, 0.53, 0.53],
    pd3Mm: [1.3, 1.3, 1.3],
  },
  {
    voltageV: 40,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.16,
    pd2Mm: [0.56, 0.8, 1.1],
    pd3Mm: [1.4, 1.6, 1.8],
  },
  {
    voltageV: 50,
    boardPd1Mm: 0.025,
    boardPd2Mm: 0.04,
    pd1Mm: 0.18,
    pd2Mm: [0.6, 0.85, 1.2],
    pd3Mm: [1.5, 1.7, 1.9],
  },
  {
    voltageV: 63,
    boardPd1Mm: 0.04,
    boardPd2Mm: 0.063,
    pd1Mm: 0.2,
    pd2Mm: [0.63, 0.9, 1.25],
    pd3Mm: [1.6, 1.8, 2],
  },
  {
    voltageV: 80,
    boardPd1Mm: 0.063,
    boardPd2Mm: 0.1,
    pd1Mm: 0.22,
    pd2Mm: [0.67, 0.95, 1.3],
    pd3Mm: [1.7, 1.9, 2.1],
  },
  {
    voltageV: 100,
    boardPd1Mm: 0.1,
    boardPd2Mm: 0.16,
    pd1Mm: 0.25,
    pd2Mm: [0.71, 1, 1.4],
    pd3Mm: [1.8, 2, 2.2],
  },
  {
    voltageV: 125,
    boardPd1Mm: 0.16,
    boardPd2Mm: 0.25,
    pd1Mm: 0.28,
    pd2Mm: [0.75, 1.05, 1.5],
    pd3Mm: [1.9, 2.1, 2.4],
  },
  {
    voltageV: 160,
    boardPd1Mm: 0.25,
    boardPd2Mm: 0.4,
    pd1Mm: 0.32,
    pd2Mm: [0.8, 1.1, 1.6],
    pd3Mm: [2, 2.2, 2.5],
  },
  {
    voltageV: 200,
    boardPd1Mm: 0.4,
    boardPd2Mm: 0.63,
    pd1Mm: 0.42,
    pd2Mm: [1, 1.4, 2],
    pd3Mm: [2.5, 2.8, 3.2],
  },
  {
    voltageV: 250,
    boardPd1Mm: 0.56,
    boardPd2Mm: 1,
    pd1Mm: 0.56,
    pd2Mm: [1.25, 1.8, 2.5],
    pd3Mm: [3.2, 3.6, 4],
  },
  {
    voltageV: 320,
    boardPd1Mm: 0.75,
    boardPd2Mm: 1.6,
    pd1Mm: 0.75,
    pd2Mm: [1.6, 2.2, 3.2],
    pd3Mm: [4, 4.5, 5],
  },
  { voltageV: 400, boardPd1Mm: 1, boardPd2Mm: 2, pd1Mm: 1, pd2Mm: [2, 2.8, 4], pd3Mm: [5, 5.6, 6.3] },
  { voltageV: 500, boardPd1Mm: 1.3, boardPd2Mm: 2.5, pd1Mm: 1.3, pd2Mm: [2.5, 3.6, 5], pd3Mm: [6.3, 7.1, 8] },
  { voltageV: 630, boardPd1Mm: 1.8, boardPd2Mm: 3.2, pd1Mm: 1.8, pd2Mm: [3.2, 4.5, 6.3], pd3Mm: [8, 9, 10] },
  { voltageV: 800, boardPd1Mm: 2.4, boardPd2Mm: 4, pd1Mm: 2.4, pd2Mm: [4, 5.6, 8], pd3Mm: [10, 11, 12.5] },
  { voltageV: 1000, boardPd1Mm: 3.2, boardPd2Mm: 5, pd1Mm: 3.2, pd2Mm: [5, 7.1, 10], pd3Mm: [12.5, 14, 16] },
] as const;

/** Table A.2: factor on the clearance by altitude (m, up to); no credit is taken below 2000 m. */
export const ALTITUDE_FACTOR = [
  { altitudeM: 2000, factor: 1 },
  { altitudeM: 3000, factor: 1.14 },
  { altitudeM: 4000, factor: 1.29 },
  { altitudeM: 5000, factor: 1.48 },
  { altitudeM: 6000, factor: 1.7 },
  { altitudeM: 7000, factor: 1.95 },
  { altitudeM: 8000, factor: 2.25 },
  { altitudeM: 9000, factor: 2.62 },
  { altitudeM: 10000, factor: 3.02 },
  { altitudeM: 15000, factor: 6.67 },
  { altitudeM: 20000, factor: 14.5 },
] as const;

/** Material groups by comparative tracking index (IEC 60112; from memory). */
export const TRACKING_GROUPS = [
  { group: 'I', fromCti: 600 },
  { group: 'II', fromCti: 400 },
  { group: 'IIIa', fromCti: 175 },
  { group: 'IIIb', fromCti: 100 },
] as const;

export const IPC_2221: CalcSource = { title: 'IPC-2221B table 6-1', verified: true };

/** IPC-2221B table 6-1: spacing (mm) by peak voltage (V, up to): inner layers, outer uncoated up to 3050 m, outer coated. */
export const BOARD_SPACING = [
  { toV: 15, innerMm: 0.05, uncoatedMm: 0.1, coatedMm: 0.05 },
  { toV: 30, innerMm: 0.05, uncoatedMm: 0.1, coatedMm: 0.05 },
  { toV: 50, innerMm: 0.1, uncoatedMm: 0.6, coatedMm: 0.13 },
  { toV: 100, innerMm: 0.1, uncoatedMm: 0.6, coatedMm: 0.13 },
  { toV: 150, innerMm: 0.2, uncoatedMm: 0.6, coatedMm: 0.4 },
  { toV: 170, innerMm: 0.2, uncoatedMm: 1.25, coatedMm: 0.4 },
  { toV: 250, innerMm: 0.2, uncoatedMm: 1.25, coatedMm: 0.4 },
  { toV: 300, innerMm: 0.2, uncoatedMm: 1.25, coatedMm: 0.4 },
  { toV: 500, innerMm: 0.25, uncoatedMm: 2.5, coatedMm: 0.8 },
] as const;

/** Above 500 V each further volt adds this, mm. */
export const BOARD_SPACING_PER_V = { innerMm: 0.0025, uncoatedMm: 0.005, coatedMm: 0.00305 } as const;
