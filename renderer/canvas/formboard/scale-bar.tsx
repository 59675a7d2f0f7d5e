import { useEffect, useRef, type ReactNode } from 'react';
import { lengthText, MM_PER_INCH } from '@latchwork/core/model/length-text';
import type { Viewport } from '../viewport';

/** Longest bar, px. */
const MOST_PX = 180;
const STEPS = [5, 2, 1] as const;

/** The longest round length that fits: 1, 2 or 5 times a power of ten of the unit. */
export function barLength(
  pxPerMm: number,
  unit: 'mm' | 'in',
): { readonly mm: number; readonly words: string } {
  const perUnit = unit === 'mm' ? 1 : MM_PER_INCH;
  const most = MOST_PX / pxPerMm / perUnit;
  const power = 10 ** Math.floor(Math.log10(most));
  const value = (STEPS.find((s) => s * power <= most) ?? 1) * power;
  return { mm: value * perUnit, words: lengthText(value * perUnit, unit) };
}

/** A bar that says how long things on the board are; it follows every frame of a zoom. */
export function ScaleBar({ viewport, unit }: { viewport: Viewport; unit: 'mm' | 'in' }): ReactNode {
  const bar = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const write = (): void => {
      const { pxPerMm } = viewport.camera();
      const length = barLength(pxPerMm, unit);
      if (bar.current) bar.current.style.width = `${length.mm * pxPerMm}px`;
      if (words.current && words.current.textContent !== length.words)
        words.current.textContent = length.words;
    };
    write();
    return viewport.watch(write);
  }, [viewport, unit]);
  return (
    <div className="board-scale" role="img" aria-label="Scale of the board">
      <span ref={words} className="mono" />
      <div ref={bar} className="board-scale-bar">
        <i />
        <i />
      </div>
    </div>
  );
}
