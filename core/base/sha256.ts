/**
 * SHA-256 of a text in UTF-8, as 64 hexadecimal digits (FIPS 180-4). Written out here because core knows neither the
 * window's nor Node's cryptography, and documents need the hash at once.
 */
export function sha256(text: string): string {
  const bytes = padded(utf8(text));
  const words = new DataView(bytes.buffer);
  const h = Uint32Array.from(START);
  const w = new Uint32Array(64);
  for (let at = 0; at < bytes.length; at += 64) {
    for (let t = 0; t < 16; t++) w[t] = words.getUint32(at + 4 * t);
    for (let t = 16; t < 64; t++) {
      const x = w[t - 15] as number;
      const y = w[t - 2] as number;
      const s0 = turn(x, 7) ^ turn(x, 18) ^ (x >>> 3);
      const s1 = turn(y, 17) ^ turn(y, 19) ^ (y >>> 10);
      w[t] = (w[t - 16] as number) + s0 + (w[t - 7] as number) + s1;
    }
    addBlock(h, w);
  }
  return [...h].map((n) => n.toString(16).padStart(8, '0')).join('');
}

function addBlock(hash: Uint32Array, w: Uint32Array): void {
  let a = hash[0] as number;
  let b = hash[1] as number;
  let c = hash[2] as number;
  let d = hash[3] as number;
  let e = hash[4] as number;
  let f = hash[5] as number;
  let g = hash[6] as number;
  let h = hash[7] as number;
  for (let t = 0; t < 64; t++) {
    const t1 =
      (h +
        (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) +
        ((e & f) ^ (~e & g)) +
        (ROUND[t] as number) +
        (w[t] as number)) |
      0;
    const t2 = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + t1) | 0;
    d = c;
    c = b;
    b = a;
    a = (t1 + t2) | 0;
  }
  hash[0] = (hash[0] as number) + a;
  hash[1] = (hash[1] as number) + b;
  hash[2] = (hash[2] as number) + c;
  hash[3] = (hash[3] as number) + d;
  hash[4] = (hash[4] as number) + e;
  hash[5] = (hash[5] as number) + f;
  hash[6] = (hash[6] as number) + g;
  hash[7] = (hash[7] as number) + h;
}

const turn = (x: number, n: number): number => (x >>> n) | (x << (32 - n));

/** A one bit, zeros up to the last eight bytes of a block, and the length in bits. */
function padded(bytes: Uint8Array): Uint8Array {
  const out = new Uint8Array((((bytes.length + 8) >> 6) + 1) << 6);
  out.set(bytes);
  out[bytes.length] = 0x80;
  const view = new DataView(out.buffer);
  view.setUint32(out.length - 8, Math.floor(bytes.length / 0x2000_0000));
  view.setUint32(out.length - 4, (bytes.length << 3) >>> 0);
  return out;
}

/** Half a surrogate pair becomes the replacement character, as in every UTF-8 encoder. */
function utf8(text: string): Uint8Array {
  const out = new Uint8Array(text.length * 3);
  let n = 0;
  for (let i = 0; i < text.length; i++) {
    let code = text.codePointAt(i) as number;
    if (code > 0xffff) i++;
    else if (code >= 0xd800 && code <= 0xdfff) code = 0xfffd;
    if (code < 0x80) out[n++] = code;
    else if (code < 0x800) {
      out[n++] = 0xc0 | (code >> 6);
      out[n++] = 0x80 | (code & 63);
    } else if (code < 0x10000) {
      out[n++] = 0xe0 | (code >> 12);
      out[n++] = 0x80 | ((code >> 6) & 63);
      out[n++] = 0x80 | (code & 63);
    } else {
      out[n++] = 0xf0 | (code >> 18);
      out[n++] = 0x80 | ((code >> 12) & 63);
      out[n++] = 0x80 | ((code >> 6) & 63);
      out[n++] = 0x80 | (code & 63);
    }
  }
  return out.subarray(0, n);
}

/** First 32 bits of the fractions of the square roots of the first 8 primes, and of the cube roots of the first 64. */
const START = firstPrimes(8).map((p) => fraction32(Math.sqrt(p)));
const ROUND = Uint32Array.from(firstPrimes(64).map((p) => fraction32(Math.cbrt(p))));

function fraction32(x: number): number {
  return Math.floor((x - Math.floor(x)) * 0x1_0000_0000);
}

function firstPrimes(count: number): number[] {
  const primes: number[] = [];
  for (let n = 2; primes.length < count; n++) if (primes.every((p) => n % p !== 0)) primes.push(n);
  return primes;
}
