import { NEC_AMBIENT_SOURCE, type AmbientCorrection } from './data/ampacity-factors';
import type { CalcSource } from './calculation';

/** A factor on a current, and where it is from. */
export interface Factor {
  readonly factor: number;
  readonly source: CalcSource | undefined;
  readonly note: string | undefined;
}

export const NO_FACTOR: Factor = { factor: 1, source: undefined, note: undefined };

const SQUARE_ROOT_LAW: CalcSource = {
  title: 'rise proportional to the square of the current: I2/I1 = sqrt((Tc - Ta2)/(Tc - Ta1))',
  verified: false,
  note: 'reproduces every cell of the ambient tables of NEC 310.15 to 0.01 at the upper end of its band',
};

/**
 * Factor for an ambient temperature other than that of a table: sqrt((Tc - Ta)/(Tc - Tbasis)), Tc being the conductor's
 * limit. Zero from Tc on. Temperatures in degrees C.
 */
export const ambientFactor = (limitC: number, basisC: number, ambientC: number): number =>
  Math.sqrt(Math.max(0, limitC - ambientC) / (limitC - basisC));

/** The factor for a hotter ambient; a cooler one earns nothing where the table states no rule for it. */
export function ambientWithoutCredit(limitC: number, basisC: number, ambientC: number): Factor {
  if (ambientC <= basisC)
    return ambientC < basisC
      ? { factor: 1, source: undefined, note: `no credit for an ambient below ${basisC} degC` }
      : NO_FACTOR;
  return { factor: ambientFactor(limitC, basisC, ambientC), source: SQUARE_ROOT_LAW, note: undefined };
}

/** The printed factor of the band that holds the ambient; undefined above the table. Colder than the first band: its factor. */
export function ambientByTable(
  table: AmbientCorrection,
  limitC: number,
  ambientC: number,
): Factor | undefined {
  const column = table.ratingsC.indexOf(limitC);
  const factor = table.bands.find((b) => ambientC <= b.toC)?.factors[column];
  return factor === undefined || factor === null
    ? undefined
    : { factor, source: NEC_AMBIENT_SOURCE, note: undefined };
}
