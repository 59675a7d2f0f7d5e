import { startBoxSelect, type BoxSelect } from './box-select';
import { startDrawWire, type DrawWire } from './draw-wire';
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
): Step<BoxSelect | DrawWire | Move | Reconnect | null> {
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
    case 'node':
      return startMove(input, facts);
    case 'badge':
      return { next: null, select: { keys: [target.key], add: false }, open: target.findings };
    case 'wire':
    case 'mate':
    case 'segment':
    case 'pick':
      return { next: null, select: { keys: [keyOfTarget(target) ?? target.id], add: input.add } };
  }
}
