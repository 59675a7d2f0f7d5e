import { describe, expect, it } from 'vitest';
import { bareFileName, nearestFileName, withEnding } from '../../../electron/services/file-name';

describe('bareFileName', () => {
  it.each(['lamp.latchwork', 'Lampe für Ω.csv', 'a b.pdf', 'com10.latchwork', 'x..y'])('takes %s', (name) => {
    expect(bareFileName(name)).toEqual({ ok: true, value: name });
  });

  it.each([
    '',
    ' ',
    '.',
    '..',
    '../x',
    '..\\x',
    '/etc/passwd',
    'C:\\x',
    'C:x',
    'a/b',
    'a\\b',
    '.hidden',
    'x.',
    ' x',
    'x ',
    'a\u0000b',
    'a\nb',
    'con',
    'NUL.latchwork',
    'lpt1.csv',
    'a:b',
    'a*',
    'a?',
    'a|b',
    'a"b',
    '<a>',
    'ä'.repeat(101),
  ])('refuses %j', (name) => {
    expect(bareFileName(name).ok).toBe(false);
  });
});

it('adds an ending once', () => {
  expect(withEnding('a', '.latchwork')).toBe('a.latchwork');
  expect(withEnding('a.LATCHWORK', '.latchwork')).toBe('a.LATCHWORK');
});

it.each([
  ['Lamp 1/2: left', 'Lamp 1-2- left'],
  ['../../x', '-..-x'],
  ['con', 'harness'],
  ['', 'harness'],
])('makes of %j the name %j', (suggestion, name) => {
  expect(nearestFileName(suggestion, 'harness')).toBe(name);
});
