/** Names of the colours in tokens.css. */
export const COLOUR_TOKENS = [
  'paper',
  'sheet',
  'line',
  'edge',
  'ink',
  'ink-2',
  'copper',
  'on-copper',
  'copper-wash',
  'hover',
  'critical',
  'major',
  'minor',
  'note',
  'unknown',
  'good',
] as const;
export type ColourToken = (typeof COLOUR_TOKENS)[number];

/** Values of the tokens for what cannot use CSS: colours as rgb(...), fonts as families. */
export type Tokens = { readonly [K in ColourToken]: string } & {
  readonly textFont: string;
  readonly monoFont: string;
};

/** The tokens as they hold at an element, in the theme now in force. */
export function readTokens(element: Element = document.documentElement): Tokens {
  const style = getComputedStyle(element);
  const value = (name: string): string => style.getPropertyValue(`--${name}`).trim();
  const colours = Object.fromEntries(COLOUR_TOKENS.map((name) => [name, value(name)])) as Record<
    ColourToken,
    string
  >;
  return { ...colours, textFont: value('text'), monoFont: value('mono') };
}

/**
 * Calls back whenever the tokens may have other values: the theme was switched, here or in the system, or a font has
 * arrived. Returns how to stop.
 */
export function onTokensChange(listener: () => void): () => void {
  const root = new MutationObserver(listener);
  root.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  const system = matchMedia('(prefers-color-scheme: dark)');
  system.addEventListener('change', listener);
  document.fonts.addEventListener('loadingdone', listener);
  return () => {
    root.disconnect();
    system.removeEventListener('change', listener);
    document.fonts.removeEventListener('loadingdone', listener);
  };
}
