/**
 * Draws for bootstraps and made-up signals, the same for the same seed wherever integers are.
 * The generator is sfc32 (C. Doty-Humphrey, PractRand: small fast counting generator, 32 bits).
 */
export interface NoiseSource {
  /** Uniform in [0, 1), 32 bits fine. */
  uniform(): number;
  /** Normal with mean 0 and spread 1 (Marsaglia's polar method, SIAM Review 6 (1964) 260). */
  normal(): number;
  /** Uniform between two numbers. */
  between(low: number, high: number): number;
  /** One of several, evenly. */
  oneOf<T>(choices: readonly T[]): T;
}

/** @param seed any whole number up to 2^53 */
export function noiseSource(seed: number): NoiseSource {
  let a = seed >>> 0;
  let b = Math.floor(seed / 4294967296) >>> 0;
  let c = 0x9e3779b9;
  let counter = 1;
  let spare: number | undefined;
  const next = (): number => {
    const t = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + t;
    return t >>> 0;
  };
  for (let i = 0; i < 16; i++) next();
  const uniform = (): number => next() / 4294967296;
  return {
    uniform,
    normal() {
      if (spare !== undefined) {
        const kept = spare;
        spare = undefined;
        return kept;
      }
      for (;;) {
        const x = 2 * uniform() - 1;
        const y = 2 * uniform() - 1;
        const r = x * x + y * y;
        if (r > 0 && r < 1) {
          const scale = Math.sqrt((-2 * Math.log(r)) / r);
          spare = y * scale;
          return x * scale;
        }
      }
    },
    between: (low, high) => low + (high - low) * uniform(),
    oneOf: (choices) => {
      const chosen = choices[Math.min(choices.length - 1, Math.floor(uniform() * choices.length))];
      if (chosen === undefined) throw new Error('There is nothing to choose from.');
      return chosen;
    },
  };
}
