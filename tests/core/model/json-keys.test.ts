import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyTroubleIn, MAX_DEPTH } from '@latchwork/core/model/json-keys';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import { SAMPLE_TEXT } from './sample-file';

describe('JSON that would be read by guessing', () => {
  it.each([
    ['{"a":1,"a":2}', 7],
    ['{"a":1,"\\u0061":2}', 7],
    ['[{"a":{"b":1}},{"c":1,"d":[{"e":1}],"c":2}]', 36],
    ['{"__proto__":{"x":1}}', 1],
    ['{"a":{"\\u005f_proto__":1}}', 6],
    [`${'['.repeat(MAX_DEPTH + 1)}${']'.repeat(MAX_DEPTH + 1)}`, MAX_DEPTH],
  ])('%s is refused at %i', (text, at) => {
    expect(() => JSON.parse(text)).not.toThrow();
    expect(keyTroubleIn(text)?.at).toBe(at);
  });

  it.each([
    '{"a":"a","b":"a\\"a"}',
    '[{"a":1},{"a":1}]',
    '{"a":["a","a"],"b":{"a":1}}',
    '"a"',
    '7',
    '{"a\\\\":1,"a":2}',
  ])('%s is let pass', (text) => expect(keyTroubleIn(text)).toBeNull());

  it('never stands in what JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(undefined, 2), (value, space) => {
        const text = JSON.stringify(value, null, space);
        if (!text.includes('"__proto__"')) expect(keyTroubleIn(text)).toBeNull();
      }),
      { numRuns: 500 },
    );
  });
});

describe('a project file', () => {
  it('with a key twice is refused with its place, and not read by guessing', () => {
    const twice = SAMPLE_TEXT.replace('  "regulated":', '  "regulated": false,\n  "regulated":');
    const line = twice.split('\n').findLastIndex((l) => l.includes('"regulated"')) + 1;
    const parsed = parseProject(twice);
    expect(parsed).toMatchObject({ ok: false, problem: { code: 'bad-json', line, column: 3 } });
    expect(parsed.ok ? '' : openProblemText(parsed.problem)).toContain('stands twice');
  });

  it('that is nested without end is refused, not overflowed', () => {
    const deep = `{"format":"latchwork-project","a":${'['.repeat(200_000)}${']'.repeat(200_000)}}`;
    expect(parseProject(deep)).toMatchObject({ ok: false, problem: { code: 'bad-json', line: 1 } });
  });
});
