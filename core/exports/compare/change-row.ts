import type { Collection } from '../../model/project';
import type { ObjectRef } from '../../rules/finding';

/** Parts of a project in which changes are told, in this order. */
export const AREAS = [
  'Title block', 'Revisions', 'Limits', 'Project', 'Connectors', 'Contacts', 'Wires', 'Mates', 'Fuses', 'Signals', 'Equipment',
  'Topology', 'Labels', 'Part records', 'Cut lengths', 'Nets', 'Parts list', 'Findings', 'Decisions', 'Documents',
] as const; // prettier-ignore
export type Area = (typeof AREAS)[number];

/** One difference between two states of a project, in words. */
export interface ChangeRow {
  readonly area: Area;
  readonly what: 'added' | 'removed' | 'changed';
  /** "wire W2", "net PWR". */
  readonly subject: string;
  /** What of it; empty where all of it came or went. */
  readonly field: string;
  readonly before: string;
  readonly after: string;
  /** Objects of the later state that it speaks of. */
  readonly objects: readonly ObjectRef[];
  /** Objects that are in the earlier state only. */
  readonly gone: readonly ObjectRef[];
}

export const AREA_OF: Readonly<Record<Collection, Area>> = {
  parts: 'Part records',
  equipment: 'Equipment',
  signals: 'Signals',
  connectors: 'Connectors',
  contacts: 'Contacts',
  cables: 'Wires',
  wires: 'Wires',
  groups: 'Wires',
  splices: 'Wires',
  mates: 'Mates',
  fuses: 'Fuses',
  nodes: 'Topology',
  segments: 'Topology',
  coverings: 'Topology',
  ties: 'Topology',
  fixings: 'Topology',
  labels: 'Labels',
  dimensions: 'Topology',
  decisions: 'Decisions',
};

/** How an object of a collection is referred to; decisions are no objects of the drawing. */
export const REF_OF: Readonly<Record<Exclude<Collection, 'decisions'>, ObjectRef['type']>> = {
  parts: 'part',
  equipment: 'equipment',
  signals: 'signal',
  connectors: 'connector',
  contacts: 'contact',
  cables: 'cable',
  wires: 'wire',
  groups: 'group',
  splices: 'splice',
  mates: 'mate',
  fuses: 'fuse',
  nodes: 'node',
  segments: 'segment',
  coverings: 'covering',
  ties: 'tie',
  fixings: 'fixing',
  labels: 'label',
  dimensions: 'dimension',
};
