import type { AnyCalculation } from './calculation';

/** Every calculation that can be asked for by name, in the order in which they are listed. */
export const CALCULATIONS: readonly AnyCalculation[] = [
  // Electrical.
  // Geometry, crimp, board and panel.
];

/** The calculation of that id. */
export const calculationById = (id: string): AnyCalculation | undefined =>
  CALCULATIONS.find((c) => c.id === id);
