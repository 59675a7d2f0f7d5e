import { readQuantity, shownNumber } from '@latchwork/core/calc/quantity-text';
import { describe, expect, it } from 'vitest';

// Factors: SI prefixes; inch, foot and pound-force as defined (international yard and pound agreement, 1959); the circular
// mil as pi/4 of a square mil; Fahrenheit by its definition. All from memory.
describe('a number as typed', () => {
  it.each<[string, string, number]>([
    ['12', '', 12],
    ['0,5', 'A', 0.5],
    ['-4', 'degC', -4],
    ['1e3', 'ohm', 1000],
    ['5 A', 'A', 5],
    ['500 mA', 'A', 0.5],
    ['20 %', '%', 20],
    ['12 in', 'mm', 304.8],
    ['1 ft', 'mm', 304.8],
    ['158 degF', 'degC', 70],
    ['70 °C', 'degC', 70],
    ['10000 ft', 'm', 3048],
    ['3048 m', 'ft', 10_000],
    ['1.2 ohm/kft', 'ohm/km', 1.2 / 0.3048],
    ['10 mohm', 'ohm', 0.01],
    ['10 lbf', 'N', 44.482216152605],
    ['1000 cmil', 'mm2', 0.506707479],
  ])('"%s" in "%s" is %d', (text, unit, expected) => {
    const read = readQuantity(text, unit);
    expect(read.ok && read.value).toBeCloseTo(expected, 8);
  });

  it.each<[string, string, string]>([
    ['3 mV', 'A', '"3 mV" is not a number in A'],
    ['thick', '', '"thick" is not a number'],
    ['1 2', 'A', '"1 2" is not a number in A'],
    ['22 AWG', 'mm2', '"22 AWG" is not a number in mm2'],
    ['1e999', 'A', '"1e999" is not a number in A'],
    ['70 degF', 'A', '"70 degF" is not a number in A'],
    ['1e999 degF', 'degC', '"1e999 degF" is not a number in degC'],
  ])('"%s" in "%s" is refused', (text, unit, reason) => {
    expect(readQuantity(text, unit)).toEqual({ ok: false, problem: reason });
  });
});

it.each<[number, string]>([
  [0.1 + 0.2, '0.3'],
  [1234567.8, '1234570'],
  [0.000123456789, '0.000123457'],
  [-0, '0'],
  [Infinity, 'without limit'],
])('%d is shown as %s', (value, text) => {
  expect(shownNumber(value)).toBe(text);
});
