import { z } from 'zod';
import { WireSize } from '../wire-size';
import { notNegative, partFields, positive } from './common';

/** Joint of conductors (crimp barrel or closed end). */
export const SplicePart = z.strictObject({
  ...partFields,
  kind: z.literal('splice'),
  areaMinMm2: positive.optional(),
  areaMaxMm2: positive.optional(),
  stripLengthMm: positive.optional(),
  resistanceMohm: notNegative.optional(),
  wiresMax: z.int().positive().optional(),
});

/** Ring, ferrule or blade at a free wire end. */
export const TerminalPart = z.strictObject({
  ...partFields,
  kind: z.literal('terminal'),
  form: z.enum(['ring', 'fork', 'ferrule', 'blade']).optional(),
  sizeMin: WireSize.optional(),
  sizeMax: WireSize.optional(),
  areaMinMm2: positive.optional(),
  areaMaxMm2: positive.optional(),
  insulationMaxMm: positive.optional(),
  stripLengthMm: positive.optional(),
  studMm: positive.optional(),
});

/** Closes an unused cavity of a sealed housing. */
export const CavityPlugPart = z.strictObject({
  ...partFields,
  kind: z.literal('cavity-plug'),
  fitsSeries: z.array(z.string()).optional(),
});

export const WireSealPart = z.strictObject({
  ...partFields,
  kind: z.literal('wire-seal'),
  fitsSeries: z.array(z.string()).optional(),
  odMinMm: positive.optional(),
  odMaxMm: positive.optional(),
});
export type WireSealPart = z.infer<typeof WireSealPart>;

export const SecondaryLockPart = z.strictObject({ ...partFields, kind: z.literal('secondary-lock') });

export const StrainReliefPart = z.strictObject({
  ...partFields,
  kind: z.literal('strain-relief'),
  bundleMinMm: positive.optional(),
  bundleMaxMm: positive.optional(),
});

/** Protects a run; ordered by the metre, except tape, which is ordered by the roll length too. */
export const CoveringPart = z.strictObject({
  ...partFields,
  kind: z.literal('covering'),
  form: z.enum(['tube', 'sleeve', 'heat-shrink', 'tape', 'braid', 'conduit']),
  innerMinMm: positive.optional(),
  innerMaxMm: positive.optional(),
  wallMm: positive.optional(),
  tapeWidthMm: positive.optional(),
  tapeOverlap: z.number().min(0).max(0.9).optional(),
  takeUp: notNegative.optional(),
});

export type CoveringPart = z.infer<typeof CoveringPart>;

export const GrommetPart = z.strictObject({
  ...partFields,
  kind: z.literal('grommet'),
  boreMinMm: positive.optional(),
  boreMaxMm: positive.optional(),
});

/** Holds a bundle to a wall of the equipment. */
export const ClampPart = z.strictObject({
  ...partFields,
  kind: z.literal('clamp'),
  bundleMinMm: positive.optional(),
  bundleMaxMm: positive.optional(),
  /** Hole or stud that it is fastened at. */
  holeMm: positive.optional(),
});

export const TiePart = z.strictObject({
  ...partFields,
  kind: z.literal('tie'),
  bundleMinMm: positive.optional(),
  bundleMaxMm: positive.optional(),
});

export const LabelPart = z.strictObject({
  ...partFields,
  kind: z.literal('label'),
  widthMm: positive.optional(),
  heightMm: positive.optional(),
  bundleMaxMm: positive.optional(),
});

export const FusePart = z.strictObject({
  ...partFields,
  kind: z.literal('fuse'),
  ratedA: positive.optional(),
  voltageMaxV: positive.optional(),
  resistanceMohm: notNegative.optional(),
  meltingA2s: positive.optional(),
  /** Total I2t until the fuse has cleared, at its rated voltage. */
  clearingA2s: positive.optional(),
});

export const ToolPart = z.strictObject({
  ...partFields,
  kind: z.literal('tool'),
  form: z.enum(['hand', 'press', 'extraction', 'insertion', 'stripper']).optional(),
  /** Last day on which its calibration counts. */
  calibratedUntil: z.iso.date().optional(),
  /** Dies in hand, each with its revision as it is marked: "D-12 B". */
  dies: z.array(z.string().min(1)).optional(),
});
