/** Deeper than any file of ours by far. */
export const MAX_DEPTH = 64;

export interface KeyTrouble {
  readonly at: number;
  readonly message: string;
}

const QUOTE = 34;
const BACKSLASH = 92;

/**
 * What JSON.parse lets pass and no file of ours has: a key that stands twice in one object (of which it would silently
 * keep the last), a key that reaches for the prototype, and nesting without end. For texts that are JSON.
 */
export function keyTroubleIn(text: string): KeyTrouble | null {
  /** Keys of the objects that are open; null for a list. */
  const open: (Set<string> | null)[] = [];
  let keys: Set<string> | null = null;
  let wantsKey = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    switch (code) {
      case 123: // {
      case 91: // [
        if (open.length === MAX_DEPTH) return { at, message: `nested deeper than ${MAX_DEPTH} levels` };
        wantsKey = code === 123;
        keys = wantsKey ? new Set() : null;
        open.push(keys);
        break;
      case 125: // }
      case 93: // ]
        open.pop();
        keys = open.at(-1) ?? null;
        wantsKey = false;
        break;
      case 44: // ,
        wantsKey = keys !== null;
        break;
      case QUOTE: {
        const end = stringEnd(text, at);
        if (wantsKey && keys) {
          const key = keyOf(text, at, end);
          if (keys.has(key))
            return { at, message: `the key ${JSON.stringify(key)} stands twice in one object` };
          if (key === '__proto__') return { at, message: 'no object has a key "__proto__"' };
          keys.add(key);
          wantsKey = false;
        }
        at = end;
        break;
      }
    }
  }
  return null;
}

function stringEnd(text: string, start: number): number {
  let end = start;
  for (;;) {
    end = text.indexOf('"', end + 1);
    if (end < 0) return text.length;
    let slashes = 0;
    while (text.charCodeAt(end - 1 - slashes) === BACKSLASH) slashes++;
    if (slashes % 2 === 0) return end;
  }
}

/** As it is read, so that an escaped letter does not hide a key. */
function keyOf(text: string, start: number, end: number): string {
  const raw = text.slice(start + 1, end);
  return raw.includes('\\') ? (JSON.parse(text.slice(start, end + 1)) as string) : raw;
}
