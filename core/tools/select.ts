import { startBoxSelect, type BoxSelect } from './box-select';
import { startDrawWire, type DrawWire } from './draw-wire';
import { startDragBranch, type DragBranch } from './formboard/drag-branch';
import { startDragDimension, type DragDimension } from './formboard/drag-dimension';
import { startDragVia, type DragVia } from './formboard/drag-via';
import { startMoveNodes, type MoveNodes } from './formboard/move-nodes';
import { startSlide, type Slide } from './formboard/slide';
import { startTurnBranch, type TurnBranch } from './formboard/turn-branch';
import { startTurnConnector, type TurnConnector } from './formboard/turn-connector';
import { startMove, type Move } from './move';
import { startReconnect, type Reconnect } from './reconnect';
import { keyOfTarget, type Facts, type PointerEventInput, type Step } from './tool';

/**
 * The tool that is always at hand: a press on a cavity draws a wire, on a wire's end reconnects it, on an object
 * moves it, on a wire selects it, on the sheet draws a selection frame.
 */
export function startSelect(
  input: PointerEventInput,
  facts: Facts,
): Step<
  | BoxSelect
  | DragBranch
  | DragDimension
  | DragVia
  | DrawWire
  | Move
  | MoveNodes
  | Reconnect
  | Slide
  | TurnBranch
  | TurnConnector
  | null
> {
  const { target } = input;
  switch (target.on) {
    case 'sheet':
      return { next: startBoxSelect(input) };
    case 'cavity':
      return { next: startDrawWire(input) };
    case 'wire-end':
      return { next: startReconnect(input, target) };
    case 'connector':
    case 'splice':
    case 'equipment':
      return startMove(input, facts);
    case 'node':
      return startMoveNodes(input, facts);
    case 'segment':
      // A run that is selected together with others moves with them; from one alone a branch is pulled.
      return facts.selection.size > 1 && facts.selection.has(target.id) && !input.add
        ? startMoveNodes(input, facts)
        : startDragBranch(input, keyOfTarget(target) ?? target.id, facts);
    case 'via':
      return { next: startDragVia(input, target.id, target.index) };
    case 'tie':
    case 'fixing':
    case 'label':
    case 'covering':
      return { next: startSlide(input, target) };
    case 'turning':
      return startTurnConnector(input, target.id, facts);
    case 'branch-handle':
      return startTurnBranch(input, target.id, facts);
    case 'dimension':
      return startDragDimension(input, target.id, facts);
    case 'badge':
      return { next: null, select: { keys: [target.key], add: false }, open: target.findings };
    case 'wire':
    case 'mate':
    case 'pick':
      return { next: null, select: { keys: [keyOfTarget(target) ?? target.id], add: input.add } };
  }
}
