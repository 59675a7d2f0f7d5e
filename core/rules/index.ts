import { alternateChecked } from './alternate-checked';
import { bendRadius } from './bend-radius';
import { boardLock } from './board-lock';
import { bundleFit } from './bundle-fit';
import { cavityPlug } from './cavity-plug';
import { cavityShared } from './cavity-shared';
import { cavityState } from './cavity-state';
import { cavityUnknown } from './cavity-unknown';
import { colourRepeat } from './colour-repeat';
import { compliance } from './compliance';
import { conductorRange } from './conductor-range';
import { conductorSolid } from './conductor-solid';
import { connectorThroughHole } from './connector-through-hole';
import { contactCurrent } from './contact-current';
import { contactForm } from './contact-form';
import { contactKind } from './contact-kind';
import { contactMissing } from './contact-missing';
import { contactSeries } from './contact-series';
import { contactTemperature } from './contact-temperature';
import { creepage } from './creepage';
import { crimpSpec } from './crimp-spec';
import { cutOut } from './cut-out';
import { designatorUnique } from './designator-unique';
import { doubleCrimp } from './double-crimp';
import { drainWire } from './drain-wire';
import { endLabel } from './end-label';
import { firstBend } from './first-bend';
import { fixingFit } from './fixing-fit';
import { fuseDistance } from './fuse-distance';
import { fuseProtectsWire } from './fuse-protects-wire';
import { inrush } from './inrush';
import { insulationRange } from './insulation-range';
import { keyPlug } from './key-plug';
import { lengthMissing } from './length-missing';
import { lengthStack } from './length-stack';
import { lengthTolerance } from './length-tolerance';
import { livePinsExposed } from './live-pins-exposed';
import { mateBodyForm } from './mate-body-form';
import { mateClearance } from './mate-clearance';
import { mateContactKind } from './mate-contact-kind';
import { mateCycles } from './mate-cycles';
import { mateFingerRoom } from './mate-finger-room';
import { mateForce } from './mate-force';
import { mateInterface } from './mate-interface';
import { mateKeying } from './mate-keying';
import { mateMissing } from './mate-missing';
import { mateNumberMap } from './mate-number-map';
import { matePlating } from './mate-plating';
import { mateUnderPower } from './mate-under-power';
import { netConflict } from './net-conflict';
import { netEnds } from './net-ends';
import { netOpen } from './net-open';
import { noiseClasses } from './noise-classes';
import { offerMissing } from './offer-missing';
import { pairKept } from './pair-kept';
import { panelMount } from './panel-mount';
import { panelThickness } from './panel-thickness';
import { parallelWires } from './parallel-wires';
import { partChanged } from './part-changed';
import { partLifecycle } from './part-lifecycle';
import { partUnknown } from './part-unknown';
import { pinOne } from './pin-one';
import { pitchMix } from './pitch-mix';
import { protectiveEarth } from './protective-earth';
import { pullForce } from './pull-force';
import { redundantTogether } from './redundant-together';
import { reservedColour } from './reserved-colour';
import { returnPath } from './return-path';
import type { AnyRule } from './rule';
import { secondaryLock } from './secondary-lock';
import { serviceLoop } from './service-loop';
import { shieldEnds } from './shield-ends';
import { shortCircuit } from './short-circuit';
import { solderProcess } from './solder-process';
import { spares } from './spares';
import { strainRelief } from './strain-relief';
import { stripLength } from './strip-length';
import { tailLength } from './tail-length';
import { tieSpacing } from './tie-spacing';
import { tooling } from './tooling';
import { toolReady } from './tool-ready';
import { unitSuspect } from './unit-suspect';
import { untwist } from './untwist';
import { voltageClasses } from './voltage-classes';
import { voltageDrop } from './voltage-drop';
import { voltageRating } from './voltage-rating';
import { wireClass } from './wire-class';
import { wireCurrent } from './wire-current';
import { wireTooFat } from './wire-too-fat';
import { wrongPlug } from './wrong-plug';

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
  mateCycles,
  mateForce,
  mateClearance,
  mateFingerRoom,
  keyPlug,
  mateUnderPower,
  livePinsExposed,
  wrongPlug,
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
  crimpSpec,
  contactForm,
  pullForce,
  // Cavities
  cavityUnknown,
  cavityShared,
  cavityState,
  cavityPlug,
  secondaryLock,
  spares,
  // Board and panel
  solderProcess,
  tailLength,
  boardLock,
  pitchMix,
  panelMount,
  panelThickness,
  cutOut,
  pinOne,
  // Electrical
  netConflict,
  netEnds,
  netOpen,
  returnPath,
  contactCurrent,
  wireCurrent,
  fuseProtectsWire,
  fuseDistance,
  shortCircuit,
  voltageDrop,
  voltageRating,
  creepage,
  voltageClasses,
  parallelWires,
  inrush,
  wireClass,
  protectiveEarth,
  reservedColour,
  // Route
  lengthMissing,
  lengthStack,
  lengthTolerance,
  bundleFit,
  fixingFit,
  strainRelief,
  connectorThroughHole,
  bendRadius,
  firstBend,
  serviceLoop,
  tieSpacing,
  // Pairs and shields
  pairKept,
  untwist,
  shieldEnds,
  drainWire,
  noiseClasses,
  redundantTogether,
  // Identity and buying
  designatorUnique,
  colourRepeat,
  partUnknown,
  unitSuspect,
  endLabel,
  partLifecycle,
  alternateChecked,
  compliance,
  offerMissing,
  tooling,
  toolReady,
  partChanged,
];
