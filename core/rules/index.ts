import { colourRepeat } from './colour-repeat';
import { conductorRange } from './conductor-range';
import { conductorSolid } from './conductor-solid';
import { contactKind } from './contact-kind';
import { contactMissing } from './contact-missing';
import { contactSeries } from './contact-series';
import { designatorUnique } from './designator-unique';
import { doubleCrimp } from './double-crimp';
import { insulationRange } from './insulation-range';
import { lengthMissing } from './length-missing';
import { netConflict } from './net-conflict';
import { netEnds } from './net-ends';
import { partUnknown } from './part-unknown';
import type { AnyRule } from './rule';
import { stripLength } from './strip-length';

/** The rule book, in the order in which it is read. */
export const RULES: readonly AnyRule[] = [
  // Contacts and crimps
  contactMissing,
  contactKind,
  contactSeries,
  conductorRange,
  insulationRange,
  doubleCrimp,
  conductorSolid,
  stripLength,
  // Electrical
  netConflict,
  netEnds,
  // Route
  lengthMissing,
  // Identity and buying
  designatorUnique,
  colourRepeat,
  partUnknown,
];
