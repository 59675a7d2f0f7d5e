import { describe, expect, test } from 'vitest';
import {
  asColour,
  asCount,
  asLength,
  asListOf,
  asNumber,
  asOneOf,
  asPositive,
  asSize,
  asText,
  asYesNo,
  type ReadField,
} from '@latchwork/core/import/fields';

const cases: [string, ReadField<unknown>, [string, unknown][], string[]][] = [
  ['number', asNumber, [['1.5', 1.5], ['1,5', 1.5], ['-2', -2], ['1e3', 1000], ['.5', 0.5], ['0,355', 0.355], ['1500', 1500]], ['', 'x', '1,500', '12,345', '1.2.3', '1 2', '0x10', 'Infinity', 'NaN', '3 mm', '1e999']],
  ['positive', asPositive, [['0.1', 0.1]], ['0', '-1', 'x']],
  ['count', asCount, [['12', 12]], ['0', '-1', '1.5', 'many']],
  ['length', asLength, [['12 in', 304.8], ['300 mm', 300], ['1.2 m', 1200]], ['300', '0 mm', '-5 mm', '3 furlongs', `${'9'.repeat(400)} mm`]],
  ['size', asSize, [['22 AWG', { system: 'awg', gauge: 22 }], ['0,35 mm²', { system: 'mm2', areaMm2: 0.35 }]], ['22', '0.35', 'fat']],
  ['colour', asColour, [['rd', { base: 'RD' }], ['RD/BU', { base: 'RD', stripes: ['BU'] }]], ['red', 'RDBU', 'RD/']],
  ['yes or no', asYesNo, [['yes', true], ['TRUE', true], ['no', false], ['0', false]], ['maybe', '2']],
  ['word', asOneOf(['through-hole', 'x']), [['Through Hole', 'through-hole'], ['through_hole', 'through-hole']], ['hole']],
  ['list', asListOf(asText), [['a  b', ['a', 'b']]], []],
  ['list of colours', asListOf(asColour), [['RD BK/WH', [{ base: 'RD' }, { base: 'BK', stripes: ['WH'] }]]], ['RD ZZ']],
]; // prettier-ignore

describe.each(cases)('a %s', (_, read, accepted, refused) => {
  test.each(accepted)('takes %j', (text, value) => {
    expect(read(text)).toEqual({ ok: true, value });
  });
  if (refused.length)
    test.each(refused)('refuses %j', (text) => {
      expect(read(text).ok).toBe(false);
    });
});
