/** Dry air at a temperature and height. */
export interface Air {
  readonly conductivityWPerMK: number;
  readonly kinematicViscosityM2PerS: number;
  readonly diffusivityM2PerS: number;
}

export const ZERO_C_IN_K = 273.15;
const GAS_CONSTANT_J_PER_KGK = 287.05;
const HEAT_CAPACITY_J_PER_KGK = 1006;

/** Pressure of the standard atmosphere (ISO 2533), Pa, for heights of 0 to 20 000 m. */
export const standardPressurePa = (heightM: number): number =>
  heightM <= 11_000
    ? 101_325 * (1 - 2.25577e-5 * heightM) ** 5.25588
    : 22_632 * Math.exp(-(heightM - 11_000) / 6341.62);

/**
 * Properties by Sutherland's formula for viscosity and the conductivity formula of the US standard atmosphere (1976), density
 * by the gas law; about -50 to 500 C (within 2 % of tables, from memory).
 */
export function airAt(temperatureC: number, heightM: number): Air {
  const t = temperatureC + ZERO_C_IN_K;
  const viscosity = (1.458e-6 * t ** 1.5) / (t + 110.4);
  const conductivityWPerMK = (2.64638e-3 * t ** 1.5) / (t + 245.4 * 10 ** (-12 / t));
  const density = standardPressurePa(heightM) / (GAS_CONSTANT_J_PER_KGK * t);
  return {
    conductivityWPerMK,
    kinematicViscosityM2PerS: viscosity / density,
    diffusivityM2PerS: conductivityWPerMK / (density * HEAT_CAPACITY_J_PER_KGK),
  };
}
