import type { Point } from '../../base/point';

/** Angles of the formboard snap to this step, degrees. */
export const ANGLE_STEP_DEG = 15;

/** Direction from one point to another, degrees clockwise from right. */
export const directionDeg = (from: Point, to: Point): number =>
  (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;

export const snappedDeg = (deg: number, on: boolean): number =>
  on ? Math.round(deg / ANGLE_STEP_DEG) * ANGLE_STEP_DEG : Math.round(deg * 10) / 10;
