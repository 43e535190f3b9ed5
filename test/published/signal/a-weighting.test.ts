import { expect, it } from 'vitest';
import { aWeightedMeanSquare, aWeightingDecibels } from '../../../src/methods/signal/index.ts';

/** IEC 61672-1:2013, table 3, nominal frequency (Hz) and A-weighting (dB), as printed (from memory of the table); exact frequencies are 1000 * 10^(n/10). */
const ROWS = [[-15, -39.4], [-12, -26.2], [-9, -16.1], [-6, -8.6], [-3, -3.2], [0, 0], [3, 1.2], [6, 1], [9, -1.1], [12, -6.6]] as const;

it('A-weighting, against IEC 61672-1, table 3', () => {
  let worst = 0;
  for (const [n, printed] of ROWS) worst = Math.max(worst, Math.abs(aWeightingDecibels(1000 * 10 ** (n / 10)) - printed));
  console.log('worst distance from the printed tenth', worst);
  expect(worst).toBeLessThan(0.051);
});

it('weights a recording of a tone as it weights the tone', () => {
  for (const [f, rate] of [[250, 44_100], [1000, 16_000], [4000, 48_000]] as const) {
    const tone = new Float32Array(rate * 2).map((_, i) => 0.3 * Math.sin((2 * Math.PI * f * i) / rate));
    expect(Math.abs(10 * Math.log10(aWeightedMeanSquare(tone, rate) / (0.3 ** 2 / 2)) - aWeightingDecibels(f))).toBeLessThan(0.03);
  }
});
