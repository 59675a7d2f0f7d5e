import type { Box, Point } from '../../../base/point';
import type { DrawnPath } from '../../../calc/curve/drawn-path';
import type { ConnectorUse, CoveringUse, Harness, ResolvedWire, SegmentUse } from '../../harness';
import type { Part } from '../../../model/parts/part';
import type { Dimension, Node, Segment } from '../../../model/topology';
import type { Splice } from '../../../model/wire';

/** A node, with the direction in which its name has room. */
export interface BoardNode {
  readonly id: string;
  readonly node: Node;
  readonly at: Point;
  /** Radians; away from the segments and connectors that meet here. */
  readonly nameAngle: number;
  /** Where a second name has room. */
  readonly spareAngle: number;
}

/** A segment as it lies, true to scale. */
export interface BoardSegment extends Box {
  readonly id: string;
  readonly segment: Segment;
  readonly use: SegmentUse | undefined;
  readonly path: DrawnPath;
  /** The path as straight runs, for drawing. */
  readonly points: readonly Point[];
  /** Length of its drawn line, mm. */
  readonly drawnMm: number;
  /** Typed length, else the drawn one. */
  readonly lengthMm: number;
  /** Diameter of its bundle without coverings, mm. */
  readonly widthMm: number;
  /** False where the diameter of a wire is not stated and the width is a guess from the number of wires. */
  readonly widthKnown: boolean;
  /** With all that lies on it, mm. */
  readonly outsideMm: number;
}

/** What of a covering lies on one segment. */
export interface BoardCovering {
  readonly id: string;
  readonly use: CoveringUse;
  readonly segment: string;
  readonly points: readonly Point[];
  readonly outsideMm: number;
  /** Where its name stands; only on the longest of its pieces. */
  readonly named: boolean;
  /** Which of its ends lie here. */
  readonly ends: readonly { readonly end: 'from' | 'to'; readonly at: Point; readonly angle: number }[];
}

/** A connector at its node: its body starts there and reaches into the direction in which it mates. */
export interface BoardConnector {
  readonly id: string;
  readonly use: ConnectorUse;
  readonly node: string;
  /** Middle of the rear face. */
  readonly at: Point;
  /** Direction of mating, radians. */
  readonly angle: number;
  readonly alongMm: number;
  readonly acrossMm: number;
  /** False where the record states no body and the outline is made from ways and pitch. */
  readonly sizeKnown: boolean;
}

/** A tie, clamp, grommet or label at its place on a segment. */
export interface BoardThing {
  readonly id: string;
  readonly kind: 'tie' | 'clamp' | 'grommet' | 'label';
  readonly name: string;
  readonly part: Part | undefined;
  readonly segment: string;
  /** Along the segment, mm. */
  readonly atMm: number;
  readonly at: Point;
  readonly angle: number;
  /** What it goes round, mm. */
  readonly aroundMm: number;
  /** False for a label that hangs on a connector: it moves with that. */
  readonly slides: boolean;
}

/** The open end of a wire at a node. */
export interface BoardFreeEnd {
  readonly wire: ResolvedWire;
  readonly end: 0 | 1;
  readonly node: string;
  readonly at: Point;
  readonly angle: number;
  readonly text: string;
}

export interface BoardSplice {
  readonly id: string;
  readonly splice: Splice;
  readonly at: Point;
  readonly angle: number;
  readonly nameAngle: number;
  /** Thickest run at its node, mm. */
  readonly clearMm: number;
}

/** A measured stretch of a dimension, laid out. */
export interface BoardMeasure {
  readonly from: Point;
  readonly to: Point;
  /** Along the harness, mm; null where no way joins the two datums. */
  readonly valueMm: number | null;
  /** Not as straight as it is drawn. */
  readonly bent: boolean;
}

export interface BoardDimension extends Box {
  readonly id: string;
  readonly dimension: Dimension;
  /** Direction in which its offset grows, a unit. */
  readonly away: Point;
  /** Each datum with the point of its extension line at the dimension line. */
  readonly datums: readonly { readonly at: Point; readonly foot: Point }[];
  readonly measures: readonly BoardMeasure[];
}

/** The formboard at true scale, ready to be drawn and hit. Made from the harness, never changed. */
export interface BoardScene {
  readonly harness: Harness;
  readonly nodes: readonly BoardNode[];
  readonly nodeById: ReadonlyMap<string, BoardNode>;
  readonly segments: readonly BoardSegment[];
  readonly segmentById: ReadonlyMap<string, BoardSegment>;
  readonly segmentsAt: ReadonlyMap<string, readonly BoardSegment[]>;
  readonly connectors: readonly BoardConnector[];
  readonly connectorById: ReadonlyMap<string, BoardConnector>;
  readonly splices: readonly BoardSplice[];
  readonly coverings: readonly BoardCovering[];
  readonly things: readonly BoardThing[];
  readonly freeEnds: readonly BoardFreeEnd[];
  readonly dimensions: readonly BoardDimension[];
}
