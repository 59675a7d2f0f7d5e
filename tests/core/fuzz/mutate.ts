import { between } from '../../generate/harness/random';

type Random = () => number;

/** What makes readers stumble: ends of ranges, other encodings, what programs mean by it. */
const NASTY = [
  '', '"', '""', '\\', '\0', '\r', '\n', '\r\n', '\t', ',', ';', '{', '}', '[', ']', ':', 'null', 'true', '-0', '1e999', '-1e-999', 'NaN',
  '99999999999999999999', '0x10', '__proto__', 'constructor', 'prototype', 'toString', '"__proto__":{"polluted":1},', '"constructor":{"prototype":{"polluted":1}},',
  '\\u0000', '\\ud800', '\ufeff', '\u202e', '\u2028', '<![CDATA[', ']]>', '<!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/hosts">]>', '&e;', '=1+1', '@SUM(A1)', '🧵',
  '['.repeat(2000), '{"a":'.repeat(500), 'a'.repeat(5000), '1'.repeat(400), ',,,,,,,,', '"\n"', '-', '+', '.', '1.5.2', '22 AWG', '0.35 mm2', 'RD/BU',
]; // prettier-ignore

/** One to three injuries: bytes flipped, taken out, put in, doubled, exchanged, cut off. The same random numbers give the same. */
export function mutated(bytes: Buffer, random: Random): Buffer {
  let out = bytes;
  for (let n = between(random, 1, 4); n > 0; n--) out = injured(out, random);
  return out;
}

function injured(bytes: Buffer, random: Random): Buffer {
  const at = between(random, 0, bytes.length + 1);
  const to = Math.min(bytes.length, at + between(random, 1, 40));
  const cut = (middle: Buffer, from = at, end = to): Buffer =>
    Buffer.concat([bytes.subarray(0, from), middle, bytes.subarray(end)]);
  switch (between(random, 0, 12)) {
    case 0:
      return cut(Buffer.from([between(random, 0, 256)]), at, at + 1);
    case 1:
      return cut(Buffer.alloc(0));
    case 2:
      return cut(bytes.subarray(at, to), at, at);
    case 3: {
      const from = between(random, 0, bytes.length + 1);
      return cut(bytes.subarray(from, from + between(random, 1, 60)));
    }
    case 4:
      return bytes.subarray(0, at);
    case 5:
    case 6:
    case 7:
    case 8:
      return wordsExchanged(bytes, random);
    default:
      return cut(
        Buffer.from(NASTY[between(random, 0, NASTY.length)] as string),
        at,
        at + between(random, 0, 3),
      );
  }
}

/** A whole value in the place of another, so that the text stays readable and goes deeper into the program. */
function wordsExchanged(bytes: Buffer, random: Random): Buffer {
  const text = bytes.toString('utf8');
  const words = [...text.matchAll(/"[^"\\\n]*"|-?\d+(?:\.\d+)?|true|false|null|[A-Za-z_]+/g)];
  const target = words[between(random, 0, words.length)];
  const source = words[between(random, 0, words.length)];
  if (!target || !source) return bytes;
  const word = random() < 0.5 ? source[0] : JSON.stringify(NASTY[between(random, 0, NASTY.length)]);
  return Buffer.from(text.slice(0, target.index) + word + text.slice(target.index + target[0].length));
}
