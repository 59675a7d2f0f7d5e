import { memoByIdentity } from '@latchwork/core/base/memo-by-identity';
import type { Tokens } from '../../ui/tokens';

/** Colours and type of a drawing: those of the window, or black on white for paper. */
export interface Look {
  readonly tokens: Tokens;
  /** Luminance of the ground, 0 to 1. */
  readonly ground: number;
}

export const lookOf = memoByIdentity((tokens: Tokens): Look => ({
  tokens,
  ground: luminance(tokens.paper),
}));

/** Relative luminance (WCAG 2.2) of "#rrggbb" or "rgb(r, g, b)"; 1 for what it cannot read. */
export function luminance(css: string): number {
  const hex = /^#([0-9a-f]{6})$/i.exec(css)?.[1];
  const parts = hex
    ? [0, 2, 4].map((i) => parseInt(hex.slice(i, i + 2), 16))
    : (css.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
  if (parts.length < 3) return 1;
  const [r, g, b] = parts.map((v) => {
    const c = v / 255;
    return c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

const contrasts = new Map<string, boolean>();

/** Whether a colour alone would be lost on the ground of the sheet (contrast below 2). */
export function isFaint(css: string, look: Look): boolean {
  const key = `${css} ${look.ground}`;
  let faint = contrasts.get(key);
  if (faint === undefined) {
    const [a, b] = [luminance(css), look.ground];
    faint = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05) < 2;
    contrasts.set(key, faint);
  }
  return faint;
}
