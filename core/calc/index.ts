import { ampacity } from './ampacity';
import { bendRadius } from './bend-radius';
import { boardSpacing } from './board-spacing';
import { bundleDiameter } from './bundle-diameter';
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
import { crimpEquivalentSize } from './crimp-equivalent-size';
import { cutLength } from './cut-length';
import { firstTie } from './first-tie';
import { fuseAgainstWires } from './fuse-against-wires';
import { harnessMass } from './harness-mass';
import { inrush } from './inrush';
import { latchedThickness } from './latched-thickness';
import { leadHole } from './lead-hole';
import { lengthStack } from './length-stack';
import { lengthTolerance } from './length-tolerance';
import { pegFit } from './peg-fit';
import { pitchError } from './pitch-error';
import { pullForce } from './pull-force';
import { purchaseQuantity } from './purchase-quantity';
import { reflowPeak } from './reflow-peak';
import { samplingPlan } from './sampling-plan';
import { serviceLoop } from './service-loop';
import { shortCircuit } from './short-circuit';
import { skippedPositions } from './skipped-positions';
import { sleeveLength } from './sleeve-length';
import { strandDamage } from './strand-damage';
import { tailProtrusion } from './tail-protrusion';
import { tapeLength } from './tape-length';
import { tieSpacing } from './tie-spacing';
import { twistTakeUp } from './twist-take-up';
import { voltageDrop } from './voltage-drop';
import { wireMass } from './wire-mass';
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
  bundleDiameter,
  twistTakeUp,
  cutLength,
  serviceLoop,
  lengthTolerance,
  lengthStack,
  crimpEquivalentSize,
  pullForce,
  samplingPlan,
  strandDamage,
  bendRadius,
  firstTie,
  tieSpacing,
  tapeLength,
  sleeveLength,
  wireMass,
  harnessMass,
  tailProtrusion,
  leadHole,
  pegFit,
  pitchError,
  latchedThickness,
  reflowPeak,
  // Purchase.
  purchaseQuantity,
];

/** The calculation of that id. */
export const calculationById = (id: string): AnyCalculation | undefined =>
  CALCULATIONS.find((c) => c.id === id);
