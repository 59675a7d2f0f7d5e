import type { CalcSource } from './calculation';

export const TAPE_LAYERS: CalcSource = {
  title: 'Plain geometry: tape with a share of overlap lies in up to 1/(1 - overlap) layers',
  verified: true,
};

/**
 * How much a covering adds on one side, mm: its wall; for a tape with overlap the largest number of layers that lie on
 * each other, rounded up (half overlap: two). `overlap` 0 to 0.9.
 */
export function coveringThicknessMm(wallMm: number, overlap = 0): number {
  return wallMm * Math.ceil(1 / (1 - overlap) - 1e-9);
}
