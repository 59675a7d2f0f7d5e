import { createStore } from 'zustand/vanilla';
import { byId } from '@latchwork/core/base/by-id';
import type { Point } from '@latchwork/core/base/point';
import type { Call } from '@latchwork/core/commands/dispatch';
import type { Part } from '@latchwork/core/model/parts/part';
import { dropPart } from '@latchwork/core/tools/drop-part';
import { startKeyWire, stepKeyWire, type KeyWire, type KeyWireInput } from '@latchwork/core/tools/key-wire';
import { finishTool, isMoving, stepTool, type Gesture, type ToolId } from '@latchwork/core/tools/step-tool';
import type { BoardFacts, Facts, Question, Step, Target } from '@latchwork/core/tools/tool';
import type { AppStore } from '../app/store';
import type { Camera } from '../app/view';
import { toSheet } from './camera';

/** A pointer event as the sheet sees it: pixels from its top left corner. */
export interface ScreenInput {
  readonly on: 'down' | 'move' | 'up';
  readonly screen: Point;
  readonly alt: boolean;
  readonly add: boolean;
  readonly shift?: boolean;
  /** Holds the sheet whatever the tool: the middle button, or the space bar. */
  readonly hold?: boolean;
}

export interface InteractionState {
  readonly gesture: Gesture | null;
  /** Where the pointer is and what lies under it; null when it is elsewhere. */
  readonly hover: { readonly target: Target; readonly at: Point; readonly screen: Point } | null;
  readonly keyWire: KeyWire | null;
  readonly question: Question | null;
  /** Why a gesture came to nothing. */
  readonly note: { readonly at: Point; readonly reason: string } | null;
  /** Ids that are on the move and so are not drawn at their place. */
  readonly lifted: ReadonlySet<string>;
}

/** What the interaction asks of the sheet it works on. */
export interface SheetAccess {
  /** The tools that this sheet has; under any other one it behaves as with `select`. */
  readonly tools: readonly ToolId[];
  camera(): Camera;
  panBy(x: number, y: number): void;
  hit(at: Point): Target;
  keysInBox: Facts['inBox'];
  /** Why a part has no place on this sheet at all, or null. */
  unsuited?(part: Part): string | null;
  /** The objects that a gesture takes along: what moves with its wires, mates, connectors. */
  liftedBy(gesture: Gesture): ReadonlySet<string>;
  /** What tools of the formboard ask. */
  readonly board?: BoardFacts;
}

const NOTHING: ReadonlySet<string> = new Set();
/** How far a press may wander and still be a click, px. */
const SLOP_PX = 3;

export type Interaction = ReturnType<typeof createInteraction>;

/** Pointer and keys on a sheet: turns them into steps of the tools, and the steps into commands and selection. */
export function createInteraction(store: AppStore, sheet: SheetAccess) {
  const state = createStore<InteractionState>()(() => ({
    gesture: null,
    hover: null,
    keyWire: null,
    question: null,
    note: null,
    lifted: NOTHING,
  }));

  const facts = (): Facts => {
    const { history, view } = store.getState();
    return {
      project: history.project,
      selection: view.selection,
      snap: view.snap,
      slopMm: SLOP_PX / sheet.camera().pxPerMm,
      inBox: sheet.keysInBox,
      board: sheet.board,
    };
  };

  const carryOut = (step: Omit<Step<unknown>, 'next'>): void => {
    const app = store.getState();
    if (step.pan) sheet.panBy(step.pan.x, step.pan.y);
    if (step.select) app.select(step.select.keys, step.select.add);
    if (step.dispatch) app.dispatch(step.dispatch);
    if (step.open) app.setView({ page: 'findings', finding: step.open[0] ?? null });
    if (step.ask) state.setState({ question: step.ask });
    if (step.refuse) state.setState({ note: step.refuse });
  };

  const advance = (gesture: Gesture | null): void => {
    const was = state.getState();
    if (gesture === was.gesture) return;
    const lifted =
      !gesture || !isMoving(gesture)
        ? NOTHING
        : was.lifted !== NOTHING
          ? was.lifted
          : sheet.liftedBy(gesture);
    state.setState({ gesture, lifted });
  };

  return {
    state,
    facts,
    /** One pointer event. Answers whether a gesture is under way. */
    pointer(input: ScreenInput): boolean {
      const { gesture } = state.getState();
      const { view } = store.getState();
      const at = toSheet(sheet.camera(), input.screen);
      const panning = gesture?.is === 'pan';
      const target: Target = panning ? { on: 'sheet' } : sheet.hit(at);
      if (input.on === 'down') {
        state.setState({ question: null, note: null, keyWire: null });
        if (view.placing && !input.hold) {
          this.drop(view.placing, input.screen, input.add);
          return false;
        }
      }
      const tool: ToolId = input.hold ? 'hand' : sheet.tools.includes(view.tool) ? view.tool : 'select';
      const { on, screen, alt, add, shift } = input;
      const step = stepTool(tool, gesture, { on, at, screen, target, alt, add, shift }, facts());
      // What the step writes and the end of the gesture become visible in one frame.
      carryOut(step);
      advance(step.next);
      if (!panning) state.setState({ hover: { target, at, screen } });
      if (step.dispatch && ONE_SHOT.has(view.tool)) store.getState().setView({ tool: 'select' });
      return step.next !== null;
    },
    leave: (): void => state.setState({ hover: null }),
    /** Escape: ends what is under way, or else lets go of tool, part or selection. Answers whether there was anything. */
    cancel(): boolean {
      const { gesture, question, note, keyWire } = state.getState();
      const { view, setView, select } = store.getState();
      if (gesture || question || note || keyWire) {
        if (gesture) carryOut(stepTool(view.tool, gesture, { on: 'cancel' }, facts()));
        state.setState({ gesture: null, lifted: NOTHING, question: null, note: null, keyWire: null });
      } else if (view.placing !== null) setView({ placing: null });
      else if (view.tool !== 'select') setView({ tool: 'select' });
      else if (view.selection.size > 0) {
        const outer = [...view.selection]
          .filter((k) => k.includes(':'))
          .map((k) => k.split(':')[0] as string);
        select(outer);
      } else return false;
      return true;
    },
    /** Enter: ends a gesture of several clicks. Answers whether there was one. */
    finish(): boolean {
      const { gesture } = state.getState();
      const step = gesture && finishTool(gesture);
      if (!step) return false;
      carryOut(step);
      advance(null);
      if (step.dispatch) store.getState().setView({ tool: 'select' });
      return true;
    },
    /** A part let go over the sheet, or placed by a click; it stays in hand while `again` is held. */
    drop(id: string, screen: Point, again: boolean): void {
      const { history, catalogue, setView, view } = store.getState();
      const part: Part | undefined = byId(history.project.parts).get(id) ?? byId(catalogue).get(id);
      if (view.placing !== null && !again) setView({ placing: null });
      if (!part) return;
      const at = toSheet(sheet.camera(), screen);
      const unsuited = sheet.unsuited?.(part) ?? null;
      const drop = unsuited === null ? dropPart(part, at, sheet.hit(at), facts()) : { refuse: unsuited };
      carryOut('call' in drop ? { dispatch: drop.call } : { refuse: { at, reason: drop.refuse } });
    },
    answer(call: Call | null): void {
      state.setState({ question: null });
      if (call) store.getState().dispatch(call);
    },
    /** Enter on a cavity: starts a wire from it. */
    startKeyWire(): boolean {
      const { harness, view } = store.getState();
      const keyWire = startKeyWire(harness, view.selection);
      if (keyWire) state.setState({ keyWire });
      return keyWire !== null;
    },
    stepKeyWire(input: KeyWireInput): void {
      const { keyWire } = state.getState();
      if (!keyWire) return;
      const { next, dispatch } = stepKeyWire(store.getState().harness, keyWire, input);
      state.setState({ keyWire: next });
      if (dispatch) store.getState().dispatch(dispatch);
    },
  };
}

/** Tools that are put down after they have been used once. */
const ONE_SHOT: ReadonlySet<ToolId> = new Set(['splice', 'board', 'panel', 'device']);
