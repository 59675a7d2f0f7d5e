import { airAt, ZERO_C_IN_K } from './air';

const STEFAN_BOLTZMANN = 5.670374e-8;
const GRAVITY = 9.80665;

export interface CylinderSurface {
  readonly diameterMm: number;
  readonly emissivity: number;
  readonly ambientC: number;
  readonly heightM: number;
  /** Factor on natural convection; 1 is the correlation, the band of an estimate moves it. */
  readonly convectionFactor: number;
}

/**
 * Heat that a long horizontal cylinder in still air gives off, W per metre: natural convection by Churchill and Chu (1975),
 * Rayleigh numbers from 1e-5 to 1e12, properties at the film temperature, and radiation to surroundings at ambient.
 */
export function cylinderLossWPerM(s: CylinderSurface, surfaceC: number): number {
  const riseK = surfaceC - s.ambientC;
  if (riseK <= 0) return 0;
  const diameterM = s.diameterMm / 1000;
  const filmC = (surfaceC + s.ambientC) / 2;
  const air = airAt(filmC, s.heightM);
  const rayleigh =
    (GRAVITY * riseK * diameterM ** 3) /
    ((filmC + ZERO_C_IN_K) * air.kinematicViscosityM2PerS * air.diffusivityM2PerS);
  const prandtl = air.kinematicViscosityM2PerS / air.diffusivityM2PerS;
  const nusselt =
    (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
  const convection = Math.PI * air.conductivityWPerMK * nusselt * riseK * s.convectionFactor;
  const radiation =
    Math.PI *
    diameterM *
    s.emissivity *
    STEFAN_BOLTZMANN *
    ((surfaceC + ZERO_C_IN_K) ** 4 - (s.ambientC + ZERO_C_IN_K) ** 4);
  return convection + radiation;
}

/** Surface temperature at which the cylinder gives off that much, degrees C (bisection, to a millionth of a kelvin). */
export function surfaceTemperatureC(s: CylinderSurface, lossWPerM: number): number {
  let low = s.ambientC;
  let high = s.ambientC + 1;
  while (cylinderLossWPerM(s, high) < lossWPerM && high < 1e5) high = s.ambientC + 2 * (high - s.ambientC);
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (cylinderLossWPerM(s, middle) < lossWPerM) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
