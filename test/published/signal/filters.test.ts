import { describe, expect, it } from 'vitest';
import { allBandEnergies, bandEnergies, biquad, decimate, filterThrough, gainAt, takeLogarithms } from '../../../src/methods/signal/index.ts';

describe('second-order filters', () => {
  it('give the recursive part of the RLB high-pass of ITU-R BS.1770-4, Table 2, at 48 kHz', () => {
    // a1 = -1.99004745483398, a2 = 0.99007225036621 as printed; the corner and quality that belong to them are those of
    // the analogue prototype in common use (38.13547 Hz, 0.500327), worked back from the table.
    const filter = biquad('high-pass', 38.13547087602444, 48_000, 0.5003270373238773);
    console.log('off by', filter.a1 + 1.99004745483398, filter.a2 - 0.99007225036621);
    expect(Math.abs(filter.a1 + 1.99004745483398)).toBeLessThan(5e-15 * 2);
    expect(Math.abs(filter.a2 - 0.99007225036621)).toBeLessThan(5e-15);
  });

  it('have the gains of their closed forms at the ends, the corner and off it', () => {
    const rate = 8000;
    for (const f of [50, 440, 1900, 3500]) {
      const [low, high, band, notch] = (['low-pass', 'high-pass', 'band-pass', 'notch'] as const).map((kind) => biquad(kind, f, rate, kind === 'band-pass' || kind === 'notch' ? 3 : undefined)) as [ReturnType<typeof biquad>, ReturnType<typeof biquad>, ReturnType<typeof biquad>, ReturnType<typeof biquad>];
      expect(gainAt(low, 1e-6, rate)).toBeCloseTo(1, 9);
      expect(gainAt(low, f, rate)).toBeCloseTo(Math.SQRT1_2, 9);
      expect(gainAt(high, f, rate)).toBeCloseTo(Math.SQRT1_2, 9);
      expect(gainAt(high, rate / 2, rate)).toBeCloseTo(1, 6);
      expect(gainAt(band, f, rate)).toBeCloseTo(1, 9);
      expect(gainAt(notch, f, rate)).toBeLessThan(1e-7);
      // Butterworth after the bilinear transform: 1 / sqrt(1 + (tan ratio)^4).
      const g = f * 0.6;
      const ratio = Math.tan((Math.PI * g) / rate) / Math.tan((Math.PI * f) / rate);
      expect(gainAt(low, g, rate)).toBeCloseTo(1 / Math.sqrt(1 + ratio ** 4), 9);
    }
  });

  it('filter a sine to the gain that they promise', () => {
    const rate = 8000;
    const filter = biquad('low-pass', 500, rate);
    const x = new Float64Array(16_000).map((_, i) => Math.sin((2 * Math.PI * 900 * i) / rate));
    const y = new Float64Array(x.length);
    filterThrough(filter, x, y);
    let power = 0;
    for (let i = 8000; i < 16_000; i++) power += y[i]! ** 2 / 8000;
    expect(Math.sqrt(2 * power)).toBeCloseTo(gainAt(filter, 900, rate), 4);
  });

  it('refuse corners outside the band', () => {
    expect(() => biquad('low-pass', 5000, 8000)).toThrow(/between 0 and half the rate/);
    expect(() => biquad('low-pass', NaN, 8000)).toThrow();
  });
});

describe('bands and thinning', () => {
  it('put a burst where it is, whatever the band', () => {
    const rate = 24_000;
    for (const [low, high] of [[60, 160], [420, 1000], [2400, 5500]] as const) {
      const centre = Math.sqrt(low * high);
      // A burst of Gaussian shape, wide enough for the band.
      const width = 1 / (high - low);
      const x = new Float32Array(rate).map((_, i) => Math.exp(-0.5 * ((i / rate - 0.5) / width) ** 2) * Math.cos(2 * Math.PI * centre * (i / rate - 0.5)));
      const energies = bandEnergies(x, low, high, rate, 12);
      let [sum, at] = [0, 0];
      energies.forEach((e, i) => {
        sum += e;
        at += (e * (i + 0.5)) / 2000;
      });
      expect(Math.abs(at / sum - 0.5)).toBeLessThan(0.15 / (high - low) + 0.0006);
    }
  });

  it('give the squares of one filter after the other, whatever bands are asked for together', () => {
    const rate = 24_000;
    const x = new Float32Array(12 * 700 + 5).map((_, i) => Math.sin(0.7 * i) + Math.sin(0.013 * i * i) + (i % 977 === 0 ? 3 : 0));
    for (const hop of [11, 12]) for (const bands of [[[60, 160]], [[420, 1000], [5500, 12_000]], [[60, 160], [1000, 2400], [2400, 5500]]] as [number, number][][]) {
      const rows = allBandEnergies(x, bands, rate, hop);
      bands.forEach(([low, high], b) => {
        const y = new Float64Array(x.length);
        filterThrough(biquad('high-pass', low, rate), x, y);
        if (high < 0.45 * rate) filterThrough(biquad('low-pass', high, rate), y, y);
        const frames = Math.floor(x.length / hop);
        const exact = Float64Array.from({ length: frames }, (_, f) => y.subarray(f * hop, (f + 1) * hop).reduce((sum, v) => sum + v * v, 0) / hop);
        // The rows are moved back by whole frames: the first one says by how many.
        const delay = exact.findIndex((value, f) => Math.abs(value - rows[b]![0]!) <= 1e-6 * value && Math.abs(exact[f + 9]! - rows[b]![9]!) <= 1e-6 * exact[f + 9]!);
        expect(delay).toBeGreaterThanOrEqual(0);
        for (let f = 0; f + delay < frames; f++) expect(Math.abs(rows[b]![f]! - exact[f + delay]!)).toBeLessThanOrEqual(1e-6 * exact[f + delay]!);
      });
    }
  });

  it('take logarithms as the language does, over all powers of two that a float holds', () => {
    const x = new Float32Array(60_000).map((_, i) => 1.2e-38 * 2 ** ((253 * i) / 60_000) * (1 + (i % 7) / 13));
    const y = x.slice();
    takeLogarithms(y);
    let worst = 0;
    x.forEach((value, i) => (worst = Math.max(worst, Math.abs(y[i]! - Math.log(value)) - 4e-6 * (Math.abs(y[i]!) > 32 ? 1 : Math.abs(y[i]!) / 32))));
    expect(worst).toBeLessThan(3e-8);
    expect(y[0]).toBeCloseTo(Math.log(1.2e-38), 4);
  });

  it('thin without delay, keep what is below and drop what would fold', () => {
    const rate = 48_000;
    const sine = (f: number): Float32Array => new Float32Array(9600).map((_, i) => Math.sin((2 * Math.PI * f * i) / rate));
    const kept = decimate(sine(3000), 2);
    for (let k = 200; k < 4600; k += 61) expect(Math.abs(kept[k]! - Math.sin((2 * Math.PI * 3000 * 2 * k) / rate))).toBeLessThan(2e-4);
    const folded = decimate(sine(15_000), 2);
    expect(Math.max(...folded.subarray(200, 4600).map(Math.abs))).toBeLessThan(2e-4);
  });
});
