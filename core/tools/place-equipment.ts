import { distance, type Point } from '../base/point';
import type { Equipment } from '../model/equipment';
import { boxOf } from './box-select';
import { snapped } from './snap';
import type { Facts, Input, PointerEventInput, Step } from './tool';

/** The area of a board, panel or device is drawn as a frame; a click sets one of a useful size. */
export interface PlaceEquipment {
  readonly is: 'place-equipment';
  readonly kind: Equipment['kind'];
  readonly from: Point;
  readonly to: Point;
}

const CLICK_SIZE_MM = { widthMm: 60, heightMm: 80 };
const LEAST_MM = 10;

export const startPlaceEquipment = (
  kind: Equipment['kind'],
  input: PointerEventInput,
  facts: Facts,
): PlaceEquipment => {
  const from = snapped(input.at, facts.snap && !input.alt);
  return { is: 'place-equipment', kind, from, to: from };
};

export function stepPlaceEquipment(
  state: PlaceEquipment,
  input: Input,
  facts: Facts,
): Step<PlaceEquipment | null> {
  if (input.on === 'cancel') return { next: null };
  const next = { ...state, to: snapped(input.at, facts.snap && !input.alt) };
  if (input.on !== 'up') return { next };
  const box = boxOf(next);
  const size =
    distance(next.from, next.to) < LEAST_MM
      ? CLICK_SIZE_MM
      : {
          widthMm: Math.max(LEAST_MM, box.maxX - box.minX),
          heightMm: Math.max(LEAST_MM, box.maxY - box.minY),
        };
  const equipment = { kind: state.kind, position: { x: box.minX, y: box.minY }, ...size };
  return { next: null, dispatch: { id: 'equipment.add', args: { equipment } } };
}
