import { bandEnergies, takeLogarithms } from '../../methods/signal/index.ts';
import type { FoldedTurn } from './beat-result.ts';
import type { PreparedSound } from './prepared-sound.ts';
import type { SecondSearch } from './second-sound.ts';

/** The folded turn as it is drawn: a value every millisecond or so, and how far the sound falls between blows, dB. */
export function foldedTurn(sound: PreparedSound, times: readonly number[], search: SecondSearch): { turn: FoldedTurn; fall: number } {
  const { fold, rise, origin } = search;
  const energies = bandEnergies(sound.samples, 220, 11_000, sound.rate, sound.hop);
  const side = (fold.places - 1) / 2;
  const centres = times.map((t) => Math.round(t * sound.frameRate)).filter((c) => c - side >= 0 && c + side < energies.length);
  const sums = new Float64Array(fold.places);
  for (let i = 0; i < energies.length; i++) energies[i] = energies[i]! + 1e-20;
  takeLogarithms(energies);
  for (const centre of centres) addRow(sums, energies, centre - side, 1 / centres.length / Math.LN10);
  const delays: number[] = [];
  const heard: number[] = [];
  const risen: number[] = [];
  let top = -Infinity;
  for (let i = origin; i < Math.min(fold.places, origin + 16); i++) top = Math.max(top, sums[i]!);
  let bottom = Infinity;
  for (let i = 0; i + 1 < fold.places; i += 2) {
    const level = 5 * (sums[i]! + sums[i + 1]!) - 10 * top;
    bottom = Math.min(bottom, level);
    delays.push((i - origin) * fold.step);
    heard.push(level);
    risen.push(Math.max(rise.combined[i]!, rise.combined[i + 1]!));
  }
  return { turn: { delays, heard, rise: risen }, fall: -bottom };
}

function addRow(into: Float64Array, row: Float32Array, from: number, weight: number): void {
  for (let i = 0; i < into.length; i++) into[i] = into[i]! + weight * row[from + i]!;
}

/** Whether the background swells on the way to the next blow, as a recorder's automatic gain makes it. */
export function swells(turn: FoldedTurn, period: number): boolean {
  const at = (from: number, to: number): number => {
    let [sum, count] = [0, 0];
    for (const [i, delay] of turn.delays.entries()) {
      if (!(delay >= from && delay < to)) continue;
      sum += turn.heard[i]!;
      count++;
    }
    return count > 0 ? sum / count : NaN;
  };
  const low = Math.max(turn.delays[0] ?? 0, -0.55 * period);
  const [early, middle, late] = [at(low, 0.7 * low), at(0.7 * low, 0.4 * low), at(0.4 * low, 0.1 * low)];
  return middle - early > 0.3 && late - middle > 0.3 && late - early > 1.2;
}
