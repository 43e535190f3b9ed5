import { convolve } from '../../../src/methods/signal/index.ts';
import { noiseSource } from './noise-source.ts';
import { background } from './background.ts';
import { damage } from './damage.ts';
import { roomResponse } from './room.ts';
import { schedule, type Stroke } from './schedule.ts';
import { makeVoice, softerVoice, strike } from './voice.ts';
import type { Impact, Recipe, Recording, Role, Truth } from './recipe.ts';

/**
 * A recording made from a recipe, with its truth. The same recipe always gives the same samples.
 * @param given impacts to render instead of the recipe's own schedule, for instance from a model of the motion
 */
export function synthesise(recipe: Recipe, given?: readonly Impact[]): Recording {
  const chance = noiseSource(recipe.seed);
  const length = Math.round(recipe.seconds * recipe.rate);
  const strokes = given || recipe.silentHammer ? [] : schedule(recipe, chance);
  const planned = given ? given.map((impact, i) => ({ ...impact, stroke: i })) : impactsOf(recipe, strokes);
  const voice = makeVoice(recipe.material, recipe.rate, chance);
  const voices: Record<Role, ReturnType<typeof makeVoice>> = {
    blow: voice,
    second: softerVoice(voice, recipe.rate, chance),
    belt: makeVoice('wood', recipe.rate, chance),
    clank: makeVoice('steel', recipe.rate, chance),
    other: makeVoice(recipe.other?.material ?? 'steel', recipe.rate, chance),
  };
  // The hammer and whatever else strikes stand in different places and reach the phone by different ways.
  const rows = { hammer: new Float64Array(length), elsewhere: new Float64Array(length) };
  const energies = new Map<Role, number[]>();
  for (const impact of planned) {
    const row = impact.role === 'blow' || impact.role === 'second' ? rows.hammer : rows.elsewhere;
    const energy = strike(row, recipe.rate, voices[impact.role], impact.time, 10 ** (impact.level / 20), chance);
    energies.set(impact.role, [...(energies.get(impact.role) ?? []), energy]);
  }
  const wet = convolve(rows.hammer, roomResponse(recipe.room, recipe.rate, chance));
  const { echo: _, ...plain } = recipe.room;
  if (energies.has('belt') || energies.has('clank') || energies.has('other')) {
    const elsewhere = convolve(rows.elsewhere, roomResponse({ ...plain, direct: plain.direct - 4 }, recipe.rate, chance));
    for (let i = 0; i < length; i++) wet[i]! += elsewhere[i]!;
  }
  // A usual blow has energy one, spread over 50 ms for the stated ratio.
  const noise = background(length, recipe.rate, recipe.hum, chance);
  const height = Math.sqrt(1 / 0.05) * 10 ** (-recipe.signalToNoise / 20);
  for (let i = 0; i < length; i++) wet[i]! += height * noise[i]!;
  return { samples: damage(wet, recipe), rate: recipe.rate, truth: truthOf(recipe, planned, strokes, energies) };

  function impactsOf(r: Recipe, all: readonly Stroke[]): (Impact & { stroke: number })[] {
    const out: (Impact & { stroke: number })[] = [];
    all.forEach((s, stroke) => {
      if (s.missed || s.time < 0.01 || s.time > r.seconds - 0.05) return;
      out.push({ time: s.time, level: s.level, role: 'blow', stroke });
      if (r.second && chance.uniform() < r.second.share) {
        const time = s.time + r.second.delay + r.second.jitter * chance.normal();
        if (time > 0.01 && time < r.seconds - 0.05) out.push({ time, level: s.level + r.second.level + 0.8 * chance.normal(), role: 'second', stroke });
      }
    });
    const regular = (perMinute: number, level: number, role: Role, spread: number): void => {
      for (let t = chance.between(0, 60 / perMinute); t < r.seconds - 0.05; t += 60 / perMinute)
        out.push({ time: Math.max(0.01, t + spread * chance.normal()), level: level + 1.5 * chance.normal(), role, stroke: -1 });
    };
    if (r.belt) regular(r.belt.perMinute, r.belt.level, 'belt', 0.003);
    if (r.other) regular(r.other.perMinute, r.other.level, 'other', 0.002);
    if (r.clanks) for (let t = 0; (t += -Math.log(1 - chance.uniform()) * (60 / r.clanks.perMinute)) < r.seconds - 0.05; ) out.push({ time: t + 0.01, level: r.clanks.level + 3 * chance.normal(), role: 'clank', stroke: -1 });
    return out.sort((a, b) => a.time - b.time);
  }
}

function truthOf(recipe: Recipe, planned: readonly (Impact & { stroke: number })[], strokes: readonly Stroke[], energies: ReadonlyMap<Role, readonly number[]>): Truth {
  const blows = planned.filter((impact) => impact.role === 'blow');
  const byStroke = new Map(blows.map((b, i) => [b.stroke, i]));
  const seconds = planned.filter((impact) => impact.role === 'second').map((s) => ({ blow: byStroke.get(s.stroke) ?? -1, time: s.time }));
  const mean = (row: readonly number[]): number => row.reduce((sum, x) => sum + x, 0) / row.length;
  const delays = seconds.flatMap((s) => (s.blow >= 0 ? [s.time - blows[s.blow]!.time] : []));
  return {
    impacts: planned,
    blows: Float64Array.from(blows, (b) => b.time),
    missed: Float64Array.from(strokes.filter((s) => s.missed), (s) => s.time),
    seconds,
    ...(delays.length > 0 && { delay: mean(delays), level: 10 * Math.log10(mean(energies.get('second') ?? [1]) / mean(energies.get('blow') ?? [1])) }),
    planned: recipe.runs.map((_, index) => strokes.filter((s) => s.run === index && !s.runDown).map((s) => s.planned)),
    runs: recipe.runs.flatMap((_, index) => {
      const own = strokes.filter((s) => s.run === index && !s.missed);
      const steadyOnes = own.filter((s) => !s.runDown);
      const [first, last, steadyLast] = [own[0], own[own.length - 1], steadyOnes[steadyOnes.length - 1]];
      return first && last && steadyLast ? [{ first: first.time, last: last.time, steadyLast: steadyLast.time, runDownStrokes: own.length - steadyOnes.length }] : [];
    }),
  };
}
