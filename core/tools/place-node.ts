import { snapped } from './snap';
import type { Facts, PointerEventInput, Step } from './tool';

/** A press sets a formboard node where the pointer is; on a node that is there it only selects that one. */
export const placeNode = (input: PointerEventInput, facts: Facts): Step<null> =>
  input.target.on === 'node'
    ? { next: null, select: { keys: [input.target.id], add: input.add } }
    : {
        next: null,
        dispatch: { id: 'node.add', args: { position: snapped(input.at, facts.snap && !input.alt) } },
      };
