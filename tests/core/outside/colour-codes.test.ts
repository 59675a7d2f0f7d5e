import { COLOUR_CODES, COLOUR_NAMES, parseColour } from '@latchwork/core/model/colour';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

interface Reference {
  codes: { confidence: string; rows: { code: string; colour: string }[] };
  old_german: { rows: Record<string, string> };
  traps: string[];
}
const reference = JSON.parse(
  readFileSync(new URL('../../files/reference/colour-codes.json', import.meta.url), 'utf8'),
) as Reference;

// IEC 60757:2021. Its rules were seen in a preview of the standard; the code list is from memory, not verified.
it('has the letter codes of IEC 60757 in the order of its table (list from memory)', () => {
  expect(reference.codes.confidence).toBe('memory');
  expect([...COLOUR_CODES]).toEqual(reference.codes.rows.map((r) => r.code));
});

it('names them as the standard does', () => {
  for (const { code, colour } of reference.codes.rows)
    expect(COLOUR_NAMES[code as keyof typeof COLOUR_NAMES]).toBe(colour.replace('-and-', '-'));
});

// IEC 60757:2021 clause 5.1: green and yellow are combined with each other only, as the protective conductor.
it('has green-yellow as one code and not as a base with a stripe of its own making', () => {
  expect(parseColour('GNYE')).toEqual({ ok: true, value: { base: 'GNYE' } });
});

// DIN 47002 letters are still met on drawings; read as IEC codes they would be wrong or nothing.
it.each(Object.keys(reference.old_german.rows).map((code) => [code.toUpperCase()]))(
  'does not take the old letters %s for a code',
  (code) => {
    const read = parseColour(code);
    if (!read.ok) expect(read.problem).toContain('not a colour code');
    // The one pair of letters that both lists have means the same in both.
    else expect(read.value).toEqual({ base: reference.old_german.rows[code.toLowerCase()] });
  },
);

it.each(['GR', 'OR', 'RDBU', 'RD/', '/RD', '', 'RED', '2'])('refuses "%s"', (text) => {
  expect(parseColour(text).ok).toBe(false);
});
