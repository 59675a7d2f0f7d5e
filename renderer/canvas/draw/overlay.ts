import type { Part } from '@latchwork/core/model/parts/part';
import type { InteractionState } from '../interaction';
import type { DiagramScene } from '../scene/diagram-scene';
import type { Pen } from './pen';
import { paintGesture, paintInHand, paintKeyWire } from './preview';
import { paintHover, paintSelection } from './selection';

/** What lies over the still picture. */
export interface Overlay {
  readonly scene: DiagramScene;
  readonly selection: ReadonlySet<string>;
  readonly inHand: Part | undefined;
  readonly snap: boolean;
}

export const overlayIsEmpty = (o: Overlay, s: InteractionState): boolean =>
  o.selection.size === 0 &&
  !o.inHand &&
  !s.keyWire &&
  (s.gesture === null || s.gesture.is === 'pan') &&
  (s.hover === null || s.hover.target.on === 'sheet');

export function paintOverlay(pen: Pen, o: Overlay, s: InteractionState): void {
  paintSelection(pen, o.scene, o.selection, s.lifted);
  if (s.gesture) paintGesture(pen, o.scene, s.gesture, s.lifted);
  else if (s.hover && !s.keyWire) {
    if (o.inHand) paintInHand(pen, o.inHand, s.hover.at, o.snap);
    else paintHover(pen, o.scene, s.hover.target);
  }
  if (s.keyWire) paintKeyWire(pen, o.scene, s.keyWire);
}
