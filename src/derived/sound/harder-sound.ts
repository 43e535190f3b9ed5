import type { Fold } from './fold.ts';

/** s of sound that is compared, and of what lies before it */
const AHEAD = 0.008;
const BEHIND = 0.008;
const APART = 0.0015;
/** A band without any gain counts as so small a share of the loudest one, and no band says more than so many dB. */
const LEAST = 1e-3;
const MOST = 12;

/**
 * By how many decibels a second sound is brighter than the marked one: what each adds over its first 8 ms to what was
 * there before, the mean of the differences over the upper half of the bands. A harder impact is in touch for a shorter
 * time and so holds more of the high tones (H. Hertz, On the contact of elastic solids, 1881: the time goes as the fifth root of the
 * inverse speed, and softer pieces between make more of it), and there hum and motors weigh least. Of two sounds nearly
 * as loud this tells the blow better than their energies do.
 * @param origin place of the marked sound @param place of the second one
 */
export function brighterBy(fold: Fold, origin: number, place: number): number {
  const [own, its] = [gains(fold, origin), gains(fold, place)];
  const [least, leastOfIts] = [LEAST * Math.max(...own, 1e-30), LEAST * Math.max(...its, 0.01 * Math.max(...own), 1e-30)];
  const from = Math.floor(fold.bands / 2);
  let sum = 0;
  for (let band = from; band < fold.bands; band++) sum += Math.max(-MOST, Math.min(MOST, 10 * Math.log10(Math.max(leastOfIts, its[band]!) / Math.max(least, own[band]!))));
  return sum / Math.max(1, fold.bands - from);
}

/** Mean energy that each band gains at a place over all turns. */
function gains({ logs, blows, bands, places, step }: Fold, place: number): number[] {
  const [ahead, behind, apart] = [AHEAD, BEHIND, APART].map((s) => Math.round(s / step)) as [number, number, number];
  const mean = (at: number, from: number, to: number): number => {
    let [sum, count] = [0, 0];
    for (let i = Math.max(0, from); i < Math.min(places, to); i++, count++) sum += Math.exp(logs[at + i]!);
    return count > 0 ? sum / count : 0;
  };
  return Array.from({ length: bands }, (_, band) => {
    let sum = 0;
    for (let blow = 0; blow < blows; blow++) {
      const at = (blow * bands + band) * places;
      sum += mean(at, place - 1, place + ahead) - mean(at, place - apart - behind, place - apart);
    }
    return sum / blows;
  });
}
