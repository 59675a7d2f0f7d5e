import { byId } from '../base/by-id';
import type { Connector, Contact, Mate, CavityEntry } from '../model/connector';
import type { Fuse, Signal } from '../model/electrical';
import type { Equipment } from '../model/equipment';
import type { WireSealPart } from '../model/parts/accessories';
import type { ContactPart } from '../model/parts/contact';
import type { MatingHalf, Part } from '../model/parts/part';
import type { Conductor } from '../model/parts/wire';
import type { Project } from '../model/project';
import type { Covering, Node, Segment, Tie } from '../model/topology';
import type { Group, Splice, Wire, WireEnd } from '../model/wire';
import type { MateMap } from './mate-map';
import type { Route, Router } from './route';
import type { WireLength } from './wire-length';

/** A connector with what it refers to. `part` is absent when the record is not that of a mating half. */
export interface ResolvedConnector {
  readonly connector: Connector;
  readonly part: MatingHalf | undefined;
  readonly equipment: Equipment | undefined;
  readonly accessories: readonly { readonly part: Part | undefined; readonly quantity: number }[];
}

/** One end of a wire with what it refers to. */
export interface ResolvedEnd {
  readonly end: WireEnd;
  readonly connector: ResolvedConnector | undefined;
  readonly contact: Contact | undefined;
  readonly contactPart: ContactPart | undefined;
  /** The seal on the wire, where the end names one. */
  readonly seal: WireSealPart | undefined;
  readonly splice: Splice | undefined;
  readonly node: string | undefined;
}

/** A wire with what it refers to, its way and its length. */
export interface ResolvedWire {
  readonly wire: Wire;
  /** The wire or cable record. */
  readonly part: Part | undefined;
  /** What is known of the conductor: from the wire, or from the core of the cable. */
  readonly conductor: Conductor | undefined;
  readonly signal: Signal | undefined;
  readonly group: Group | undefined;
  readonly from: ResolvedEnd;
  readonly to: ResolvedEnd;
  readonly route: Route;
  /** The segments of the route; none without a route. */
  readonly segments: readonly Segment[];
  readonly length: WireLength;
}

/** A wire in a cavity: which of its ends is there. */
export interface EndInCavity {
  readonly wire: ResolvedWire;
  readonly index: 0 | 1;
  readonly end: ResolvedEnd;
}

export type CavityState = 'wired' | NonNullable<CavityEntry['state']> | 'undeclared';

/** Everything about one cavity of one placed connector. */
export interface CavityUse {
  readonly connector: ResolvedConnector;
  readonly cavity: string;
  /** False for a cavity that something names but the part does not have. */
  readonly exists: boolean;
  readonly state: CavityState;
  readonly entry: CavityEntry | undefined;
  readonly signal: Signal | undefined;
  readonly ends: readonly EndInCavity[];
  /** Contact without a wire. */
  readonly spare: ContactPart | undefined;
  readonly plug: Part | undefined;
}

/** A connector with all its cavities, in the order of the numbers, then those that do not exist. */
export interface ConnectorUse {
  readonly resolved: ResolvedConnector;
  readonly cavities: readonly CavityUse[];
  readonly mates: readonly Mate[];
}

export interface ResolvedMate {
  readonly mate: Mate;
  readonly a: ConnectorUse;
  readonly b: ConnectorUse;
  readonly map: MateMap;
}

/** A point that a net touches. */
export interface NetPoint {
  readonly connector: ResolvedConnector;
  readonly cavity: string;
  /** Signal that the interface declares at this position. */
  readonly declared: Signal | undefined;
}

/** All that is connected through wires, mated contacts and splices. */
export interface Net {
  /** Smallest point of the net: the same net keeps its key while that point stays. */
  readonly key: string;
  readonly points: readonly NetPoint[];
  readonly wires: readonly ResolvedWire[];
  readonly splices: readonly Splice[];
  /** Different signals that its points and wires name. */
  readonly signals: readonly Signal[];
}

/** What of a segment a covering lies on, mm from its start. */
export interface CoveringUse {
  readonly covering: Covering;
  readonly part: Extract<Part, { kind: 'covering' }> | undefined;
  readonly fromMm: number;
  readonly toMm: number;
}

export interface TieUse {
  readonly tie: Tie;
  readonly part: Extract<Part, { kind: 'tie' }> | undefined;
  readonly atMm: number;
}

/** A segment with what runs through it and what lies on it. */
export interface SegmentUse {
  readonly segment: Segment;
  readonly lengthMm: number;
  readonly fromNode: Node | undefined;
  readonly toNode: Node | undefined;
  /** Connectors that sit on the node at either end. */
  readonly fromConnectors: readonly ResolvedConnector[];
  readonly toConnectors: readonly ResolvedConnector[];
  readonly wires: readonly ResolvedWire[];
  /** Of the circles of its cross-section, see `bundleMembers`; undefined where one is not known. */
  readonly diametersMm: readonly (number | undefined)[];
  /** By layer, the innermost first. */
  readonly coverings: readonly CoveringUse[];
  /** Along the segment. */
  readonly ties: readonly TieUse[];
}

/**
 * Signals whose currents meet: all that return on one signal, with their return; or one signal that states no return, by
 * itself. It holds everything that their circuit is read from, so a supply that keeps its identity has the same solution.
 */
export interface Supply {
  /** Id of the return signal, or of the signal that stands alone. */
  readonly key: string;
  readonly feeds: readonly Signal[];
  readonly returnSignal: Signal | undefined;
  readonly nets: readonly Net[];
  /** Wires of the nets, each once. */
  readonly wires: readonly ResolvedWire[];
  /** Connectors that the nets touch, with all their cavities. */
  readonly uses: readonly ConnectorUse[];
  readonly mates: readonly ResolvedMate[];
  readonly fuses: readonly Fuse[];
  /** Records of the fuses and splices. */
  readonly parts: readonly Part[];
}

/**
 * The project with every reference resolved. Derived, never stored. An object that an edit did not touch keeps
 * its identity from one harness to the next, so whoever remembers results by identity need not compute again.
 */
export interface Harness {
  readonly project: Project;
  readonly parts: ReadonlyMap<string, Part>;
  readonly connectors: readonly ConnectorUse[];
  readonly connectorById: ReadonlyMap<string, ConnectorUse>;
  readonly wires: readonly ResolvedWire[];
  readonly wireById: ReadonlyMap<string, ResolvedWire>;
  readonly mates: readonly ResolvedMate[];
  readonly mateById: ReadonlyMap<string, ResolvedMate>;
  readonly nets: readonly Net[];
  readonly segments: readonly SegmentUse[];
  /** Worked out when first asked for. */
  readonly supplies: readonly Supply[];
  readonly router: Router;
}

/** The part of that id in the project. */
export const partIn = (project: Project, id: string | undefined): Part | undefined =>
  id === undefined ? undefined : byId(project.parts).get(id);
