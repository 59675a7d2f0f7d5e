import type { Face } from './fonts';
import type { Run } from './set-lines';

/** Signs that the fonts lack, in letters that say the same. */
const SPELT: Readonly<Record<string, string>> = {
  '\u03a9': 'ohm',
  '\u00b5': 'u',
  '\u03bc': 'u',
  '\u2192': '->',
  '\u2265': '>=',
  '\u2264': '<=',
  '\t': ' ',
  '\u00a0': ' ',
}; // prettier-ignore

export type HasGlyph = (char: string, face: Face) => boolean;

/**
 * Splits text into runs of faces that have a glyph for every character. What no face has is written by its number,
 * "[U+0416]": nothing that was entered is dropped in silence.
 */
export function spell(text: string, face: Face, has: HasGlyph): Run<Face>[] {
  const runs: { text: string; face: Face }[] = [];
  const put = (chars: string, by: Face): void => {
    const last = runs.at(-1);
    if (last?.face === by) last.text += chars;
    else runs.push({ text: chars, face: by });
  };
  for (const char of text.normalize('NFC')) {
    const spelt = SPELT[char];
    if (char === '\n' || has(char, face)) put(char, face);
    else if (has(char, 'ext')) put(char, 'ext');
    else if (spelt !== undefined) put(spelt, face);
    else put(`[U+${(char.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0')}]`, face);
  }
  return runs;
}
