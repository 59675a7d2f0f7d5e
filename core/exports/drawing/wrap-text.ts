import { type TextLook, textWidthMm } from './text-width';

/** Breaks a text into lines no wider than `widthMm`, at blanks; a word that is wider stands alone. */
export function wrapText(text: string, heightMm: number, widthMm: number, look: TextLook = 'text'): string[] {
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    let line = '';
    for (const word of paragraph.split(/\s+/).filter(Boolean)) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (line !== '' && textWidthMm(longer, heightMm, look) > widthMm) {
        lines.push(line);
        line = word;
      } else line = longer;
    }
    lines.push(line);
  }
  return lines;
}
