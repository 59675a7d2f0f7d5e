import { snapped } from './snap';
import type { Facts, PointerEventInput, Step } from './tool';

/** A press sets a splice where the pointer is. */
export const placeSplice = (input: PointerEventInput, facts: Facts): Step<null> => ({
  next: null,
  dispatch: { id: 'splice.add', args: { position: snapped(input.at, facts.snap && !input.alt) } },
});
