import { copperFactor } from '../conductor-resistance';
import { surfaceTemperatureC } from './cylinder-loss';

export interface HeatWire {
  readonly id: string;
  /** At 20 C. */
  readonly ohmPerKm: number;
  readonly currentA: number;
  readonly conductorMm: number;
  readonly odMm: number;
}

export interface HeatCovering {
  readonly wallMm: number;
  readonly conductivityWPerMK: number;
}

/** A bundle in still air with the constants of its model. */
export interface HeatBundle {
  readonly wires: readonly HeatWire[];
  /** Over the wires, inside the coverings. */
  readonly diameterMm: number;
  readonly coverings: readonly HeatCovering[];
  readonly ambientC: number;
  readonly heightM: number;
  readonly emissivity: number;
  readonly insulationWPerMK: number;
  /** Of the packed wires with the air between them, across the bundle. */
  readonly bundleWPerMK: number;
  readonly convectionFactor: number;
}

export interface HeatBalance {
  readonly hottestC: number;
  readonly surfaceC: number;
  readonly lossWPerM: number;
  readonly rounds: number;
}

/** Above this no wire insulation exists; the balance is called a runaway. */
const HOPELESS_C = 1000;

/**
 * Steady state of a bundle: every conductor is given the resistance of the hottest one; the heat crosses the bundle (uniform
 * source: q/(4 pi k)), the coverings (ln(r2/r1)/(2 pi k)) and the surface; and the hottest wire's own insulation. Starting
 * cold, each round is hotter than the last, so the rounds end at the lowest balance, or none exists (undefined).
 */
export function balanceBundle(b: HeatBundle, loadFactor = 1): HeatBalance | undefined {
  let radiusMm = b.diameterMm / 2;
  let layersKmPerW = b.wires.length > 1 ? 1 / (4 * Math.PI * b.bundleWPerMK) : 0;
  for (const c of b.coverings) {
    layersKmPerW += Math.log((radiusMm + c.wallMm) / radiusMm) / (2 * Math.PI * c.conductivityWPerMK);
    radiusMm += c.wallMm;
  }
  const surface = { ...b, diameterMm: 2 * radiusMm };
  const cold = b.wires.map((w) => (w.currentA * loadFactor) ** 2 * (w.ohmPerKm / 1000));
  const coldW = cold.reduce((sum, w) => sum + w, 0);
  const ownKW = Math.max(
    0,
    ...b.wires.map(
      (w, i) => (cold[i]! * Math.log(w.odMm / w.conductorMm)) / (2 * Math.PI * b.insulationWPerMK),
    ),
  );
  let hottestC = b.ambientC;
  for (let rounds = 1; rounds <= 2000; rounds++) {
    const factor = copperFactor(hottestC);
    const lossWPerM = coldW * factor;
    const surfaceC = surfaceTemperatureC(surface, lossWPerM);
    const nextC = surfaceC + lossWPerM * layersKmPerW + ownKW * factor;
    if (!(nextC < HOPELESS_C)) return undefined;
    if (Math.abs(nextC - hottestC) < 1e-5) return { hottestC: nextC, surfaceC, lossWPerM, rounds };
    hottestC = nextC;
  }
  return undefined;
}

/** Factor on all currents at which the hottest conductor reaches a limit (degrees C above ambient), by bisection. */
export function loadFactorAt(b: HeatBundle, limitC: number): number {
  const over = (f: number): boolean => {
    const balance = balanceBundle(b, f);
    return balance === undefined || balance.hottestC > limitC;
  };
  let low = 0;
  let high = 1;
  while (!over(high) && high < 1e6) high *= 2;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (over(middle)) high = middle;
    else low = middle;
  }
  return low;
}
