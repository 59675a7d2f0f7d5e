import { useEffect } from 'react';
import type { Interaction, InteractionState } from '../interaction';
import type { Viewport } from '../viewport';
import { topIsEmpty, type BoardOver } from './board-top';

/** Draws the top canvas when a gesture or the thing under the pointer changes, and hides it while it is empty. */
export function useBoardTop(interaction: Interaction, viewport: Viewport, over: BoardOver): void {
  useEffect(() => {
    const show = (s: InteractionState): void => viewport.showTop(!topIsEmpty(over, s));
    show(interaction.state.getState());
    return interaction.state.subscribe((now, was) => {
      if (now.gesture === was.gesture && sameTarget(now, was)) return;
      if (now.gesture?.is === 'pan' && was.gesture?.is === 'pan') return;
      show(now);
      viewport.drawTop();
    });
  }, [interaction, viewport, over]);
}

/** The same thing under the pointer, wherever along a run. */
function sameTarget(a: InteractionState, b: InteractionState): boolean {
  const key = (s: InteractionState): string => {
    const { atMm: _, ...target } = (s.hover?.target ?? { on: 'sheet' }) as { on: string; atMm?: number };
    return JSON.stringify(target);
  };
  return a.hover?.target === b.hover?.target || key(a) === key(b);
}

/** What the pointer looks like over what it could do. */
export function cursorOf({ gesture, hover }: InteractionState): string {
  if (gesture?.is === 'pan' || gesture?.is === 'turn-branch' || gesture?.is === 'turn-connector')
    return 'grabbing';
  if (gesture?.is === 'draw-dimension' || gesture?.is === 'pin-path') return 'crosshair';
  switch (hover?.target.on) {
    case 'node':
    case 'via':
    case 'tie':
    case 'fixing':
    case 'label':
    case 'covering':
    case 'dimension':
      return 'move';
    case 'branch-handle':
      return 'grab';
    case undefined:
    case 'sheet':
      return 'default';
    default:
      return 'pointer';
  }
}
