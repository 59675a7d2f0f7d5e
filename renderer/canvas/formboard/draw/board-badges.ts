import { inBox } from '@latchwork/core/base/point';
import { paintMark } from '../../draw/badges';
import { clamp, type Pen } from '../../draw/pen';
import type { Badge } from '../../scene/badges';

/** Findings at their objects, of one size at every zoom. */
export function paintBoardBadges(pen: Pen, badges: readonly Badge[]): void {
  if (pen.hasty) return;
  const size = clamp(3.4 * pen.s, 10, 15);
  for (const b of badges)
    if (inBox(b.at, pen.view)) paintMark(pen, b.kind, pen.x(b.at.x), pen.y(b.at.y), size, b.findings.length);
}
