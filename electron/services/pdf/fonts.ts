import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** The faces that papers are set in. `ext` holds the letters of more languages, for names of people and places. */
export type Face = 'text' | 'strong' | 'code' | 'ext';
export type Fonts = Readonly<Record<Face, Uint8Array>>;

const FILES: Readonly<Record<Face, string>> = {
  text: 'atkinson-hyperlegible-next-latin-400-normal.woff',
  strong: 'atkinson-hyperlegible-next-latin-700-normal.woff',
  code: 'atkinson-hyperlegible-mono-latin-400-normal.woff',
  ext: 'atkinson-hyperlegible-next-latin-ext-400-normal.woff',
};

/** Reads the fonts that come with the program. Papers embed them: what is printed looks the same everywhere. */
export async function readFonts(folder: string): Promise<Fonts> {
  const read = (face: Face): Promise<Uint8Array> => readFile(join(folder, FILES[face]));
  const [text, strong, code, ext] = await Promise.all([
    read('text'),
    read('strong'),
    read('code'),
    read('ext'),
  ]);
  return { text, strong, code, ext };
}
