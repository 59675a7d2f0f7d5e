import { ok, problem, type Result } from '../base/result';

/** Exact by definition (international inch, 1959). */
export const MM_PER_INCH = 25.4;

const MM_PER_UNIT: Readonly<Record<string, number>> = {
  mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, '"': MM_PER_INCH, inch: MM_PER_INCH, ft: 12 * MM_PER_INCH, "'": 12 * MM_PER_INCH,
}; // prettier-ignore

/**
 * Reads "120 mm", "1.2 m", "12 in", '12"' or "1 ft" as millimetres. A bare number is refused unless the place
 * where it stands names its unit (`bareUnit`).
 */
export function parseLength(text: string, bareUnit?: 'mm' | 'in'): Result<number, string> {
  const m = /^([+-]?\d+(?:[.,]\d+)?)\s*([a-z"']*)$/i.exec(text.trim());
  if (!m) return problem(`"${text}" is not a length; write "120 mm" or "12 in"`);
  const unit = (m[2] || bareUnit || '').toLowerCase();
  const factor = MM_PER_UNIT[unit];
  if (factor === undefined)
    return problem(
      unit ? `"${unit}" is not a length unit` : `"${text}" has no unit; write "120 mm" or "12 in"`,
    );
  return ok(roundTo(Number((m[1] as string).replace(',', '.')) * factor, 6));
}

/** A length for people: "120 mm" or "4.72 in". */
export function lengthText(mm: number, unit: 'mm' | 'in' = 'mm', digits = unit === 'mm' ? 1 : 2): string {
  const value = unit === 'mm' ? mm : mm / MM_PER_INCH;
  return `${String(roundTo(value, digits))} ${unit}`;
}

/**
 * Rounds half away from zero, without the binary surprises of 1.005. Digits may be negative: -1 rounds to tens.
 * Numbers whose text has an exponent are read part by part.
 */
export function roundTo(value: number, digits: number): number {
  const [mantissa, exponent = '0'] = String(Math.abs(value)).split('e');
  const scaled = Math.round(Number(`${mantissa}e${Number(exponent) + digits}`));
  if (!Number.isFinite(scaled) || scaled >= 1e21) return value;
  // Not -0, which would print and compare as something else.
  return Math.sign(value) * Number(`${scaled}e${-digits}`) || 0;
}
