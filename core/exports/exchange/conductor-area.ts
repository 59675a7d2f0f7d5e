import type { Conductor } from '../../model/parts/wire';

/** The stated metal area, mm2; that of a metric designation where none is stated. A gauge is not made into an area. */
export const conductorAreaMm2 = ({ areaMm2, size }: Conductor): number | undefined =>
  areaMm2 ?? (size.system === 'mm2' ? size.areaMm2 : undefined);
