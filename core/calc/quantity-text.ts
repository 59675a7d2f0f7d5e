import { ok, problem, type Result } from '../base/result';
import { parseLength } from '../model/length-text';

/** A circular mil is the area of a circle of one thousandth of an inch, mm2. */
const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;
const M_PER_FT = 0.3048;
/** Standard gravity x the international pound. */
const N_PER_LBF = 4.4482216152605;

/** Other units in which a quantity may be typed, each with its factor. Lengths in mm go through `parseLength`. */
const OTHER_UNITS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  A: { mA: 1e-3, kA: 1e3 },
  V: { mV: 1e-3, kV: 1e3 },
  W: { mW: 1e-3, kW: 1e3 },
  ohm: { mohm: 1e-3, kohm: 1e3, 'Ω': 1, 'mΩ': 1e-3, 'kΩ': 1e3 },
  'ohm/km': { 'ohm/m': 1e3, 'mohm/m': 1, 'ohm/kft': 1 / M_PER_FT, 'Ω/km': 1, 'Ω/m': 1e3, 'mΩ/m': 1 },
  s: { ms: 1e-3, us: 1e-6, 'µs': 1e-6, min: 60 },
  uF: { 'µF': 1, nF: 1e-3, mF: 1e3, F: 1e6 },
  m: { ft: M_PER_FT, km: 1e3 },
  ft: { m: 1 / M_PER_FT, km: 1e3 / M_PER_FT },
  N: { lbf: N_PER_LBF, kN: 1e3 },
  g: { kg: 1e3 },
  mm2: { 'mm²': 1, cmil: MM2_PER_CIRCULAR_MIL, kcmil: 1e3 * MM2_PER_CIRCULAR_MIL },
  A2s: { 'A²s': 1 },
  degC: { '°C': 1, C: 1 },
  K: { degC: 1, '°C': 1, C: 1 },
}; // prettier-ignore

const FAHRENHEIT = new Set(['degF', '°F', 'F']);

/**
 * A number as typed, in `unit` ('' for none): "12", "0,5", "1e3", or with a unit of its own: "500 mA", "12 in", "176 degF".
 * Converted here, once.
 */
export function readQuantity(text: string, unit: string): Result<number, string> {
  if (unit === 'mm') return parseLength(text, 'mm');
  const m = /^([+-]?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?)\s*(.*)$/i.exec(text.trim());
  const typed = m?.[2] ?? '';
  const value = inUnit(m ? Number((m[1] as string).replace(',', '.')) : NaN, typed, unit);
  return value !== undefined && Number.isFinite(value)
    ? ok(value)
    : problem(`"${text}" is not a number${unit ? ` in ${unit}` : ''}`);
}

function inUnit(value: number, typed: string, unit: string): number | undefined {
  if (typed === '' || typed === unit) return value;
  if (unit === 'degC' && FAHRENHEIT.has(typed)) return ((value - 32) * 5) / 9;
  const factor = OTHER_UNITS[unit]?.[typed];
  return factor === undefined ? undefined : value * factor;
}

/** A number for people: six significant digits, without an exponent where it can be read without one. */
export function shownNumber(value: number): string {
  if (!Number.isFinite(value)) return value > 0 ? 'without limit' : String(value);
  // Not -0, which would print as something else.
  const rounded = Number(value.toPrecision(6)) || 0;
  return String(rounded);
}
