import { lengthText, parseLength, roundTo } from '@latchwork/core/model/length-text';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('reading a length', () => {
  it.each([
    ['120 mm', 120],
    ['120mm', 120],
    ['1.5 cm', 15],
    ['1.2 m', 1200],
    ['0,5 m', 500],
    // The international inch is 25.4 mm by definition (1959).
    ['12 in', 304.8],
    ['12"', 304.8],
    ['1 inch', 25.4],
    ['1 ft', 304.8],
    ["2'", 609.6],
    ['-3 mm', -3],
    ['+4 mm', 4],
    ['  7 MM ', 7],
    ['0.1 in', 2.54],
  ])('%s is %d mm', (text, mm) => {
    expect(parseLength(text)).toEqual({ ok: true, value: mm });
  });

  it('takes a bare number only where the place names its unit', () => {
    expect(parseLength('12').ok).toBe(false);
    expect(parseLength('12', 'mm')).toEqual({ ok: true, value: 12 });
    expect(parseLength('12', 'in')).toEqual({ ok: true, value: 304.8 });
    expect(parseLength('12 mm', 'in'), 'a unit that is written wins').toEqual({ ok: true, value: 12 });
  });

  it.each(['', 'mm', 'twelve', '12 yards', '1.2.3 mm', '12 in 3', '1e3 mm', '12 AWG', '= 1 mm'])(
    'refuses "%s"',
    (text) => {
      const read = parseLength(text);
      expect(read.ok ? 'read' : read.problem).toContain(text.trim() === '12 yards' ? 'yards' : '"');
    },
  );
});

describe('writing a length', () => {
  it.each([
    [120, 'mm', '120 mm'],
    [120.04, 'mm', '120 mm'],
    [120.05, 'mm', '120.1 mm'],
    [304.8, 'in', '12 in'],
    [120, 'in', '4.72 in'],
    [0, 'mm', '0 mm'],
    [-0.01, 'mm', '0 mm'],
    [0.0000001, 'mm', '0 mm'],
  ] as const)('%d mm in %s: %s', (mm, unit, text) => {
    expect(lengthText(mm, unit)).toBe(text);
  });

  it('reads back what it wrote, to the digits that were written', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        fc.constantFrom('mm', 'in'),
        (mm, unit) => {
          const read = parseLength(lengthText(mm, unit));
          expect(read.ok && Math.abs(read.value - mm)).toBeLessThanOrEqual(unit === 'mm' ? 0.0501 : 0.1271);
        },
      ),
    );
  });
});

describe('rounding', () => {
  it.each([
    [1.005, 2, 1.01],
    [2.5, 0, 3],
    [-2.5, 0, -3],
    [1234, -2, 1200],
    [1e-7, 4, 0],
    [123456789.125, 2, 123456789.13],
    [1e21, 2, 1e21],
    [Number.NaN, 2, Number.NaN],
    [Infinity, 2, Infinity],
  ])('%d to %d digits is %d', (value, digits, rounded) => {
    expect(roundTo(value, digits)).toBe(rounded);
  });

  it('agrees with the printed rounding of the language wherever that is exact', () => {
    // Quarters are exact in binary, so toFixed has no surprises but its ties, which two decimals cannot meet.
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), (n) => {
        expect(roundTo(n / 4, 2)).toBe(Number((n / 4).toFixed(2)) || 0);
      }),
    );
  });
});
