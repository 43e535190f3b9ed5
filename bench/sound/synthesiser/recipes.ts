import { noiseSource } from './noise-source.ts';
import type { Material, Recipe, SecondRecipe } from './recipe.ts';

const MATERIALS: readonly Material[] = ['steel', 'ringing', 'hot', 'wood'];

/**
 * A set of recipes that goes through everything the reader of recordings has to stand: levels of second sounds, noise,
 * rooms, other machines, belts, stopping and starting, damage and codecs.
 * @param seed first seed; sets with seeds 1,000 apart share nothing
 * @param scale 1 gives 211 recipes; smaller numbers thin every group evenly
 */
export function recipeSet(seed: number, scale = 1): Recipe[] {
  const out: Recipe[] = [];
  let index = 0;
  const add = (group: string, count: number, change: (base: Recipe, i: number, draw: ReturnType<typeof noiseSource>) => Partial<Recipe>): void => {
    const number = Math.max(1, Math.round(count * scale));
    for (let i = 0; i < number; i++) {
      const own = seed + index++;
      const draw = noiseSource(own * 7919 + 17);
      const base = baseRecipe(own, MATERIALS[i % 4]!, draw);
      const recipe = { ...base, group, ...change(base, i, draw) };
      out.push({ ...recipe, name: `${group} ${own}` });
    }
  };
  const quiet = [12, 18, 25];
  add('single', 40, (_, i) => ({ signalToNoise: quiet[i % 3]! }));
  add('wall echo', 8, (base, i, draw) => ({ signalToNoise: quiet[i % 3]!, room: { ...base.room, echo: { delay: draw.between(0.025, 0.07), level: draw.between(-14, -4) } } }));
  for (const snr of [3, 0, -5]) add(`noise ${snr} dB`, 4, () => ({ signalToNoise: snr }));
  add('other machine', 12, (base, i, draw) => ({ signalToNoise: quiet[i % 3]!, other: { perMinute: otherRate(base.strokes, draw), level: draw.between(-10, -3), material: draw.oneOf(MATERIALS) } }));
  add('belt and clanks', 8, (_, i, draw) => ({ signalToNoise: quiet[i % 3]!, belt: { perMinute: draw.between(75, 110), level: draw.between(-14, -6) }, clanks: { perMinute: draw.between(5, 40), level: draw.between(-10, 0) } }));
  for (const [level, count] of [[-3, 12], [-6, 15], [-10, 37], [-15, 12], [-20, 12], [-25, 8], [-30, 8]] as const)
    add(`double ${level} dB`, count, (base, i, draw) => ({ signalToNoise: [12, 18, 25, 3][i % (level === -10 ? 8 : 4)] ?? quiet[i % 3]!, second: secondOf(base, level, 1, draw) }));
  add('intermittent double', 6, (base, i, draw) => ({ signalToNoise: quiet[i % 3]!, second: secondOf(base, -8, [0.7, 0.5, 0.3][i % 3]!, draw) }));
  add('stop and start', 10, (base, i, draw) => ({ signalToNoise: quiet[i % 3]!, ...stops(base, draw) }));
  add('belt only', 4, (_, i, draw) => ({ signalToNoise: quiet[i % 3]!, silentHammer: true, belt: { perMinute: draw.between(75, 110), level: 0 } }));
  const codecs = ['gsm', 'opus-16k', 'aac-32k', 'mp3-48k'] as const;
  add('codec', 12, (base, i) => ({ signalToNoise: quiet[i % 3]!, codec: codecs[i % 4]!, ...(codecs[i % 4] === 'gsm' && { rate: 8000, room: base.room }) }));
  add('clipped with gain control', 7, (_, i, draw) => ({ signalToNoise: quiet[i % 3]!, clip: draw.between(3, 10), automaticGain: i % 2 === 0, lowCut: draw.between(80, 200) }));
  return out;
}

function baseRecipe(seed: number, material: Material, draw: ReturnType<typeof noiseSource>): Recipe {
  const seconds = draw.between(20, 60);
  return {
    name: '', group: '', seed, seconds, rate: draw.oneOf([48000, 44100, 48000, 44100, 16000, 22050]),
    strokes: draw.between(120, 450), jitter: draw.oneOf([0.0005, 0.001, 0.002, 0.003, 0.006]),
    drift: draw.oneOf([0, 0, draw.between(-0.12, 0.12)]), wander: draw.oneOf([0, 0.002, 0.005]), misses: draw.oneOf([0, 0, 0, 0.03, 0.08]),
    material, runs: [{ start: draw.between(0.1, 1.5), stop: seconds - 0.2, runDownStrokes: 0, runDownGrowth: 1 }],
    room: { decay: draw.between(0.3, 1.5), direct: draw.between(0, 8) }, signalToNoise: 18, hum: draw.between(0.2, 0.8),
    ...(draw.uniform() < 0.3 && { belt: { perMinute: draw.between(75, 110), level: draw.between(-18, -10) } }),
    ...(draw.uniform() < 0.3 && { clanks: { perMinute: draw.between(3, 20), level: draw.between(-14, -4) } }),
  };
}

function secondOf(base: Recipe, level: number, share: number, draw: ReturnType<typeof noiseSource>): SecondRecipe {
  const period = 60 / base.strokes;
  const before = draw.uniform() < 0.25;
  return { delay: before ? -draw.between(0.031, 0.06) : draw.between(0.03, Math.min(0.14, 0.38 * period)), level, jitter: draw.oneOf([0.0005, 0.001, 0.002]), share };
}

function stops(base: Recipe, draw: ReturnType<typeof noiseSource>): Partial<Recipe> {
  const seconds = Math.max(35, base.seconds);
  const middle = draw.between(0.4, 0.6) * seconds;
  const runDownStrokes = Math.floor(draw.between(3, 9));
  const runDownGrowth = draw.between(1.04, 1.12);
  return {
    seconds, drift: 0,
    runs: [
      { start: draw.between(0.5, 2), stop: middle - 4, runDownStrokes, runDownGrowth },
      { start: middle + 2, stop: seconds - 7, runDownStrokes, runDownGrowth },
    ],
  };
}

/** A rate that is no small whole ratio of the hammer's. */
function otherRate(strokes: number, draw: ReturnType<typeof noiseSource>): number {
  for (;;) {
    const rate = draw.between(90, 400);
    const ratio = rate > strokes ? rate / strokes : strokes / rate;
    if (Math.abs(ratio - Math.round(ratio)) > 0.08 && Math.abs(ratio - 1.5) > 0.08) return rate;
  }
}
