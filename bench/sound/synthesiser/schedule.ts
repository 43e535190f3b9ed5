import { straightLine } from '../../../src/methods/signal/index.ts';
import { type NoiseSource } from './noise-source.ts';
import type { Recipe } from './recipe.ts';

export interface Stroke {
  /** s, where the blow falls */
  readonly time: number;
  /** s, where it would fall without jitter */
  readonly planned: number;
  readonly missed: boolean;
  readonly run: number;
  readonly runDown: boolean;
  /** dB against the usual blow */
  readonly level: number;
}

/** Times of all strokes of a recipe. */
export function schedule(recipe: Recipe, noise: NoiseSource): Stroke[] {
  const strokes: Stroke[] = [];
  const usual = 60 / recipe.strokes;
  recipe.runs.forEach((run, index) => {
    let wander = 0;
    let t = run.start;
    while (t < run.stop) {
      strokes.push(at(t, index, false, 0));
      const keep = Math.exp(-usual / 4);
      wander = wander * keep + recipe.wander * Math.sqrt(1 - keep * keep) * noise.normal();
      t += (usual / (1 + (recipe.drift * t) / 60)) * (1 + wander);
    }
    let period = usual / (1 + (recipe.drift * t) / 60);
    for (let k = 0; k < run.runDownStrokes; k++) {
      const before = period;
      period *= run.runDownGrowth;
      t += k === 0 ? period - before : period;
      if (t > recipe.seconds - 0.3) break;
      strokes.push(at(t, index, true, -1.2 * (k + 1)));
    }
  });
  return strokes;

  function at(planned: number, run: number, runDown: boolean, level: number): Stroke {
    return { time: planned + recipe.jitter * noise.normal(), planned, missed: noise.uniform() < recipe.misses && !runDown, run, runDown, level: level + 0.8 * noise.normal() };
  }
}

/**
 * Rate (strokes a minute) and drift (share a minute) of steady strokes, by least squares on their undisturbed times.
 * @param planned s, at least four
 */
export function steadyRate(planned: readonly number[]): { strokes: number; drift: number } | undefined {
  if (planned.length < 4) return undefined;
  const rates = planned.slice(1).map((t, i) => 60 / (t - planned[i]!));
  const line = straightLine(planned.map((_, i) => i), planned);
  const slope = straightLine(planned.slice(1), rates);
  return line && slope ? { strokes: 60 / line.slope, drift: (slope.slope * 60) / (60 / line.slope) } : undefined;
}
