/** Text in one face. */
export interface Run<F extends string> {
  readonly text: string;
  readonly face: F;
}

/** A run at its place in a line. */
export interface Piece<F extends string> extends Run<F> {
  readonly x: number;
}

export type Measure<F extends string> = (text: string, face: F) => number;

/**
 * Breaks runs into lines no wider than `width`: at spaces, at line breaks, and inside a word only where a line holds
 * nothing else. Spaces at a break are dropped.
 */
export function setLines<F extends string>(
  runs: readonly Run<F>[],
  width: number,
  measure: Measure<F>,
): readonly (readonly Piece<F>[])[] {
  const lines: Piece<F>[][] = [[]];
  let x = 0;
  const breakLine = (): void => {
    lines.push([]);
    x = 0;
  };
  const put = (text: string, face: F): void => {
    const line = lines.at(-1) as Piece<F>[];
    const last = line.at(-1);
    if (last?.face === face) line[line.length - 1] = { ...last, text: last.text + text };
    else line.push({ text, face, x });
    x += measure(text, face);
  };
  for (const { text, face } of runs)
    for (const token of text.split(/(\n|[^\S\n\u00a0]+)/)) {
      if (token === '') continue;
      if (token === '\n') breakLine();
      else if (/^\s+$/.test(token)) {
        if (x > 0) put(' '.repeat(token.length), face);
      } else
        for (const part of fitting(token, face, width, measure)) {
          if (x > 0 && x + measure(part, face) > width) breakLine();
          put(part, face);
        }
    }
  return lines.map(withoutTail);
}

/** The word itself, or its parts where it is wider than a line. */
function fitting<F extends string>(word: string, face: F, width: number, measure: Measure<F>): string[] {
  if (measure(word, face) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  for (const char of word) {
    if (part !== '' && measure(part + char, face) > width) {
      parts.push(part);
      part = '';
    }
    part += char;
  }
  return [...parts, part];
}

function withoutTail<F extends string>(line: readonly Piece<F>[]): readonly Piece<F>[] {
  const last = line.at(-1);
  if (!last) return line;
  const text = last.text.trimEnd();
  return text === '' ? line.slice(0, -1) : [...line.slice(0, -1), { ...last, text }];
}
