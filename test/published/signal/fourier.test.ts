import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { autocorrelation, convolve, RealFourier, transformSize } from '../../../src/methods/signal/index.ts';
import { noiseSource } from '../../../bench/sound/synthesiser/noise-source.ts';

/** The sum that defines the transform, term by term. */
function direct(x: Float64Array): { re: number[]; im: number[] } {
  const n = x.length;
  const re: number[] = [];
  const im: number[] = [];
  for (let k = 0; k <= n / 2; k++) {
    let [a, b] = [0, 0];
    for (let i = 0; i < n; i++) {
      const angle = (2 * Math.PI * ((k * i) % n)) / n;
      a += x[i]! * Math.cos(angle);
      b -= x[i]! * Math.sin(angle);
    }
    re.push(a);
    im.push(b);
  }
  return { re, im };
}

const random = (n: number, seed: number): Float64Array => {
  const draw = noiseSource(seed);
  return new Float64Array(n).map(() => draw.normal());
};

describe('real Fourier transform', () => {
  it('agrees with the defining sum, for every size to 1024, three times a power of two among them', () => {
    let worst = 0;
    for (const n of [4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 256, 384, 512, 768, 1024]) {
      const fourier = new RealFourier(n);
      const x = random(n, n);
      const [re, im] = [new Float64Array(fourier.bins), new Float64Array(fourier.bins)];
      fourier.forward(x, re, im);
      const exact = direct(x);
      for (let k = 0; k < fourier.bins; k++) worst = Math.max(worst, Math.abs(re[k]! - exact.re[k]!) / n, Math.abs(im[k]! - exact.im[k]!) / n);
    }
    console.log('worst distance from the defining sum, per sample', worst);
    expect(worst).toBeLessThan(1e-14);
  });

  it('gives the closed forms of a click, a cosine and a decay', () => {
    const n = 256;
    const fourier = new RealFourier(n);
    const [re, im] = [new Float64Array(fourier.bins), new Float64Array(fourier.bins)];
    const at = 5;
    fourier.forward(new Float64Array(n).map((_, i) => (i === at ? 1 : 0)), re, im);
    for (let k = 0; k < fourier.bins; k++) {
      expect(re[k]).toBeCloseTo(Math.cos((2 * Math.PI * k * at) / n), 13);
      expect(im[k]).toBeCloseTo(-Math.sin((2 * Math.PI * k * at) / n), 13);
    }
    fourier.forward(new Float64Array(n).map((_, i) => Math.cos((2 * Math.PI * 17 * i) / n + 0.3)), re, im);
    expect(re[17]).toBeCloseTo((n / 2) * Math.cos(0.3), 10);
    expect(im[17]).toBeCloseTo((n / 2) * Math.sin(0.3), 10);
    expect(Math.abs(re[18]!)).toBeLessThan(1e-10);
    // Geometric series: (1 - a^n) / (1 - a e^-iw).
    const a = 0.9;
    fourier.forward(new Float64Array(n).map((_, i) => a ** i), re, im);
    for (const k of [0, 1, 50, 128]) {
      const w = (2 * Math.PI * k) / n;
      const [c, d] = [1 - a * Math.cos(w), a * Math.sin(w)];
      expect(re[k]).toBeCloseTo(((1 - a ** n) * c) / (c * c + d * d), 11);
      expect(im[k]).toBeCloseTo((-(1 - a ** n) * d) / (c * c + d * d), 11);
    }
  });

  it('takes a few samples in a long row of zeros for what they are', () => {
    for (const n of [192, 256, 768]) for (const count of [1, 2, 5, 16, 47, 64]) {
      const fourier = new RealFourier(n);
      const x = random(n, n + count);
      const [re, im] = [new Float64Array(fourier.bins), new Float64Array(fourier.bins)];
      fourier.forward(x, re, im, 0, count);
      const exact = direct(x.map((value, i) => (i < count ? value : 0)));
      for (let k = 0; k < fourier.bins; k++) {
        expect(Math.abs(re[k]! - exact.re[k]!)).toBeLessThan(1e-12);
        expect(Math.abs(im[k]! - exact.im[k]!)).toBeLessThan(1e-12);
      }
    }
  });

  it('comes back, and keeps the energy (Parseval), for any samples', () => {
    fc.assert(fc.property(fc.integer({ min: 2, max: 11 }), fc.constantFrom(1, 3), fc.integer({ min: 1, max: 1e6 }), (bits, odd, seed) => {
      const n = odd * 2 ** bits;
      const fourier = new RealFourier(n);
      const x = random(n, seed);
      const [re, im, back] = [new Float64Array(fourier.bins), new Float64Array(fourier.bins), new Float64Array(n)];
      fourier.forward(x, re, im);
      let energy = 0;
      for (let k = 0; k < fourier.bins; k++) energy += ((k === 0 || k === n / 2 ? 1 : 2) * (re[k]! ** 2 + im[k]! ** 2)) / n;
      expect(energy).toBeCloseTo(x.reduce((s, v) => s + v * v, 0), 8);
      fourier.inverse(re, im, back);
      for (let i = 0; i < n; i++) expect(Math.abs(back[i]! - x[i]!)).toBeLessThan(1e-12);
    }), { numRuns: 60 });
  });

  it('refuses a size that is neither a power of two nor three times one', () => {
    for (const size of [0, 2, 3, 6, 36, 100, 1.5, NaN]) expect(() => new RealFourier(size)).toThrow(/power of two/);
  });
});

describe('the size of a transform', () => {
  it('is the least of its kind that holds the row', () => {
    expect([1, 4, 5, 12, 13, 16, 17, 24, 25, 4097, 6144, 6145].map(transformSize)).toEqual([4, 4, 8, 12, 16, 16, 24, 24, 32, 6144, 6144, 8192]);
  });
});

describe('what rests on it', () => {
  it('convolves as the double sum does', () => {
    const [x, h] = [random(3000, 1), random(700, 2)];
    const fast = convolve(x, h);
    let worst = 0;
    for (let i = 0; i < x.length; i += 7) {
      let sum = 0;
      for (let j = 0; j < h.length && j <= i; j++) sum += h[j]! * x[i - j]!;
      worst = Math.max(worst, Math.abs(sum - fast[i]!));
    }
    expect(worst).toBeLessThan(1e-10);
  });

  it('correlates as the double sum does', () => {
    const x = random(500, 3);
    const mean = x.reduce((a, b) => a + b, 0) / x.length;
    const fast = autocorrelation(x, 100);
    const at = (lag: number): number => {
      let sum = 0;
      for (let i = 0; i + lag < x.length; i++) sum += (x[i]! - mean) * (x[i + lag]! - mean);
      return sum / (x.length - lag);
    };
    for (const lag of [0, 1, 2, 17, 100]) expect(fast[lag]).toBeCloseTo(at(lag) / at(0), 10);
    expect([...autocorrelation(new Float64Array(20).fill(3), 5)]).toEqual([0, 0, 0, 0, 0, 0]);
  });
});
