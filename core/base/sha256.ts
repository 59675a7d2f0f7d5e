/** Bytes that are gathered before they are worked in: whole blocks, and one more that encoding may run into. */
const GATHERED = 1 << 14;
const BLOCK = 64;

/**
 * SHA-256 of a text in UTF-8, as 64 hexadecimal digits (FIPS 180-4). Written out here because core knows neither the
 * window's nor Node's cryptography, and documents need the hash at once.
 */
export function sha256(text: string): string {
  const hash = Int32Array.from(START);
  const bytes = new Uint8Array(GATHERED + BLOCK);
  let n = 0;
  let before = 0;
  for (let i = 0; i < text.length; i++) {
    let code = text.charCodeAt(i);
    if (code < 0x80) bytes[n++] = code;
    else {
      if (code >= 0xd800 && code <= 0xdfff) {
        const whole = text.codePointAt(i) as number;
        // Half a surrogate pair becomes the replacement character, as in every UTF-8 encoder.
        code = whole > 0xffff ? whole : 0xfffd;
        if (whole > 0xffff) i++;
      }
      n = putManyBytes(bytes, n, code);
    }
    if (n < GATHERED) continue;
    addBlocks(hash, bytes, GATHERED);
    bytes.copyWithin(0, GATHERED, n);
    n -= GATHERED;
    before += GATHERED;
  }
  addBlocks(hash, bytes, pad(bytes, n, before + n));
  return Array.from(hash, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

/** A character beyond ASCII from byte `n` on; the answer is where the next one goes. */
function putManyBytes(bytes: Uint8Array, n: number, code: number): number {
  if (code < 0x800) bytes[n++] = 0xc0 | (code >> 6);
  else {
    if (code < 0x10000) bytes[n++] = 0xe0 | (code >> 12);
    else {
      bytes[n++] = 0xf0 | (code >> 18);
      bytes[n++] = 0x80 | ((code >> 12) & 63);
    }
    bytes[n++] = 0x80 | ((code >> 6) & 63);
  }
  bytes[n++] = 0x80 | (code & 63);
  return n;
}

/** A one bit, zeros up to the last eight bytes of a block, and the length in bits. The answer is where that ends. */
function pad(bytes: Uint8Array, n: number, total: number): number {
  const end = (((n + 8) >> 6) + 1) << 6;
  bytes.fill(0, n, end);
  bytes[n] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(end - 8, Math.floor(total / 0x2000_0000));
  view.setUint32(end - 4, (total << 3) >>> 0);
  return end;
}

const w = new Int32Array(64);

/** The loop that long texts spend their time in: signed words and nothing but locals, so that engines keep them in registers. */
function addBlocks(hash: Int32Array, bytes: Uint8Array, end: number): void {
  let h0 = hash[0] as number;
  let h1 = hash[1] as number;
  let h2 = hash[2] as number;
  let h3 = hash[3] as number;
  let h4 = hash[4] as number;
  let h5 = hash[5] as number;
  let h6 = hash[6] as number;
  let h7 = hash[7] as number;
  for (let at = 0; at < end; at += BLOCK) {
    for (let t = 0, i = at; t < 16; t++, i += 4)
      w[t] =
        ((bytes[i] as number) << 24) |
        ((bytes[i + 1] as number) << 16) |
        ((bytes[i + 2] as number) << 8) |
        (bytes[i + 3] as number);
    for (let t = 16; t < 64; t++) {
      const x = w[t - 15] as number;
      const y = w[t - 2] as number;
      const s0 = ((x >>> 7) | (x << 25)) ^ ((x >>> 18) | (x << 14)) ^ (x >>> 3);
      const s1 = ((y >>> 17) | (y << 15)) ^ ((y >>> 19) | (y << 13)) ^ (y >>> 10);
      w[t] = ((((w[t - 16] as number) + s0) | 0) + (((w[t - 7] as number) + s1) | 0)) | 0;
    }
    let a = h0;
    let b = h1;
    let c = h2;
    let d = h3;
    let e = h4;
    let f = h5;
    let g = h6;
    let h = h7;
    for (let t = 0; t < 64; t++) {
      const s1 = ((e >>> 6) | (e << 26)) ^ ((e >>> 11) | (e << 21)) ^ ((e >>> 25) | (e << 7));
      const choice = g ^ (e & (f ^ g));
      const t1 = (((((h + s1) | 0) + choice) | 0) + (((ROUND[t] as number) + (w[t] as number)) | 0)) | 0;
      const s0 = ((a >>> 2) | (a << 30)) ^ ((a >>> 13) | (a << 19)) ^ ((a >>> 22) | (a << 10));
      const majority = (a & b) | (c & (a | b));
      h = g;
      g = f;
      f = e;
      e = (d + t1) | 0;
      d = c;
      c = b;
      b = a;
      a = (t1 + ((s0 + majority) | 0)) | 0;
    }
    h0 = (h0 + a) | 0;
    h1 = (h1 + b) | 0;
    h2 = (h2 + c) | 0;
    h3 = (h3 + d) | 0;
    h4 = (h4 + e) | 0;
    h5 = (h5 + f) | 0;
    h6 = (h6 + g) | 0;
    h7 = (h7 + h) | 0;
  }
  hash.set([h0, h1, h2, h3, h4, h5, h6, h7]);
}

/** First 32 bits of the fractions of the square roots of the first 8 primes, and of the cube roots of the first 64. */
const START = firstPrimes(8).map((p) => fraction32(Math.sqrt(p)));
const ROUND = Int32Array.from(firstPrimes(64).map((p) => fraction32(Math.cbrt(p))));

function fraction32(x: number): number {
  return Math.floor((x - Math.floor(x)) * 0x1_0000_0000) | 0;
}

function firstPrimes(count: number): number[] {
  const primes: number[] = [];
  for (let n = 2; primes.length < count; n++) if (primes.every((p) => n % p !== 0)) primes.push(n);
  return primes;
}
