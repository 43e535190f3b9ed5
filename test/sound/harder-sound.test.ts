import { describe, expect, it } from 'vitest';
import { recipeSet, synthesise } from '../../bench/sound/synthesiser/index.ts';
import { score } from '../../bench/sound/score.ts';
import { brighterBy } from '../../src/derived/sound/harder-sound.ts';
import { analyseBeat } from '../../src/derived/sound/index.ts';

/** A folded turn of still air with a sound at each of two places, given by band. */
function twoSounds(first: readonly number[], second: readonly number[]): Parameters<typeof brighterBy>[0] {
  const [bands, places, blows, step] = [first.length, 101, 3, 0.0005];
  const logs = new Float32Array(blows * bands * places).fill(Math.log(1e-6));
  for (let blow = 0; blow < blows; blow++) for (let band = 0; band < bands; band++) for (const [place, energies] of [[30, first], [70, second]] as const)
    logs.fill(Math.log(energies[band]!), (blow * bands + band) * places + place - 1, (blow * bands + band) * places + place + 17);
  return { firstDelay: 0, step, places, bands, blows, logs, means: new Float64Array(bands * places) };
}

describe('which of two sounds is the harder blow', () => {
  it('is told by the upper half of the bands, in decibels, either way round', () => {
    // Below, the second has less; above, 3 and 5 dB more, 4 on the average.
    const [first, second] = [[1, 0.7, 0.3, 0.2], [0.5, 0.1, 0.3 * 10 ** 0.3, 0.2 * 10 ** 0.5]];
    expect(brighterBy(twoSounds(first, second), 30, 70)).toBeCloseTo(4, 3);
    expect(brighterBy(twoSounds(second, first), 30, 70)).toBeCloseTo(-4, 3);
  });

  it.each([191082, 191087])('reads made-up recording %i from its blow, where the energies alone took the softer sound', { timeout: 60_000 }, (seed) => {
    const made = synthesise(recipeSet(191000).find((recipe) => recipe.seed === seed)!);
    const read = analyseBeat(made.samples, made.rate);
    expect(read.state === 'heard' ? score(read.strokes.map((stroke) => stroke.time), made.truth.blows).f25 : 0).toBeGreaterThan(0.95);
  });
});
