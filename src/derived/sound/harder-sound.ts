import type { Fold } from './fold.ts';
import { addedEnergy } from './second-level.ts';

/** A band without any gain counts as so small a share of the loudest one, and no band says more than so many dB. */
const LEAST = 1e-3;
const MOST = 12;

/**
 * By how many decibels a second sound is brighter than the marked one: what each adds over its first 8 ms to what was
 * there before, the mean of the differences over the upper half of the bands, where hum and motors weigh least. A harder
 * impact is in touch for a shorter time and so holds more of the high tones (H. Hertz, On the contact of elastic solids,
 * 1881, from memory: as the fifth root of the speed; that it is more between soft pieces is assumed by the made-up
 * recordings). Of two sounds nearly as loud this tells the blow better than their energies do.
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
const gains = (fold: Fold, place: number): number[] =>
  Array.from({ length: fold.bands }, (_, band) => {
    let sum = 0;
    for (let blow = 0; blow < fold.blows; blow++) sum += addedEnergy(fold, blow, band, place);
    return sum / fold.blows;
  });
