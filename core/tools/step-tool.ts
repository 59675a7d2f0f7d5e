import { stepBoxSelect, type BoxSelect } from './box-select';
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
  'select', 'hand', 'wire', 'splice', 'board', 'panel', 'device', 'node', 'segment',
] as const; // prettier-ignore
export type ToolId = (typeof TOOL_IDS)[number];

/** A gesture under way; null between gestures. */
export type Gesture = BoxSelect | DrawSegment | DrawWire | Move | Pan | PlaceEquipment | Reconnect;

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
};

type StepOf<G> = (gesture: G, input: Input, facts: Facts) => Step<G | null>;

/** How each gesture goes on. */
const STEPS: { readonly [K in Gesture['is']]: StepOf<Extract<Gesture, { is: K }>> } = {
  'box-select': stepBoxSelect,
  'draw-segment': stepDrawSegment,
  'draw-wire': stepDrawWire,
  move: stepMove,
  pan: stepPan,
  'place-equipment': stepPlaceEquipment,
  reconnect: stepReconnect,
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
