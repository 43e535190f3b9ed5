/**
 * A seeded generator: xoshiro128** (Blackman and Vigna, "Scrambled linear pseudorandom number generators",
 * ACM Trans. Math. Softw. 47:36, 2021; period 2^128 - 1). Its whole state is these four words, so a copy of the
 * object replays the same draws. Draws advance the object they are given.
 */
export interface Generator {
  a: number;
  b: number;
  c: number;
  d: number;
}

const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/** One step of a 32-bit mixing sequence (the finaliser of MurmurHash3 on a Weyl sequence); used for seeding only. */
function mixed(word: number): number {
  let z = word | 0;
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
  return (z ^ (z >>> 16)) >>> 0;
}

/**
 * A generator at the start of its sequence.
 * @param seed a whole number 0 to 2^53 - 1
 * @param stream names an independent sequence of the same seed, so that one question added does not move the draws of another
 */
export function seeded(seed: number, stream = ''): Generator {
  if (!Number.isSafeInteger(seed) || seed < 0) throw new Error(`A seed must be a whole number from 0 to 2^53 - 1: ${seed}`);
  let word = mixed(seed >>> 0) ^ mixed(Math.floor(seed / 4294967296) + 0x51ed270b);
  // FNV-1a over the name's code units.
  let name = 0x811c9dc5;
  for (let i = 0; i < stream.length; i++) name = Math.imul(name ^ stream.charCodeAt(i), 0x01000193);
  const words = [0, 1, 2, 3].map((i) => {
    word = (word + 0x9e3779b9) | 0;
    return mixed(word ^ mixed(name + i));
  });
  const [a = 1, b = 0, c = 0, d = 0] = words;
  // All words zero is the one state that the sequence never leaves.
  return (a | b | c | d) === 0 ? { a: 1, b: 0, c: 0, d: 0 } : { a, b, c, d };
}

/** The next word, 0 to 2^32 - 1; advances the generator. */
export function nextWord(generator: Generator): number {
  const { b } = generator;
  const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
  const t = b << 9;
  generator.c ^= generator.a;
  generator.d ^= b;
  generator.b ^= generator.c;
  generator.a ^= generator.d;
  generator.c ^= t;
  generator.d = rotate(generator.d, 11);
  return result;
}

/** A number between 0 and 1 with 52 bits, never 0 and never 1, so that every quantile of it is finite. */
export function nextUniform(generator: Generator): number {
  const high = nextWord(generator) >>> 6;
  const low = nextWord(generator) >>> 6;
  return (high * 67108864 + low + 0.5) / 4503599627370496;
}

/**
 * A whole number from 0 to below `count`, each equally likely (words that would favour some are drawn again).
 * @param count 1 to 2^32
 */
export function nextBelow(generator: Generator, count: number): number {
  if (!Number.isInteger(count) || count < 1 || count > 4294967296) throw new Error(`A count must be a whole number from 1 to 2^32: ${count}`);
  const unfair = 4294967296 % count;
  for (;;) {
    const word = nextWord(generator);
    if (word >= unfair) return word % count;
  }
}
