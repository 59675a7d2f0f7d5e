import { roundTo } from '../../model/length-text';

/** The same direction as more than -180 and at most 180 degrees, without the dust of arithmetic. */
export function normalDeg(angle: number): number {
  const turned = roundTo(angle - 360 * Math.ceil(angle / 360 - 0.5), 9);
  return turned === -180 ? 180 : turned || 0;
}
