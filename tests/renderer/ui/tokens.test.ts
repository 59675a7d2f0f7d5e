import { afterEach, describe, expect, it } from 'vitest';
import '../../../renderer/ui/tokens.css';
import { type ColourToken, onTokensChange, readTokens } from '../../../renderer/ui/tokens';

// Relative luminance and contrast ratio as WCAG 2.2 defines them; 4.5:1 for text (1.4.3), 3:1 for lines that mean something (1.4.11).
const channels = (colour: string): number[] => {
  const hex = /^#(..)(..)(..)$/.exec(colour);
  return hex
    ? hex.slice(1).map((c) => parseInt(c, 16))
    : (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
};
const luminance = (colour: string): number => {
  const [r, g, b] = channels(colour).map((c) => {
    const s = c / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

it('measures contrast as the standard does', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  // WCAG 2.2 technique G18: #767676 on white is just above 4.5.
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each(['light', 'dark'] as const)('the %s look', (theme) => {
  const tokens = () => {
    document.documentElement.dataset.theme = theme;
    return readTokens();
  };
  const TEXT: ColourToken[] = [
    'ink',
    'ink-2',
    'copper',
    'critical',
    'major',
    'minor',
    'note',
    'unknown',
    'good',
  ];
  const GROUNDS: ColourToken[] = ['paper', 'sheet', 'hover', 'copper-wash'];

  it.each(TEXT.flatMap((t) => GROUNDS.map((g) => [t, g] as const)))(
    '%s on %s reads as text',
    (text, ground) => {
      expect(contrast(tokens()[text], tokens()[ground])).toBeGreaterThanOrEqual(4.5);
    },
  );

  it('words on copper read as text', () => {
    expect(contrast(tokens()['on-copper'], tokens().copper)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['paper', 'sheet'] as const)('an edge that means something is seen on %s', (ground) => {
    expect(contrast(tokens().edge, tokens()[ground])).toBeGreaterThanOrEqual(3);
  });
});

it('tells whoever draws without CSS when the theme changes', async () => {
  let told = 0;
  const stop = onTokensChange(() => told++);
  const light = readTokens().paper;
  document.documentElement.dataset.theme = 'dark';
  await expect.poll(() => told).toBeGreaterThan(0);
  expect(readTokens().paper).not.toBe(light);
  stop();
});
