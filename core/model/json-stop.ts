/** What may come next. */
type Expect = 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'comma-or-end' | 'nothing';

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
/** The part of a number that is begun and then broken off. */
const BROKEN_NUMBER = /-?(?:(?:0|[1-9]\d*)(?:\.(?:\d+(?:[eE][+-]?)?)?|[eE][+-]?)?)?/y;
const WORDS = ['true', 'false', 'null'];
const SPACE = /[ \t\n\r]*/y;

/**
 * Offset of the first character that cannot stand there in JSON (RFC 8259), or the length of a text that only ends
 * too early. For texts that JSON.parse refuses: its message names a position in some cases only, and each engine words
 * it differently.
 */
export function jsonStopsAt(text: string): number {
  const open: ('{' | '[')[] = [];
  let expect: Expect = 'value';
  let at = skip(SPACE, text, 0);
  while (at < text.length) {
    const c = text[at] as string;
    const closes = expect === 'comma-or-end' || expect === (c === '}' ? 'key-or-end' : 'value-or-end');
    if ((c === '}' || c === ']') && closes && open.at(-1) === (c === '}' ? '{' : '[')) {
      open.pop();
      expect = open.length ? 'comma-or-end' : 'nothing';
      at++;
    } else if (expect === 'value' || expect === 'value-or-end') {
      const opened = c === '{' || c === '[' ? c : undefined;
      const end: number = opened ? at + 1 : valueEnd(text, at);
      if (end < 0) return -end - 1;
      if (opened) open.push(opened);
      expect =
        opened === '{' ? 'key-or-end' : opened ? 'value-or-end' : open.length ? 'comma-or-end' : 'nothing';
      at = end;
    } else if ((expect === 'key' || expect === 'key-or-end') && c === '"') {
      const end = stringEnd(text, at);
      if (end < 0) return -end - 1;
      expect = 'colon';
      at = end;
    } else if (expect === 'colon' && c === ':') {
      expect = 'value';
      at++;
    } else if (expect === 'comma-or-end' && c === ',') {
      expect = open.at(-1) === '{' ? 'key' : 'value';
      at++;
    } else return at;
    at = skip(SPACE, text, at);
  }
  return text.length;
}

function skip(what: RegExp, text: string, at: number): number {
  what.lastIndex = at;
  return what.test(text) ? what.lastIndex : at;
}

/** End of a string, number or word; where it is wrong, the offset of the wrong character as -(offset + 1). */
function valueEnd(text: string, at: number): number {
  if (text[at] === '"') return stringEnd(text, at);
  const word = WORDS.find((w) => w[0] === text[at]);
  if (word) {
    const right = [...word].findIndex((c, i) => text[at + i] !== c);
    return right < 0 ? at + word.length : -(at + right + 1);
  }
  const end = skip(NUMBER, text, at);
  const broken = skip(BROKEN_NUMBER, text, at);
  return end > at && end >= broken ? end : -(broken + 1);
}

function stringEnd(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    const c = text[at] as string;
    if (c === '"') return at + 1;
    if (c < ' ') return -(at + 1);
    if (c !== '\\') continue;
    at++;
    const code = text[at] === 'u' ? text.slice(at + 1, at + 5) : '0000';
    if (!/^["\\/bfnrtu]$/.test(text[at] ?? '') || !/^[0-9a-fA-F]{4}$/.test(code)) return -(at + 1);
    if (text[at] === 'u') at += 4;
  }
  return -(text.length + 1);
}
