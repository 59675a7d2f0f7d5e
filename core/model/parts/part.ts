import { z } from 'zod';
import {
  CavityPlugPart,
  ClampPart,
  CoveringPart,
  FusePart,
  GrommetPart,
  LabelPart,
  SecondaryLockPart,
  SplicePart,
  StrainReliefPart,
  TerminalPart,
  TiePart,
  ToolPart,
  WireSealPart,
} from './accessories';
import { ContactPart } from './contact';
import { HeaderPart } from './header';
import { HousingPart } from './housing';
import { CablePart, WirePart } from './wire';

/** A part record, as a catalogue holds it and as a project embeds it. */
export const Part = z.discriminatedUnion('kind', [
  HousingPart,
  HeaderPart,
  ContactPart,
  WirePart,
  CablePart,
  SplicePart,
  TerminalPart,
  CavityPlugPart,
  WireSealPart,
  SecondaryLockPart,
  StrainReliefPart,
  CoveringPart,
  GrommetPart,
  ClampPart,
  TiePart,
  LabelPart,
  FusePart,
  ToolPart,
]);
export type Part = z.infer<typeof Part>;
export type PartKind = Part['kind'];

/** A part that is placed as a connector: one half of a mating pair. */
export type MatingHalf = HousingPart | HeaderPart;

export const isMatingHalf = (part: Part | undefined): part is MatingHalf =>
  part !== undefined && (part.kind === 'housing' || part.kind === 'header');

/** The part of that id if it is of that kind. */
export function partOfKind<K extends PartKind>(
  part: Part | undefined,
  kind: K,
): Extract<Part, { kind: K }> | undefined {
  return part?.kind === kind ? (part as Extract<Part, { kind: K }>) : undefined;
}

export const PART_KIND_NAMES: Readonly<Record<PartKind, string>> = {
  housing: 'housing',
  header: 'header',
  contact: 'contact',
  wire: 'wire',
  cable: 'cable',
  splice: 'splice',
  terminal: 'terminal',
  'cavity-plug': 'cavity plug',
  'wire-seal': 'wire seal',
  'secondary-lock': 'secondary lock',
  'strain-relief': 'strain relief',
  covering: 'covering',
  grommet: 'grommet',
  clamp: 'clamp',
  tie: 'tie',
  label: 'label',
  fuse: 'fuse',
  tool: 'tool',
};
