import type { Box, Point } from '../base/point';
import type { Call } from '../commands/dispatch';
import type { Router } from '../derive/route';
import type { Project } from '../model/project';

/** What lies under the pointer, found by whoever draws. */
export type Target =
  | { readonly on: 'sheet'; readonly area?: string | undefined }
  | { readonly on: 'cavity'; readonly connector: string; readonly cavity: string }
  | {
      readonly on: 'connector' | 'wire' | 'splice' | 'equipment' | 'mate' | 'node';
      readonly id: string;
    }
  /**
   * A run of the formboard; `atMm` is the place along it, `wire` the one whose lane is drawn there. A click on a run that is
   * selected already means what lies `above` it.
   */
  | {
      readonly on: 'segment';
      readonly id: string;
      readonly atMm?: number | undefined;
      readonly wire?: string | undefined;
      readonly above?: string | undefined;
    }
  /** A bend of a segment, counted from its start. */
  | { readonly on: 'via'; readonly id: string; readonly index: number }
  /** Something that can be slid along the runs. */
  | { readonly on: 'tie' | 'fixing' | 'label'; readonly id: string }
  | {
      readonly on: 'covering';
      readonly id: string;
      readonly end: 'from' | 'to' | null;
      readonly atMm?: number;
    }
  /** A connector at its node, which can be turned there. */
  | { readonly on: 'turning'; readonly id: string }
  | { readonly on: 'dimension'; readonly id: string }
  /** The handle by which everything beyond a node is turned about it. */
  | { readonly on: 'branch-handle'; readonly id: string }
  /** Something that can be selected on this sheet, but not moved. */
  | { readonly on: 'pick'; readonly id: string }
  | { readonly on: 'wire-end'; readonly wire: string; readonly end: 0 | 1 }
  | { readonly on: 'badge'; readonly findings: readonly string[]; readonly key: string };

/** A pointer event in sheet millimetres; `screen` is the same place in pixels, for panning. */
export interface PointerEventInput {
  readonly on: 'down' | 'move' | 'up';
  readonly at: Point;
  readonly screen: Point;
  readonly target: Target;
  /** Snapping is off while held. */
  readonly alt: boolean;
  /** Adds to the selection. */
  readonly add: boolean;
  /** Held for free angles. */
  readonly shift?: boolean | undefined;
}

export type Input = PointerEventInput | { readonly on: 'cancel' };

/** A place on a run of the formboard. */
export interface BoardPlace {
  readonly segment: string;
  /** Along the segment, mm. */
  readonly atMm: number;
  readonly at: Point;
  readonly angle: number;
}

/** What tools of the formboard may know beyond the project. */
export interface BoardFacts {
  /** The place on a segment nearest to a point; null beyond `reachMm`. */
  placeNear(at: Point, reachMm: number): BoardPlace | null;
  /** Length of a segment as routes count it, mm. */
  lengthMmOf(segment: string): number;
  /** Direction in which the offset of a dimension grows, a unit. */
  awayOf(dimension: string): Point | undefined;
  /** Where a node, or a connector at its node, stands. */
  placeOf(id: string): Point | undefined;
  readonly router: Router;
}

/** What a tool may know. All of it is read, nothing is written. */
export interface Facts {
  readonly project: Project;
  readonly selection: ReadonlySet<string>;
  readonly snap: boolean;
  /** How far a press may wander and still be a click, mm. */
  readonly slopMm: number;
  /** Selection keys of the objects inside a box on the sheet. */
  inBox(box: Box): readonly string[];
  /** Only on the formboard. */
  readonly board?: BoardFacts | undefined;
}

/** A question put to the user after a refusal: what speaks against it, and what to do all the same. */
export interface Question {
  readonly at: Point;
  readonly reason: string;
  readonly anyway: { readonly label: string; readonly call: Call };
}

/** Outcome of one input: the next state and at most one command. */
export interface Step<State> {
  readonly next: State;
  readonly dispatch?: Call;
  readonly select?: { readonly keys: readonly string[]; readonly add: boolean };
  readonly ask?: Question;
  /** The sheet moves by so many pixels. */
  readonly pan?: Point;
  /** A click on a badge opens its findings. */
  readonly open?: readonly string[];
  /** Why nothing was done. */
  readonly refuse?: { readonly at: Point; readonly reason: string };
}

/** Key under which an object is selected: its id, and the cavity where one is meant. */
export function keyOfTarget(target: Target): string | null {
  switch (target.on) {
    case 'sheet':
      return target.area ?? null;
    case 'cavity':
      return `${target.connector}:${target.cavity}`;
    case 'wire-end':
      return target.wire;
    case 'badge':
      return target.key;
    case 'segment':
      return target.wire ?? target.above ?? target.id;
    default:
      return target.id;
  }
}
