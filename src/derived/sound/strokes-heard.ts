import { median } from '../../methods/signal/index.ts';
import type { Run, StrokeHeard } from './beat-result.ts';
import { blowEnergies } from './blow-energy.ts';
import type { PreparedSound } from './prepared-sound.ts';
import type { RunOfBlows } from './runs.ts';
import { steadyRate } from './steady-rate.ts';

/** The table of strokes, levels in dB against the usual one. @param second by stroke, in the order of the runs */
export function strokesHeard(sound: PreparedSound, runs: readonly RunOfBlows[], second: ReadonlyMap<number, boolean>): StrokeHeard[] {
  const times = runs.flatMap((run) => run.times);
  const energies = blowEnergies(sound, times);
  const usual = Math.max(1e-20, median(energies));
  let index = 0;
  return runs.flatMap((run, r) => run.times.map((time, i) => {
    const heard = second.get(index);
    const stroke: StrokeHeard = {
      time, run: r, salience: run.saliences[i]!, runningDown: i >= run.times.length - run.runDown,
      levelDecibels: 10 * Math.log10(Math.max(1e-4, energies[index]! / usual)),
      ...(i > 0 && { sinceLast: time - run.times[i - 1]! }),
      ...(heard !== undefined && { second: heard }),
    };
    index++;
    return stroke;
  }));
}

/**
 * A run in figures. Strokes not heard are counted only when blows stand out well: in noise a stroke that is not heard
 * says nothing.
 */
export function runOf(run: RunOfBlows, countMissed: boolean): Run | undefined {
  const rate = steadyRate(run);
  if (!rate) return undefined;
  const count = run.times.length;
  const missedAt: number[] = [];
  for (let i = 1; i < count; i++) {
    const span = run.strokes[i]! - run.strokes[i - 1]!;
    for (let k = 1; k < span; k++) missedAt.push(run.times[i - 1]! + (k * (run.times[i]! - run.times[i - 1]!)) / span);
  }
  const last = run.times[count - 1]!;
  return {
    first: run.times[0]!, last, strokes: count, rate: rate.rate,
    missed: countMissed ? missedAt.length : 0, missedAt: countMissed ? missedAt : [],
    ...(run.runDown > 0 && { runDown: { strokes: run.runDown, seconds: last - run.times[count - 1 - run.runDown]! } }),
  };
}
