/** A group code with its value. */
export type Tag = readonly [number, string | number];

/** The text of a DXF file: a code and a value on lines of their own, numbers to a tenth of a micrometre. */
export const dxfText = (tags: readonly Tag[]): string =>
  tags.map(([code, value]) => `${code}\n${typeof value === 'number' ? dxfNumber(code, value) : value}\n`).join(''); // prettier-ignore

/** Codes from 60 to 79 hold whole numbers. */
const dxfNumber = (code: number, value: number): string => {
  if (code >= 60 && code < 80) return String(value);
  const text = String(Math.round(value * 1e4) / 1e4 + 0);
  return text.includes('.') ? text : `${text}.0`;
};

/** Signs that the format writes by a control code of its own. */
const CONTROLS: Readonly<Record<string, string>> = { Ø: '%%c', '°': '%%d', '±': '%%p' };

/**
 * Text of one line in plain ASCII: other signs by their numbers (\U+00B5), which later readers know; percent signs that
 * would be read as a control are doubled up as the format asks; line breaks become blanks.
 */
export const dxfString = (text: string): string =>
  text
    .replace(/%(?=%)|(?<=%)%/g, '%%%')
    .replace(/[Ø°±]/g, (c) => CONTROLS[c] ?? c)
    .replace(/[\u0000-\u001f\u007f]+/g, ' ')
    .replace(
      /[^\u0020-\u007e]/g,
      (c) => `\\U+${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`,
    );

/** Names of layers in R12: capitals, digits, and $ - _, at most 31. */
export const dxfName = (name: string): string =>
  name
    .toUpperCase()
    .replace(/[^A-Z0-9$_-]/g, '_')
    .slice(0, 31) || '0';
