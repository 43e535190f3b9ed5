/** Fractional parts of the roots of the first primes, reckoned rather than copied: FIPS 180-4, sections 4.2.2 and 5.3.3. */
const PRIMES = firstPrimes(64);
const ROUND = Uint32Array.from(PRIMES, (prime) => fractionBits(prime, 3n));
const START = Uint32Array.from(PRIMES.slice(0, 8), (prime) => fractionBits(prime, 2n));

function firstPrimes(count: number): readonly number[] {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate += 1) {
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  }
  return primes;
}

/** First 32 bits of the fraction of a root, by whole numbers so that no rounding can enter. */
function fractionBits(prime: number, degree: 2n | 3n): number {
  const scaled = BigInt(prime) << (32n * degree);
  let low = 0n;
  let high = 1n << 40n;
  while (high - low > 1n) {
    const middle = (low + high) >> 1n;
    if (middle ** degree <= scaled) low = middle;
    else high = middle;
  }
  return Number(low & 0xffffffffn);
}

const turned = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

/**
 * SHA-256 of bytes. Source: FIPS 180-4, sections 5.1.1 and 6.2.
 * @param bytes the message, up to 2^50 bytes
 * @returns 32 bytes
 */
export function sha256(bytes: Uint8Array): Uint8Array {
  const padded = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 0x20000000));
  view.setUint32(padded.length - 4, (bytes.length * 8) >>> 0);
  const state = Uint32Array.from(START);
  const words = new Uint32Array(64);
  for (let block = 0; block < padded.length; block += 64) mixBlock(state, words, view, block);
  const digest = new Uint8Array(32);
  const out = new DataView(digest.buffer);
  state.forEach((word, index) => out.setUint32(index * 4, word));
  return digest;
}

function mixBlock(state: Uint32Array, words: Uint32Array, view: DataView, block: number): void {
  for (let index = 0; index < 16; index += 1) words[index] = view.getUint32(block + index * 4);
  for (let index = 16; index < 64; index += 1) {
    const near = words[index - 2]!;
    const far = words[index - 15]!;
    const nearMix = turned(near, 17) ^ turned(near, 19) ^ (near >>> 10);
    const farMix = turned(far, 7) ^ turned(far, 18) ^ (far >>> 3);
    words[index] = (words[index - 16]! + farMix + words[index - 7]! + nearMix) | 0;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
  for (let index = 0; index < 64; index += 1) {
    const first = (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + ((e & f) ^ (~e & g)) + ROUND[index]! + words[index]!) | 0;
    const second = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + first) | 0;
    d = c;
    c = b;
    b = a;
    a = (first + second) | 0;
  }
  [a, b, c, d, e, f, g, h].forEach((word, index) => {
    state[index] = (state[index]! + word) | 0;
  });
}

/** Bytes as lower-case hexadecimal. */
export const hexOf = (bytes: Uint8Array): string => Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
