/**
 * Metal area of a stranded conductor in mm2: the sum of its round strands, across each strand's own axis. The lay
 * adds length and resistance, not metal in a strand's section, so it is not counted here (MIL-DTL-29606 and IEC 60228
 * tables are built the same way).
 */
export function strandAreaMm2(construction: {
  readonly strands: number;
  readonly strandDiameterMm: number;
}): number {
  return (construction.strands * Math.PI * construction.strandDiameterMm ** 2) / 4;
}
