import { stepBoxSelect, type BoxSelect } from './box-select';
import { stepDragBranch, type DragBranch } from './formboard/drag-branch';
import { stepDragDimension, type DragDimension } from './formboard/drag-dimension';
import { stepDragVia, type DragVia } from './formboard/drag-via';
import {
  finishDimension,
  startDrawDimension,
  stepDrawDimension,
  type DrawDimension,
} from './formboard/draw-dimension';
import { stepMoveNodes, type MoveNodes } from './formboard/move-nodes';
import { finishPinPath, startPinPath, stepPinPath, type PinPath } from './formboard/pin-path';
import { stepSlide, type Slide } from './formboard/slide';
import { stepTurnBranch, type TurnBranch } from './formboard/turn-branch';
import { stepTurnConnector, type TurnConnector } from './formboard/turn-connector';
import { startDrawSegment, stepDrawSegment, type DrawSegment } from './draw-segment';
import { startDrawWire, stepDrawWire, type DrawWire } from './draw-wire';
import { stepMove, type Move } from './move';
import { startPan, stepPan, type Pan } from './pan';
import { startPlaceEquipment, stepPlaceEquipment, type PlaceEquipment } from './place-equipment';
import { placeNode } from './place-node';
import { placeSplice } from './place-splice';
import { stepReconnect, type Reconnect } from './reconnect';
import { startSelect } from './select';
import type { Facts, Input, PointerEventInput, Step } from './tool';

/** What the pointer does on the sheet. */
export const TOOL_IDS = [
  'select', 'hand', 'wire', 'splice', 'board', 'panel', 'device', 'node', 'segment', 'dimension', 'baseline', 'path',
] as const; // prettier-ignore
export type ToolId = (typeof TOOL_IDS)[number];

/** A gesture under way; null between gestures. */
export type Gesture =
  | BoxSelect
  | DragBranch
  | DragDimension
  | DragVia
  | DrawDimension
  | DrawSegment
  | DrawWire
  | Move
  | MoveNodes
  | Pan
  | PinPath
  | PlaceEquipment
  | Reconnect
  | Slide
  | TurnBranch
  | TurnConnector;

type Start = (input: PointerEventInput, facts: Facts) => Step<Gesture | null>;

/** What a press starts under each tool. */
const STARTS: Readonly<Record<ToolId, Start>> = {
  select: startSelect,
  hand: (input) => ({ next: startPan(input) }),
  wire: (input) => ({ next: startDrawWire(input) }),
  splice: placeSplice,
  board: (input, facts) => ({ next: startPlaceEquipment('board', input, facts) }),
  panel: (input, facts) => ({ next: startPlaceEquipment('panel', input, facts) }),
  device: (input, facts) => ({ next: startPlaceEquipment('device', input, facts) }),
  node: placeNode,
  segment: (input) => ({ next: startDrawSegment(input) }),
  dimension: (input, facts) => startDrawDimension(input, facts, 'chain'),
  baseline: (input, facts) => startDrawDimension(input, facts, 'baseline'),
  path: startPinPath,
};

type StepOf<G> = (gesture: G, input: Input, facts: Facts) => Step<G | null>;

/** How each gesture goes on. */
const STEPS: { readonly [K in Gesture['is']]: StepOf<Extract<Gesture, { is: K }>> } = {
  'box-select': stepBoxSelect,
  'drag-branch': stepDragBranch,
  'drag-dimension': stepDragDimension,
  'drag-via': stepDragVia,
  'draw-dimension': stepDrawDimension,
  'draw-segment': stepDrawSegment,
  'draw-wire': stepDrawWire,
  move: stepMove,
  'move-nodes': stepMoveNodes,
  pan: stepPan,
  'pin-path': stepPinPath,
  'place-equipment': stepPlaceEquipment,
  reconnect: stepReconnect,
  slide: stepSlide,
  'turn-branch': stepTurnBranch,
  'turn-connector': stepTurnConnector,
};

/** One input. Between gestures only a press does anything. */
export function stepTool(
  tool: ToolId,
  state: Gesture | null,
  input: Input,
  facts: Facts,
): Step<Gesture | null> {
  if (!state) return input.on === 'down' ? STARTS[tool](input, facts) : { next: null };
  // The table pairs each gesture with the step of its own kind.
  return (STEPS[state.is] as StepOf<Gesture>)(state, input, facts);
}

/** Enter: ends a gesture of several clicks. Null for one that ends by itself. */
export function finishTool(gesture: Gesture): Step<null> | null {
  if (gesture.is === 'draw-dimension') return finishDimension(gesture);
  return gesture.is === 'pin-path' ? finishPinPath(gesture) : null;
}

/** Whether a gesture has taken hold of its object and moves it. */
export const isMoving = (gesture: Gesture | null): boolean =>
  gesture !== null && 'moving' in gesture && gesture.moving;
