import type { Box, Point } from '../base/point';
import type { Call } from '../commands/dispatch';
import type { Project } from '../model/project';

/** What lies under the pointer, found by whoever draws. */
export type Target =
  | { readonly on: 'sheet'; readonly area?: string | undefined }
  | { readonly on: 'cavity'; readonly connector: string; readonly cavity: string }
  | {
      readonly on: 'connector' | 'wire' | 'splice' | 'equipment' | 'mate' | 'node' | 'segment';
      readonly id: string;
    }
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
}

export type Input = PointerEventInput | { readonly on: 'cancel' };

/** What a tool may know. All of it is read, nothing is written. */
export interface Facts {
  readonly project: Project;
  readonly selection: ReadonlySet<string>;
  readonly snap: boolean;
  /** How far a press may wander and still be a click, mm. */
  readonly slopMm: number;
  /** Selection keys of the objects inside a box on the sheet. */
  inBox(box: Box): readonly string[];
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
    default:
      return target.id;
  }
}
