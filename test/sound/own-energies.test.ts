import { describe, expect, it } from 'vitest';
import { noiseSource } from '../../bench/sound/synthesiser/noise-source.ts';
import { ownEnergies } from '../../src/derived/sound/own-energies.ts';

/** Two machines of bare decaying noise, one over the other; what each puts into its first 10.5 ms follows from its decay. */
function twoMachines(seconds: number, machines: readonly { readonly every: number; readonly height: number; readonly decay: number }[]): { energies: readonly number[]; expected: readonly number[] } {
  const rate = 16_000;
  const chance = noiseSource(9);
  const samples = new Float32Array(seconds * rate);
  for (let i = 0; i < samples.length; i++) samples[i] = 0.01 * chance.normal();
  const rows = machines.map(({ every, height, decay }) => {
    const times: number[] = [];
    for (let t = 0.3 * every + 0.1; t < seconds - 0.5; t += every) {
      const at = Math.round((t + 0.002 * chance.normal()) * rate);
      times.push(at / rate);
      for (let i = 0; i < Math.min(6 * decay * rate, samples.length - at); i++) samples[at + i] = samples[at + i]! + height * Math.exp(-i / (decay * rate)) * chance.normal();
    }
    return times;
  });
  const hop = rate / 2000;
  const meanSquares = Float32Array.from({ length: samples.length / hop }, (_, f) => samples.subarray(f * hop, (f + 1) * hop).reduce((sum, x) => sum + x * x, 0) / hop);
  // Frames of 3 ms: from the onset, which lies anywhere in its own, to the end of the third after it: 10.5 ms on the average.
  return { energies: ownEnergies(meanSquares, 2000, rows), expected: machines.map(({ height, decay }) => ((height ** 2 * decay) / 2) * (1 - Math.exp(-0.021 / decay))) };
}

describe('how loud each of two machines is that strike into one another', () => {
  it('is told apart to a decibel, though the fainter one rings on into every blow of the other', () => {
    const { energies, expected } = twoMachines(30, [{ every: 0.31, height: 0.2, decay: 0.02 }, { every: 0.2371, height: 0.1, decay: 0.12 }]);
    energies.forEach((energy, i) => expect(Math.abs(10 * Math.log10(energy / expected[i]!))).toBeLessThan(1));
  });

  it('is nothing for blows that were never struck', () => {
    const { energies } = twoMachines(30, [{ every: 0.31, height: 0.2, decay: 0.02 }, { every: 0.2371, height: 0, decay: 0.02 }]);
    expect(energies[1]! / energies[0]!).toBeLessThan(0.02);
  });
});
