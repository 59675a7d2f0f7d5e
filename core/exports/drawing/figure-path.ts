import type { Point } from '../../base/point';
import { arcSpanDeg, onArc } from './arc-span';
import type { Rectangle } from './code-modules';
import type { DrawingItem } from './drawing';

export type Figure = Exclude<DrawingItem, { kind: 'text' | 'code' }>;

/** Tenths of a micrometre: finer than any plotter, and without the noise of binary fractions. */
export const svgNumber = (x: number): string => String(Math.round(x * 1e4) / 1e4 + 0);

const at = ({ x, y }: Point): string => `${svgNumber(x)} ${svgNumber(y)}`;

/** A figure as path data of SVG, mm. */
export function figurePath(item: Figure): string {
  switch (item.kind) {
    case 'polyline':
      return `M${item.points.map(at).join('L')}${item.closed ? 'Z' : ''}`;
    case 'curve': {
      const [first, ...rest] = item.points as [Point, ...Point[]];
      return `M${at(first)}C${rest.slice(0, rest.length - (rest.length % 3)).map(at).join(' ')}`; // prettier-ignore
    }
    case 'circle':
      return circlePath(item);
    case 'arc': {
      const span = arcSpanDeg(item);
      if (span === 360) return circlePath(item);
      const r = svgNumber(item.radiusMm);
      const [from, to] = [onArc(item, item.fromDeg), onArc(item, item.fromDeg + span)];
      return `M${at(from)}A${r} ${r} 0 ${span > 180 ? 1 : 0} 1 ${at(to)}`;
    }
  }
}

function circlePath(item: Extract<Figure, { kind: 'circle' | 'arc' }>): string {
  const r = svgNumber(item.radiusMm);
  const [right, left] = [onArc(item, 0), onArc(item, 180)];
  return `M${at(right)}A${r} ${r} 0 0 1 ${at(left)}A${r} ${r} 0 0 1 ${at(right)}Z`;
}

export const rectanglesPath = (rectangles: readonly Rectangle[]): string =>
  rectangles
    .map((r) => `M${at(r)}h${svgNumber(r.width)}v${svgNumber(r.height)}h${svgNumber(-r.width)}Z`)
    .join('');
