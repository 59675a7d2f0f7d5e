import { ampacity } from './ampacity';
import { boardSpacing } from './board-spacing';
import { bundleHeat } from './bundle-heat';
import { circuit } from './circuit';
import { clearance } from './clearance';
import { conductorArea } from './conductor-area';
import { conductorMass } from './conductor-mass';
import { conductorResistance } from './conductor-resistance';
import { conductorTemperature } from './conductor-temperature';
import { contactDerating } from './contact-derating';
import { contactHeating } from './contact-heating';
import { creepage } from './creepage';
import { fuseAgainstWires } from './fuse-against-wires';
import { inrush } from './inrush';
import { shortCircuit } from './short-circuit';
import { skippedPositions } from './skipped-positions';
import { voltageDrop } from './voltage-drop';
import type { AnyCalculation } from './calculation';

/** Every calculation that can be asked for by name, in the order in which they are listed. */
export const CALCULATIONS: readonly AnyCalculation[] = [
  // Electrical.
  conductorArea,
  conductorResistance,
  conductorMass,
  conductorTemperature,
  voltageDrop,
  circuit,
  ampacity,
  bundleHeat,
  fuseAgainstWires,
  shortCircuit,
  inrush,
  contactHeating,
  contactDerating,
  clearance,
  creepage,
  skippedPositions,
  boardSpacing,
  // Geometry, crimp, board and panel.
];

/** The calculation of that id. */
export const calculationById = (id: string): AnyCalculation | undefined =>
  CALCULATIONS.find((c) => c.id === id);
