import { substitution } from '@latchwork/core/derive/substitute';
import type { Part } from '@latchwork/core/model/parts/part';
import { tiny } from '@latchwork/core/model/tiny';
import { expect, it } from 'vitest';

const part = (partNumber: string): Part => tiny().parts.find((p) => p.partNumber === partNumber)!;

/** What is worse and what is missing when a record is replaced by itself with some fields changed. */
const answer = (partNumber: string, change: object): string => {
  const { worse, missing } = substitution(part(partNumber), { ...part(partNumber), ...change } as Part);
  return [...worse, ...missing.map((f) => `${f}?`)].join('; ') || 'serves';
};

it.each([
  ['C-PIN', {}, 'serves'],
  ['C-PIN', { form: 'loose', partNumber: 'OTHER', maker: 'Someone (invented)' }, 'serves'],
  ['C-PIN', { insulationMinMm: 0.8, insulationMaxMm: 1.6, cycles: 50 }, 'serves'],
  ['C-PIN', { insulationMaxMm: 1.5 }, 'insulationMaxMm 1.5 for 1.53'],
  ['C-PIN', { finish: 'gold' }, 'finish gold for tin'],
  ['C-PIN', { contactKind: 'socket' }, 'contactKind socket for pin'],
  ['C-PIN', { resistanceMohm: undefined }, 'resistanceMohm?'],
  ['WIRE-22', { odMm: 1.3 }, 'odMm 1.3 for 1.2'],
  ['WIRE-22', { size: { system: 'awg', gauge: 24 } }, 'size 24 AWG for 22 AWG'],
  ['WIRE-22', { voltageMaxV: 600, temperatureMaxC: 125 }, 'serves'],
  ['WIRE-22', { temperatureMaxC: 80 }, 'temperatureMaxC 80 for 105'],
  ['H-PIN', { acceptedSeries: ['E3', 'E3-LONG'] }, 'serves'],
  ['H-PIN', { acceptedSeries: ['E4'] }, 'acceptedSeries E4 for E3'],
  ['H-PIN', { keying: 'A' }, 'keying A for none'],
  ['HEADER', { processes: ['wave'] }, 'processes wave for wave hand'],
  ['HEADER', { tailLengthMm: 4 }, 'tailLengthMm 4 for 3.2'],
])('%s with %o: %s', (number, change, expected) => {
  expect(answer(number, change)).toBe(expected);
});

it('takes no part of another kind', () => {
  expect(substitution(part('C-PIN'), part('LOCK')).worse).toEqual(['a secondary lock for a contact']);
});
