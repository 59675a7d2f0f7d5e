import { roundTo } from '../model/length-text';

/**
 * Sizes of solid round wire by the American wire gauge, ASTM B258: 36 AWG is 0.005 in and 4/0 AWG 0.46 in, with 38
 * sizes between them in geometric steps. Gauges 1/0 to 4/0 are 0, -1, -2, -3. A stranded wire of the same gauge has
 * another area: take it from its strands.
 */

/** Diameter by the formula, mm, unrounded. */
export const awgDiameterMm = (gauge: number): number => 0.127 * 92 ** ((36 - gauge) / 39);

/** Area by the formula, mm2, unrounded. */
export const awgAreaMm2 = (gauge: number): number => (Math.PI * awgDiameterMm(gauge) ** 2) / 4;

/** Diameter as the standard tabulates it, in mil (0.001 in): rounded to 0.1 mil, for sizes thicker than 44 AWG. */
export const awgNominalMil = (gauge: number): number => roundTo(awgDiameterMm(gauge) / 0.0254, 1);

/**
 * Circular mils as the standard tabulates them: the ROUNDED diameter in mil squared, then rounded to four
 * significant figures from 100 mil up, else to three.
 */
export function awgCircularMils(gauge: number): number {
  const mil = awgNominalMil(gauge);
  const figures = mil >= 100 ? 4 : 3;
  const circularMils = mil ** 2;
  return roundTo(circularMils, figures - 1 - Math.floor(Math.log10(circularMils)));
}
