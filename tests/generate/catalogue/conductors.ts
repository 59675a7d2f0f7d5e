import type { Conductor } from '@latchwork/core/model/parts/wire';
import type { WireSize } from '@latchwork/core/model/wire-size';
import { awg, mm2 } from './records';

/** Resistivity of annealed copper, ohm mm2/m at 20 degrees C: 1/58 (IEC 60028). */
const COPPER = 1 / 58;

export interface Stranded {
  readonly size: WireSize;
  readonly strands: number;
  readonly strandDiameterMm: number;
}

/**
 * Constructions that are common for each size: seven strands of a gauge eight or so steps thinner (common practice;
 * strand diameters are those of ASTM B258 gauges, rounded); metric ones as usual for flexible wires.
 */
export const STRANDED = {
  awg18: { size: awg(18), strands: 16, strandDiameterMm: 0.254 },
  awg20: { size: awg(20), strands: 7, strandDiameterMm: 0.32 },
  awg22: { size: awg(22), strands: 7, strandDiameterMm: 0.254 },
  awg24: { size: awg(24), strands: 7, strandDiameterMm: 0.203 },
  awg26: { size: awg(26), strands: 7, strandDiameterMm: 0.16 },
  awg28: { size: awg(28), strands: 7, strandDiameterMm: 0.127 },
  awg30: { size: awg(30), strands: 7, strandDiameterMm: 0.102 },
  mm014: { size: mm2(0.14), strands: 18, strandDiameterMm: 0.1 },
  mm035: { size: mm2(0.35), strands: 7, strandDiameterMm: 0.25 },
  mm05: { size: mm2(0.5), strands: 16, strandDiameterMm: 0.2 },
  /** One solid wire, which crimp contacts for stranded wire refuse. */
  awg22solid: { size: awg(22), strands: 1, strandDiameterMm: 0.644 },
} as const satisfies Record<string, Stranded>;

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

/** Metal area in mm2: strands times pi/4 d2. */
export const areaOf = (s: Stranded): number =>
  round(s.strands * (Math.PI / 4) * s.strandDiameterMm * s.strandDiameterMm, 4);

/** A conductor with insulation of the given diameter, plus and minus 0.05 mm. */
export function conductor(s: Stranded, odMm: number, insulation: string) {
  return {
    size: s.size,
    areaMm2: areaOf(s),
    stranding: { strands: s.strands, strandDiameterMm: s.strandDiameterMm },
    odMinMm: round(odMm - 0.05, 2),
    odMm,
    odMaxMm: round(odMm + 0.05, 2),
    conductorFinish: 'tin' as const,
    resistanceOhmPerKm: round((COPPER / areaOf(s)) * 1000 * (s.strands > 1 ? 1.02 : 1), 2),
    insulation,
  } satisfies Conductor & { insulation: string };
}
