import type { CalcSource } from '../calculation';

/** Density of insulations, g/cm3; of PVC and PTFE the middle of what compounds have. From memory. */
export const INSULATIONS = {
  PVC: 1.4,
  XLPE: 0.92,
  ETFE: 1.7,
  PTFE: 2.18,
  FEP: 2.15,
} as const;

export const INSULATION_DENSITY: CalcSource = {
  title: 'Densities of common insulations (PVC compounds 1.3 to 1.5, PTFE 2.15 to 2.2 g/cm3)',
  verified: false,
};
