import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sha256 } from '@latchwork/core/base/sha256';

// Examples of NIST for FIPS 180-4: no bits, 24 bits, 448 bits (two blocks), a million times "a".
test.each([
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'],
  ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
])('a published example', (text, hash) => {
  expect(sha256(text)).toBe(hash);
}); // prettier-ignore

test('is what Node says, for any text of any length', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
      expect(sha256(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
    }),
  );
  for (const n of [54, 55, 56, 57, 63, 64, 65, 119, 120])
    expect(sha256('x'.repeat(n))).toBe(createHash('sha256').update('x'.repeat(n)).digest('hex'));
  expect(sha256('\ud800x')).toBe(createHash('sha256').update('\ud800x', 'utf8').digest('hex'));
});
