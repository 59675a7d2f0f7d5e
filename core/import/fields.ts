import { ok, problem, type Result } from '../base/result';
import { parseColour, type Colour } from '../model/colour';
import { parseLength } from '../model/length-text';
import { parseWireSize, type WireSize } from '../model/wire-size';

/** Reads the text of one cell, trimmed and not empty. The problem is a sentence without its place. */
export type ReadField<T> = (text: string) => Result<T, string>;

export const asText: ReadField<string> = (text) => ok(text);

/** "1.5", "1,5" or "-2e3". A comma before three digits could be either a point or a thousand and is refused. */
export const asNumber: ReadField<number> = (text) => {
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i.test(text)) return problem(`"${text}" is not a number`);
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(text))
    return problem(
      `"${text}" can be read in two ways; write ${text.replace(',', '.')} or ${text.replace(',', '')}`,
    );
  return finite(text, Number(text.replace(',', '.')));
};

const finite = (text: string, n: number): Result<number, string> =>
  Number.isFinite(n) ? ok(n) : problem(`"${text}" is too large a number`);

const numberThat =
  (holds: (n: number) => boolean, rule: string): ReadField<number> =>
  (text) => {
    const n = asNumber(text);
    if (!n.ok || holds(n.value)) return n;
    return problem(`"${text}" must be ${rule}`);
  };

export const asPositive = numberThat((n) => n > 0, 'greater than zero');
export const asNotNegative = numberThat((n) => n >= 0, 'zero or more');
export const asCount = numberThat((n) => Number.isInteger(n) && n > 0, 'a whole number of 1 or more');

export const asSize: ReadField<WireSize> = parseWireSize;
export const asColour: ReadField<Colour> = parseColour;

/** A length with its unit, in millimetres: "12 in", "300 mm". */
export const asLength: ReadField<number> = (text) => {
  const length = parseLength(text);
  if (!length.ok) return length;
  return length.value <= 0 ? problem(`"${text}" must be greater than zero`) : finite(text, length.value);
};

export const asYesNo: ReadField<boolean> = (text) => {
  const word = text.toLowerCase();
  if (['yes', 'true', 'y', '1'].includes(word)) return ok(true);
  if (['no', 'false', 'n', '0'].includes(word)) return ok(false);
  return problem(`"${text}" is neither yes nor no`);
};

/** One of the given words; capitals, spaces and underscores do not matter. */
export const asOneOf =
  <const W extends string>(words: readonly W[]): ReadField<W> =>
  (text) => {
    const wanted = text.toLowerCase().replace(/[\s_]+/g, '-');
    const found = words.find((w) => w === wanted);
    return found === undefined ? problem(`"${text}" is none of: ${words.join(', ')}`) : ok(found);
  };

/** Words with spaces between them, each read alone. */
export const asListOf =
  <T>(read: ReadField<T>): ReadField<T[]> =>
  (text) => {
    const out: T[] = [];
    for (const word of text.split(/\s+/)) {
      const one = read(word);
      if (!one.ok) return one;
      out.push(one.value);
    }
    return ok(out);
  };
