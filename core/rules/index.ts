import { bendRadius } from './bend-radius';
import { boardLock } from './board-lock';
import { bundleFit } from './bundle-fit';
import { cavityPlug } from './cavity-plug';
import { cavityShared } from './cavity-shared';
import { cavityState } from './cavity-state';
import { cavityUnknown } from './cavity-unknown';
import { colourRepeat } from './colour-repeat';
import { conductorRange } from './conductor-range';
import { conductorSolid } from './conductor-solid';
import { contactCurrent } from './contact-current';
import { contactKind } from './contact-kind';
import { contactMissing } from './contact-missing';
import { contactSeries } from './contact-series';
import { contactTemperature } from './contact-temperature';
import { creepage } from './creepage';
import { designatorUnique } from './designator-unique';
import { doubleCrimp } from './double-crimp';
import { firstBend } from './first-bend';
import { fuseDistance } from './fuse-distance';
import { fuseProtectsWire } from './fuse-protects-wire';
import { inrush } from './inrush';
import { insulationRange } from './insulation-range';
import { lengthMissing } from './length-missing';
import { lengthStack } from './length-stack';
import { lengthTolerance } from './length-tolerance';
import { mateBodyForm } from './mate-body-form';
import { mateContactKind } from './mate-contact-kind';
import { mateInterface } from './mate-interface';
import { mateKeying } from './mate-keying';
import { mateMissing } from './mate-missing';
import { mateNumberMap } from './mate-number-map';
import { matePlating } from './mate-plating';
import { netConflict } from './net-conflict';
import { netEnds } from './net-ends';
import { panelMount } from './panel-mount';
import { panelThickness } from './panel-thickness';
import { parallelWires } from './parallel-wires';
import { partUnknown } from './part-unknown';
import { pitchMix } from './pitch-mix';
import { pullForce } from './pull-force';
import { returnPath } from './return-path';
import type { AnyRule } from './rule';
import { secondaryLock } from './secondary-lock';
import { serviceLoop } from './service-loop';
import { shortCircuit } from './short-circuit';
import { solderProcess } from './solder-process';
import { stripLength } from './strip-length';
import { tailLength } from './tail-length';
import { tieSpacing } from './tie-spacing';
import { untwist } from './untwist';
import { voltageDrop } from './voltage-drop';
import { voltageRating } from './voltage-rating';
import { wireCurrent } from './wire-current';
import { wireTooFat } from './wire-too-fat';

/** The rule book, in the order in which it is read. */
export const RULES: readonly AnyRule[] = [
  // Mating
  mateInterface,
  mateBodyForm,
  mateContactKind,
  mateKeying,
  mateNumberMap,
  mateMissing,
  matePlating,
  // Contacts and crimps
  contactMissing,
  contactKind,
  contactSeries,
  conductorRange,
  insulationRange,
  wireTooFat,
  doubleCrimp,
  conductorSolid,
  stripLength,
  contactTemperature,
  pullForce,
  // Cavities
  cavityUnknown,
  cavityShared,
  cavityState,
  cavityPlug,
  secondaryLock,
  // Board and panel
  solderProcess,
  tailLength,
  boardLock,
  pitchMix,
  panelMount,
  panelThickness,
  // Electrical
  netConflict,
  netEnds,
  returnPath,
  contactCurrent,
  wireCurrent,
  fuseProtectsWire,
  fuseDistance,
  shortCircuit,
  voltageDrop,
  voltageRating,
  creepage,
  parallelWires,
  inrush,
  // Route
  lengthMissing,
  lengthStack,
  lengthTolerance,
  bundleFit,
  bendRadius,
  firstBend,
  serviceLoop,
  tieSpacing,
  // Pairs and shields
  untwist,
  // Identity and buying
  designatorUnique,
  colourRepeat,
  partUnknown,
];
