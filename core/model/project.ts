import { z } from 'zod';
import { Connector, Contact, Mate } from './connector';
import { Decision } from './decision';
import { Fuse, Signal } from './electrical';
import { Equipment } from './equipment';
import { Id } from './ids';
import { LimitSet } from './limit-set';
import { Part } from './parts/part';
import { Purchasing } from './purchasing';
import { Revision, TitleBlock } from './title-block';
import { Covering, Dimension, Fixing, Label, Node, Segment, Tie } from './topology';
import { Cable, Group, Splice, Wire } from './wire';

export const PROJECT_FORMAT = 'latchwork-project';
export const PROJECT_FORMAT_VERSION = 2;

/**
 * A harness with everything that is needed to check, order and build it. Objects stand in arrays, in the order
 * in which they were made, and name each other by id. The order of the keys here is the order in the file.
 */
export const Project = z.strictObject({
  format: z.literal(PROJECT_FORMAT),
  formatVersion: z.literal(PROJECT_FORMAT_VERSION),
  id: Id,
  titleBlock: TitleBlock,
  notes: z.array(z.string()),
  /** Regulated use: critical findings need two named approvers. */
  regulated: z.boolean(),
  revisions: z.array(Revision),
  limitSet: LimitSet,
  buildQuantities: z.array(z.int().positive()),
  /** What an order needs beyond the harnesses themselves; absent: common practice, see PURCHASING_DEFAULTS. */
  purchasing: Purchasing.optional(),
  /** How ends are marked, in the methods of IEC 62491; absent means not settled. */
  labelMethod: z.enum(['identification', 'local-end', 'remote-end', 'both-ends', 'signal']).optional(),
  parts: z.array(Part),
  equipment: z.array(Equipment),
  signals: z.array(Signal),
  connectors: z.array(Connector),
  contacts: z.array(Contact),
  cables: z.array(Cable),
  wires: z.array(Wire),
  groups: z.array(Group),
  splices: z.array(Splice),
  mates: z.array(Mate),
  fuses: z.array(Fuse),
  nodes: z.array(Node),
  segments: z.array(Segment),
  coverings: z.array(Covering),
  ties: z.array(Tie),
  fixings: z.array(Fixing),
  labels: z.array(Label),
  dimensions: z.array(Dimension),
  decisions: z.array(Decision),
});
export type Project = z.infer<typeof Project>;

/** Names of the arrays that hold objects with an id. */
export const COLLECTIONS = [
  'parts', 'equipment', 'signals', 'connectors', 'contacts', 'cables', 'wires', 'groups', 'splices', 'mates',
  'fuses', 'nodes', 'segments', 'coverings', 'ties', 'fixings', 'labels', 'dimensions', 'decisions',
] as const; // prettier-ignore
export type Collection = (typeof COLLECTIONS)[number];
