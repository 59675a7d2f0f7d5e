/** The window is served under its own scheme: it has an origin of its own and no way to the files beside it. */
export const WINDOW_SCHEME = 'app';
export const WINDOW_ORIGIN = 'app://latchwork';
export const WINDOW_ADDRESS = `${WINDOW_ORIGIN}/index.html`;

export function isWindowAddress(text: string): boolean {
  if (!URL.canParse(text)) return false;
  const { protocol, host } = new URL(text);
  return `${protocol}//${host}` === WINDOW_ORIGIN;
}
