import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonStopsAt } from '@latchwork/core/model/json-stop';
import { SAMPLE_TEXT } from './sample-file';

const positionOf = (text: string): number | 'whole' | undefined => {
  try {
    JSON.parse(text);
    return 'whole';
  } catch (error) {
    const at = /position (\d+)/.exec(String(error));
    return at ? Number(at[1]) : undefined;
  }
};

describe('the place where a text stops being JSON', () => {
  it.each([
    ['', 0],
    ['  ', 2],
    ['hello', 0],
    ['{"a": hello}', 6],
    ['{"a":1 \n, b:2}', 10],
    ['[1,2', 4],
    ['[1,2}', 4],
    ['{"a":1]', 6],
    ['{"a":1}x', 7],
    ['[01]', 2],
    ['[1.]', 3],
    ['[1.5e+]', 6],
    ['[-]', 2],
    ['[truth]', 4],
    ['[+1]', 1],
    ['{"a":1,}', 7],
    ['[1,]', 3],
    ['{,}', 1],
    ['{"a" 1}', 5],
    ['{1: 2}', 1],
    ['["\\x"]', 3],
    ['["\\u12g4"]', 3],
    ['["a\nb"]', 3],
    ['["open', 6],
    ['nul', 3],
    ['[[[[', 4],
    [']', 0],
    ['1 2', 2],
    ["{'a': 1}", 1],
  ])('%j stops at %d', (text, at) => {
    expect(jsonStopsAt(text)).toBe(at);
  });

  it('is the end for every text that is JSON', () => {
    fc.assert(fc.property(fc.json(), (text) => jsonStopsAt(text) === text.length));
  });

  it('is where JSON.parse says it is, wherever it says so, on damaged files', () => {
    let told = 0;
    fc.assert(
      fc.property(fc.nat(4000), fc.constantFrom('', ',', '}', ']', ':', '{', '[', '1', ' '), (at, put) => {
        const text = SAMPLE_TEXT.slice(0, at) + put + SAMPLE_TEXT.slice(at + 1, 5000);
        const position = positionOf(text);
        if (typeof position !== 'number') return;
        told++;
        expect(jsonStopsAt(text)).toBe(position);
      }),
      { numRuns: 500 },
    );
    expect(told).toBeGreaterThan(100);
  });
});
