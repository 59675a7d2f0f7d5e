import type { Point } from '../../base/point';
import type { DrawingItem } from './drawing';

type Arc = Extract<DrawingItem, { kind: 'arc' }>;

/** How far an arc runs clockwise, degrees above 0 and at most 360. */
export function arcSpanDeg({ fromDeg, toDeg }: Pick<Arc, 'fromDeg' | 'toDeg'>): number {
  const span = (((toDeg - fromDeg) % 360) + 360) % 360;
  return span === 0 && toDeg !== fromDeg ? 360 : span;
}

export function onArc({ at, radiusMm }: Pick<Arc, 'at' | 'radiusMm'>, deg: number): Point {
  const angle = (deg * Math.PI) / 180;
  return { x: at.x + radiusMm * Math.cos(angle), y: at.y + radiusMm * Math.sin(angle) };
}
