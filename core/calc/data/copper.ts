import type { CalcSource } from '../calculation';

/** Resistivity of annealed copper at 20 C, ohm mm2/km: 1000/58 (100 % IACS). */
export const COPPER_RESISTIVITY_OHM_MM2_PER_KM = 1000 / 58;

/** R2/R1 = (234.5 + T2)/(234.5 + T1) for annealed copper, temperatures in degrees C. */
export const COPPER_ZERO_C = 234.5;

/** The same for aluminium. */
export const ALUMINIUM_ZERO_C = 238.1;

/** Density of copper conductors at 20 C, g/cm3. Pure copper of handbooks is 8.96 (0.8 % more). */
export const COPPER_DENSITY_G_PER_CM3 = 8.89;

/**
 * Design allowance for a concentric lay: strands are about 2 % longer than the conductor, so resistance and mass are.
 * Rope lays take more.
 */
export const CONCENTRIC_LAY_FACTOR = 1.02;

export const IEC_60028: CalcSource = {
  title: 'IEC 60028: resistivity of annealed copper, 1/58 ohm mm2/m at 20 C',
  verified: true,
};

export const COPPER_TEMPERATURE: CalcSource = {
  title: 'FAA AC 43.13-1B, paragraph 11-66: R proportional to 234.5 + T for copper, 238.1 + T for aluminium',
  verified: true,
};

export const COPPER_MASS: CalcSource = {
  title: 'IACS density of copper conductors, 8.89 g/cm3 at 20 C',
  verified: true,
};

export const LAY_ALLOWANCE: CalcSource = {
  title: 'Lay factor 1.02: stranded against solid of NEC chapter 9 table 8 is 1.018 to 1.026',
  verified: true,
};
