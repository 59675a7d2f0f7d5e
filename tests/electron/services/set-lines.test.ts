import fc from 'fast-check';
import { expect, test } from 'vitest';
import { setLines } from '../../../electron/services/pdf/set-lines';
import { spell } from '../../../electron/services/pdf/spell';

/** Every letter is one wide, a strong one two. */
const measure = (text: string, face: 'text' | 'strong'): number => text.length * (face === 'text' ? 1 : 2);
const set = (text: string, width: number): string[] =>
  setLines([{ text, face: 'text' as const }], width, measure).map((l) => l.map((p) => p.text).join(''));

test.each([
  ['one two three', 20, ['one two three']],
  ['one two three', 7, ['one two', 'three']],
  ['one two three', 8, ['one two', 'three']],
  ['one two three', 3, ['one', 'two', 'thr', 'ee']],
  ['a\nb', 9, ['a', 'b']],
  ['', 9, ['']],
  ['abcdef', 2, ['ab', 'cd', 'ef']],
])('%j in lines of %i', (text, width, lines) => {
  expect(set(text, width)).toEqual(lines);
});

test('runs of two faces stand side by side, and the wider one breaks', () => {
  const runs = [
    { text: 'ab ', face: 'text' as const },
    { text: 'cd ef', face: 'strong' as const },
  ];
  expect(setLines(runs, 8, measure)).toEqual([
    [
      { text: 'ab ', face: 'text', x: 0 },
      { text: 'cd', face: 'strong', x: 3 },
    ],
    [{ text: 'ef', face: 'strong', x: 0 }],
  ]);
});

test('no line is wider than it may be, and no letter is lost', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[a-c \n]{0,60}$/), fc.integer({ min: 1, max: 12 }), (text, width) => {
      const lines = set(text, width);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(/\s/g, ''));
    }),
  );
});

const has = (char: string, face: string): boolean =>
  /[ -~°]/.test(char) || (face === 'ext' && /[łč]/.test(char));
test.each([
  ['plain', [['plain', 'code']]],
  ['Pawł X', [['Paw', 'code'], ['ł', 'ext'], [' X', 'code']]],
  ['5 \u03a9 \u2126', [['5 ohm ohm', 'code']]],
  ['10 \u00b5m \u2265 2', [['10 um >= 2', 'code']]],
  ['Ж', [['[U+0416]', 'code']]],
  ['😀', [['[U+1F600]', 'code']]],
])('%j is spelt in faces that have it', (text, runs) => {
  expect(spell(text, 'code', has).map((r) => [r.text, r.face])).toEqual(runs);
}); // prettier-ignore
