import { type Colour, COLOUR_CODES, colourText, parseColour, sameColour } from '@latchwork/core/model/colour';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const code = fc.constantFrom(...COLOUR_CODES);
const anyColour: fc.Arbitrary<Colour> = fc.oneof(
  code.map((base) => ({ base })),
  fc.record({ base: code, stripes: fc.array(code, { minLength: 1, maxLength: 3 }) }),
);

describe('colours', () => {
  it.each([
    ['RD', { base: 'RD' }],
    ['rd', { base: 'RD' }],
    ['RD/BU', { base: 'RD', stripes: ['BU'] }],
    [' wh / rd / bk ', { base: 'WH', stripes: ['RD', 'BK'] }],
    ['GNYE', { base: 'GNYE' }],
  ])('reads %s', (text, colour) => {
    expect(parseColour(text)).toEqual({ ok: true, value: colour });
  });

  it('names the code that it does not know, and those it knows', () => {
    const read = parseColour('RD/XX');
    expect(read.ok ? '' : read.problem).toMatch(/^"XX".*BK, BN, RD/);
  });

  it('keeps base and stripe apart: red with a blue stripe is not blue with a red one', () => {
    const redBlue: Colour = { base: 'RD', stripes: ['BU'] };
    expect(colourText(redBlue)).toBe('RD/BU');
    expect(sameColour(redBlue, { base: 'BU', stripes: ['RD'] })).toBe(false);
    expect(sameColour(redBlue, { base: 'RD' })).toBe(false);
  });

  it('takes no stripes and an empty list of stripes for the same', () => {
    expect(sameColour({ base: 'RD' }, { base: 'RD', stripes: [] })).toBe(true);
  });

  it('takes an unknown colour for the same as another unknown one only', () => {
    expect(sameColour(undefined, undefined)).toBe(true);
    expect(sameColour(undefined, { base: 'RD' })).toBe(false);
    expect(sameColour({ base: 'RD' }, undefined)).toBe(false);
  });

  it('reads back every colour it writes', () => {
    fc.assert(
      fc.property(anyColour, (colour) => {
        const read = parseColour(colourText(colour));
        expect(read.ok && sameColour(read.value, colour)).toBe(true);
      }),
    );
  });
});
